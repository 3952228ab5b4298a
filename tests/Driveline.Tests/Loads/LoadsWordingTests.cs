using System.Reflection;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Wording;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class LoadsWordingTests
{
    public static TheoryData<string> Codes() => [.. AllCodes()];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Finding_EachCode_HasWords(string code) => Assert.Contains(code, Texts.English.Codes);

    // Every code is reported by some question, and its words leave no brace open.
    [Fact]
    public void Finding_EachCode_IsReportedAndReadsWithoutBraces()
    {
        Finding[] findings = [.. Questions().SelectMany(f => f)];
        Assert.Empty(AllCodes().Except(findings.Select(f => f.Code)));
        Assert.All(findings, f => Assert.DoesNotContain("{", Texts.English.Of(f), StringComparison.Ordinal));
        Assert.All(findings,
            f => Assert.DoesNotContain("{", Texts.English.Of(f, Driveline.Wording.DisplayUnits.UsCustomary), StringComparison.Ordinal));
    }

    private static IEnumerable<string> AllCodes() =>
        typeof(LoadsFindings).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!);

    private static IEnumerable<IEnumerable<Finding>> Questions()
    {
        foreach (PowerRow row in ImplementPower.All)
        {
            yield return (row.NeedsWidth ? PowerNeed.Of(row, Length.FromMeters(2)) : row.NeedsFeed
                ? PowerNeed.Of(row, MassFlow.FromTonnesPerHour(5)) : PowerNeed.Of(row)).Findings;
        }

        yield return PowerNeed.Of(MachineKind.RotaryTiller, Length.FromMeters(1.5)).Findings;
        yield return TipSpeed.Stated(Speed.FromMetersPerSecond(110)).Check();
        yield return TipSpeed.Stated(Speed.FromMetersPerSecond(12)).Check();

        Engagement gentle = Engagement.Through(PtoClutchKind.Electric).WithManner(EngagementManner.Gentle);
        yield return EngagementTorque.Of(gentle, Rated).WithRotor(KgM2(2)).WithStiffness(NmPerRad(4000)).Findings;
        yield return EngagementTorque.Of(gentle.WithCapacity(Nm(400, 600, 800)), Rated).WithLoad(Nm(500)).Findings;
        yield return EngagementTorque.Of(gentle.WithCapacity(Nm(400, 600, 800)), Rated).WithLoad(Nm(700)).Findings;

        DrivingSide bare = DrivingSide.At(Rated, Nm(300));
        yield return StrikeEstimate.Of(StrikePlace.Deck, bare).Findings;
        yield return StrikeEstimate.Of(StrikePlace.Pan, bare).Findings;
        yield return StrikeEstimate.Of(StrikePlace.Blade, bare).Findings;
        yield return StrikeEstimate.Of(StrikePlace.Blade, bare.WithClutchCapacity(Nm(200))).WithRotor(KgM2(2)).Findings;
        yield return StrikeEstimate.Of(StrikePlace.NotKnown, bare).Findings;
        yield return Overrun.Of(KgM2(2), Rated, OverrunClutch.NotKnown, PtoClutchKind.NotKnown).Findings;
        yield return EngineSide.OfEnginePower(Watts(30e3), Rated).Findings;
    }
}
