using Driveline.Advice;
using Driveline.Cases.Questions;
using Driveline.Tests.Cases;

namespace Driveline.Tests.Advice;

/// <summary>An owner is offered what the fitted protection can show.</summary>
public class InterviewSymptomsTests
{
    [Theory]
    [InlineData("thornbeck-bolt-right", "Clutch")]
    [InlineData("dunmarsh-clutch-well-set", "Break")]
    public void Symptoms_OfAKnownDevice_AreNoneOfAnother(string demo, string other)
    {
        IReadOnlyList<Symptom> offered = CaseInterview.From(DemoCases.Read(demo), DemoCases.AdviceOf).Symptoms;
        Assert.DoesNotContain(offered, s => s.ToString().StartsWith(other, StringComparison.Ordinal));
        Assert.Contains(Symptom.NothingGaveAtStrike, offered);
        Assert.Contains(Symptom.Vibration, offered);
        Assert.Equal(other != "Break", offered.Contains(Symptom.HolesOval));
    }

    [Fact]
    public void Symptoms_OfADeviceNobodyKnows_AreAll() => Assert.Equal(
        Enum.GetValues<Symptom>().Where(s => s != Symptom.NotKnown), Interview.Symptoms(Complaint.Of(Symptom.NotKnown)));

    [Fact]
    public void Symptoms_OfADriveWithoutProtection_NeedNone() => Assert.Equal(
        [Symptom.NothingGaveAtStrike, Symptom.Vibration],
        Interview.Symptoms(Complaint.Of(Symptom.NotKnown).With(OwnerFacts.Device.None)));
}
