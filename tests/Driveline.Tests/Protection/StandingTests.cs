using Driveline.Chains;
using Driveline.Protection;
using Driveline.Wording;

namespace Driveline.Tests.Protection;

public class StandingTests
{
    // hand: bolt 1150 to 1500 N·m, above the work of 1000 and below the tube at 2100, the gearbox at 2900 and the stub at 3000
    private static ProtectionQuestion Sound => Thornbeck.With(Thornbeck.Bolt(1150, 1300, 1500))
        .WithSpecified(Thornbeck.Bolt(1150, 1300, 1500)).WithLookedOver(true);

    [Fact]
    public void Standing_ProtectedLookedOverAndTheManualsBolt_IsGoOn()
    {
        Standing standing = ProtectionCheck.Run(Sound).Standing;
        Assert.Equal(StandingState.GoOn, standing.State);
        Assert.Empty(standing.Reasons);
    }

    [Theory]
    [InlineData("nobody has looked it over", StandingState.WithCare, StandingFindings.NotLookedOver)]
    [InlineData("the manual's bolt is not known", StandingState.WithCare, StandingFindings.SpecifiedNotKnown)]
    [InlineData("the parts are not all listed", StandingState.WithCare, StandingFindings.MayNotProtect)]
    [InlineData("the work is not known", StandingState.WithCare, StandingFindings.MayActInWork)]
    [InlineData("no limit is known", StandingState.NotKnown, StandingFindings.GuardsNotKnown)]
    [InlineData("the machine is not known", StandingState.WithCare, StandingFindings.MayNotProtect)]
    public void Standing_OneFactTakenAway_IsNeverGoOn(string missing, StandingState expected, string reason)
    {
        ProtectionQuestion question = missing switch
        {
            "nobody has looked it over" => Sound.WithLookedOver(false),
            "the manual's bolt is not known" => Sound.WithSpecified(null),
            "the parts are not all listed" => Sound.WithPartsComplete(false),
            "the work is not known" => Sound.WithWork(null),
            "no limit is known" => Sound.WithChain(DrivelineChain.Of(
                Part.Shaft("drive tube"), Thornbeck.Bolt(1150, 1300, 1500), Thornbeck.Blades)),
            _ => Sound.WithMachine(Driveline.Loads.MachineKind.NotKnown),
        };
        Standing standing = ProtectionCheck.Run(question).Standing;
        Assert.Equal(expected, standing.State);
        Assert.True(standing.Has(reason), missing + ": " + standing);
    }

    [Theory]
    [InlineData(SeenDefect.ClutchSmokes, StandingFindings.ClutchSmokes)]
    [InlineData(SeenDefect.HubSeized, StandingFindings.HubSeized)]
    [InlineData(SeenDefect.HubStiff, StandingFindings.HubStiff)]
    [InlineData(SeenDefect.TubeTwisted, StandingFindings.TubeTwisted)]
    [InlineData(SeenDefect.BladesBent, StandingFindings.BladesBent)]
    public void Standing_DefectSeen_StopsAVerdictOfProtected(SeenDefect defect, string reason)
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(Sound.WithDefects([defect]));
        Assert.Equal(Headline.Protected, verdict.Headline);
        Assert.Equal(StandingState.Stop, verdict.Standing.State);
        Assert.Equal(reason, Assert.Single(verdict.Standing.Reasons).Why.Code);
    }

    [Fact]
    public void Standing_SeveralPartsGoFirst_NamesTheWeakest()
    {
        // hand: the bolt acts at 3500; the stub takes 3000 to 3300, the tube, which is listed after it, 2100 to 2600
        Standing standing = ProtectionCheck.Run(Sound.WithChain(DrivelineChain.Of(
            Thornbeck.Stub, Thornbeck.Tube, Thornbeck.Bolt(3400, 3500, 3600), Thornbeck.Gearbox, Thornbeck.Blades))).Standing;
        Assert.Equal(
            Thornbeck.Tube.Name,
            standing.Reasons.Single(r => r.Why.Code == StandingFindings.DoesNotProtect).Why.Parameter("name")!.Text);
    }

    [Fact]
    public void Standing_ManualsBoltKnownButNotTheFitted_DoesNotSayThatTheManualIsNotKnown()
    {
        Standing standing = ProtectionCheck.Run(Sound.WithChain(DrivelineChain.Of(
            Thornbeck.Stub, Thornbeck.Tube, StatedDevice.NotIdentified("bolt"), Thornbeck.Gearbox, Thornbeck.Blades))).Standing;
        Assert.True(standing.Has(StandingFindings.FittedNotKnown), standing.ToString());
        Assert.False(standing.Has(StandingFindings.SpecifiedNotKnown));
    }

    [Fact]
    public void Standing_BoltThatStandsOutWherePeopleAre_IsStop() =>
        Assert.True(Cases.DemoCases.Verdict("fenwick-auger-plain-bolt").Standing.Has(StandingFindings.BoltStandsProud));

    [Fact]
    public void Standing_NoDeviceInACompleteList_IsStop()
    {
        var chain = DrivelineChain.Of(Thornbeck.Stub, Thornbeck.Tube, Thornbeck.Gearbox, Thornbeck.Blades);
        Standing standing = ProtectionCheck.Run(Sound.WithChain(chain)).Standing;
        Assert.Equal(StandingFindings.NoDevice, Assert.Single(standing.Reasons).Why.Code);
    }

    [Fact]
    public void Standing_StrongerThanTheManualAndInDoubt_IsStop()
    {
        // hand: fitted 1900 to 2300 N·m may outlast a weak tube of 2100
        Standing standing = ProtectionCheck.Run(Sound.WithChain(DrivelineChain.Of(
            Thornbeck.Stub, Thornbeck.Tube, Thornbeck.Bolt(1900, 2000, 2300), Thornbeck.Gearbox, Thornbeck.Blades))).Standing;
        Assert.Equal(StandingState.Stop, standing.State);
        Assert.True(standing.Has(StandingFindings.FittedStronger));
    }

    [Fact]
    public void Standing_EveryStateReasonAndLift_HasWords()
    {
        string[] codes = [.. typeof(StandingFindings).GetFields().Select(f => (string)f.GetRawConstantValue()!)];
        Assert.Equal(Enum.GetValues<SeenDefect>().Length, codes.Count(c => Enum.GetNames<SeenDefect>().Contains(
            c["standing.".Length..], StringComparer.OrdinalIgnoreCase)));
        IEnumerable<string> states = Enum.GetNames<StandingState>().Select(n => "standing." + n);
        string[] several = [.. states.Where(s => s != "standing.GoOn").Select(s => s + ".several")];
        Assert.All(codes.Concat(codes.Select(c => c + ".lift")).Concat(states).Concat(several),
            c => Assert.Contains(c, Texts.English.Codes));
    }
}
