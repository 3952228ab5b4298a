using Driveline.Advice;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Tests.Protection;
using Driveline.Wording;

namespace Driveline.Tests.Advice;

public class CardTests
{
    [Fact]
    public void Cautions_EachHasWordsAndAUniqueCode()
    {
        Assert.Equal(Caution.All.Count, Caution.All.Select(c => c.Code).Distinct().Count());
        Assert.All(Caution.All, c => Assert.Contains(c.Code, Texts.English.Codes));
        Assert.All(Caution.All, c => Assert.NotEqual(BasisKind.FromMemory, c.Source.Kind));
    }

    [Fact]
    public void BoltChangeCard_StartsWithStandstill_AndHasWordsForEachStep()
    {
        foreach (MachineKind machine in Enum.GetValues<MachineKind>())
        {
            foreach (BoltAccess access in Enum.GetValues<BoltAccess>())
            {
                BoltChangeCard card = BoltChangeCard.For(machine, access);
                Assert.Equal("boltChange.stop", card.Steps[0].Code);
                Assert.Contains(Caution.StopAndKeyOut, card.Steps[0].Cautions);
                Assert.All(card.Steps, s => Assert.Contains(s.Code, Texts.English.Codes));
                Assert.Superset(Caution.Always.Select(c => c.Code).ToHashSet(), card.Cautions.Select(c => c.Code).ToHashSet());
            }
        }
    }

    [Fact]
    public void BoltChangeCard_OrderOfWork_IsSafe()
    {
        string[] codes = [.. BoltChangeCard.For(MachineKind.RotaryCutter, BoltAccess.NotKnown).Steps.Select(s => s.Code)];
        int At(string code) => Array.IndexOf(codes, code);
        Assert.True(At("boltChange.freeTheJam") < At("boltChange.getStubOut"));
        Assert.True(At("boltChange.supportShaft") < At("boltChange.getStubOut"));
        Assert.True(At("boltChange.getStubOut") < At("boltChange.turnHub"));
        Assert.True(At("boltChange.shieldsBack") < At("boltChange.startGently"));
        Assert.True(At("boltChange.openShield") > 0);      // access not known: the shield may be in the way
    }

    [Fact]
    public void BoltChangeCard_Auger_SaysNothingMayStandProud() =>
        Assert.Contains(
            BoltChangeCard.For(MachineKind.PostHoleAuger, BoltAccess.YokeInReach).Steps, s => s.Code == "boltChange.nothingProudAuger");

    [Fact]
    public void Inspection_BladeStruck_DrivelineFirst()
    {
        InspectionList list = InspectionList.After(StruckBy.Blade);
        Assert.True(list.Items[0].IsReachedThroughDriveline);
        Assert.Null(list.Tractor);                          // no model: only the inspection can tell
        AssertWords(list);
    }

    [Theory]
    [InlineData(nameof(StruckBy.Pan))]
    [InlineData(nameof(StruckBy.Deck))]
    public void Inspection_BlowOnPanOrDeck_LooksBesideTheDrivelineFirst(string struckBy)
    {
        InspectionList list = InspectionList.After(Enum.Parse<StruckBy>(struckBy));
        Assert.False(list.Items[0].IsReachedThroughDriveline);
        Assert.Equal(InspectionList.BlowBesideDriveline, list.Tractor!.Code);
        Assert.Contains(list.Items, i => i.Code == "inspect.hitchPins");
        Assert.Equal(
            InspectionList.After(StruckBy.Blade).Items.Select(i => i.Code).OrderBy(c => c, StringComparer.Ordinal),
            list.Items.Select(i => i.Code.Replace("UnderPan", string.Empty, StringComparison.Ordinal))
                .OrderBy(c => c, StringComparer.Ordinal));   // ordered, never shortened
        AssertWords(list);
    }

    [Theory]
    [InlineData(nameof(StruckBy.Pan), 1, "inspect.gearboxUnderPan")]     // the pan turns with the output shaft and bends it
    [InlineData(nameof(StruckBy.Deck), 11, "inspect.gearbox")]   // six items beside the driveline, three of the rotor, two of the driveline
    public void Inspection_BlowOnPan_ComesToTheGearboxEarly(string struckBy, int place, string code)
    {
        InspectionList list = InspectionList.After(Enum.Parse<StruckBy>(struckBy));
        Assert.Equal(code, list.Items[place].Code);
        Assert.Equal(code != "inspect.gearbox", Texts.English.Of(code).Contains("pan", StringComparison.Ordinal));
        AssertWords(list);
    }

    [Fact]
    public void Inspection_DeviceActed_BoundsTheLoadByItsStrongestSpecimen()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(Thornbeck.Bolt(1200, 1500, 2000)));
        InspectionList list = InspectionList.After(StruckBy.Blade, true, verdict);
        Assert.Equal(InspectionList.BoundedBelowDamage, list.Tractor!.Code);        // 2000 N·m against 3000 N·m
        Assert.Equal(2000, list.Tractor.Parameter("atMost")!.Value, 9);
        Assert.Equal(3000, list.Tractor.Parameter("damagedLow")!.Value, 9);
        Assert.Equal("inspect.driveTube", list.Items[0].Code);                      // 2000/2100 is the highest ratio
        AssertWords(list);
    }

    [Fact]
    public void Inspection_NothingGave_BoundsNothing()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(Thornbeck.Bolt(1200, 1500, 2000)));
        InspectionList list = InspectionList.After(StruckBy.Blade, false, verdict);
        Assert.All(list.PartLoads, l => Assert.Equal(InspectionList.LoadNotKnown, l.Code));
    }

    [Fact]
    public void Inspection_OverstrongBolt_SaysDamageMayBeReached()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(Thornbeck.Bolt(2000, 2300, 2500)));
        InspectionList list = InspectionList.After(StruckBy.Blade, true, verdict);
        Assert.Equal(InspectionList.MayHaveReachedDamage, list.Items[0].Load!.Code);
        Assert.Equal("inspect.driveTube", list.Items[0].Code);
    }

    [Fact]
    public void Inspection_AssumedLimit_NeverReassures()
    {
        Part stub = Part.Of(PartKind.PtoStub, "stub").WithLimit(PartLimit.ImpliedByPtoType(Thornbeck.Nm(5000)));
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(DrivelineChain.Of(
            stub, Thornbeck.Tube, Thornbeck.Bolt(1200, 1500, 2000), Thornbeck.Gearbox, Thornbeck.Blades)));
        Assert.Equal(InspectionList.MayHaveReachedDamage, InspectionList.After(StruckBy.Blade, true, verdict).Tractor!.Code);
    }

    private static void AssertWords(InspectionList list)
    {
        Assert.All(list.Items, i => Assert.Contains(i.Code, Texts.English.Codes));
        Assert.All(list.Items, i => Assert.Contains(i.StopCode, Texts.English.Codes));
        Assert.All(list.PartLoads, l => Assert.Contains(l.Code, Texts.English.Codes));
        Assert.All(list.PartLoads, l => Assert.DoesNotContain("{", Texts.English.Of(l), StringComparison.Ordinal));
    }
}
