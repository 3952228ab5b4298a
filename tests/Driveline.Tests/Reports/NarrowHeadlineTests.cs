using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Tests.Protection;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Tests.Reports;

/// <summary>Less than a tenth of room on remembered figures is said in the headline sentence.</summary>
/// <remarks>By hand: the tube is damaged from 2100 N·m and 2100/1.1 = 1909.09; work peaks at 1000 N·m.</remarks>
public class NarrowHeadlineTests
{
    private static readonly Basis Memory = Basis.FromMemory("the test");

    [Theory]
    [InlineData(1500, 1909.2, true, "guard 2100/1909.2 = 1.09994")]
    [InlineData(1500, 1909.0, false, "guard 2100/1909.0 = 1.10005")]
    [InlineData(1099.9, 1600, true, "work 1099.9/1000 = 1.0999")]
    [InlineData(1100.1, 1600, false, "work 1100.1/1000 = 1.1001")]
    [InlineData(1099.9, 1909.2, true, "both")]
    public void Protected_OnRememberedFigures_SaysWhenItIsByLittle(double low, double high, bool isNarrow, string sum)
    {
        ProtectionVerdict verdict = Verdict(low, high, Memory);
        Assert.Equal(Headline.Protected, verdict.Headline);
        string english = Words(verdict, Language.English);
        string spanish = Words(verdict, Language.Spanish);
        Assert.True(isNarrow == english.Contains(
            "Protected, but by little: 9% more than what is needed, on remembered figures that may be wrong by as much.",
            StringComparison.Ordinal), sum + ": " + english);
        Assert.True(isNarrow == spanish.Contains("Protegido, pero por poco: ", StringComparison.Ordinal)
            && isNarrow == spanish.Contains("con cifras recordadas que pueden errar otro tanto.", StringComparison.Ordinal),
                sum + ": " + spanish);
        Assert.Equal(isNarrow, spanish.Contains("por poco: un 9 %", StringComparison.Ordinal));
        Assert.NotEqual(isNarrow, english.Contains("Protected: it acts before a part is damaged", StringComparison.Ordinal));
    }

    [Fact]
    public void Protected_ByLittleOnStatedFigures_IsPlainlyProtected() => Assert.DoesNotContain(
        "by little", Words(Verdict(1099.9, 1909.2, Thornbeck.Stated), Language.English), StringComparison.Ordinal);

    [Theory]
    [InlineData(1909.2, "careful", "2100/1909.2 = 1.09994")]
    [InlineData(1909.0, "good", "2100/1909.0 = 1.10005")]
    public void Protected_ByLittleOnRememberedFigures_IsAmber(double high, string tone, string sum) => Assert.True(
        VerdictHtml.Of(Verdict(1500, high, Memory)).Split("dl-lead dl-")[^1].StartsWith(tone, StringComparison.Ordinal), sum);

    private static string Words(ProtectionVerdict verdict, Language language) => string.Join(' ', VerdictText.Of(
        verdict, ReportOptions.Default.WithLanguage(language)).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static ProtectionVerdict Verdict(double low, double high, Basis basis)
    {
        TorqueBand trip = TorqueBand.Between(
            Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(1550), Torque.FromNewtonMeters(high), basis);
        ProtectiveDevice bolt = StatedDevice.Of("shear bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, trip);
        return ProtectionCheck.Run(Thornbeck.With(bolt).WithEngagement(
            Engagement.Through(PtoClutchKind.HandLever).WithManner(EngagementManner.Gentle).WithPeak(Thornbeck.Nm(900))));
    }
}
