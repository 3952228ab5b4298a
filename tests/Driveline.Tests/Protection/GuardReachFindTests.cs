using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>What reaches each position of a chain, position by position.</summary>
public class GuardReachFindTests
{
    private static readonly Band Anything = new(0, double.PositiveInfinity, double.PositiveInfinity);

    private static readonly RatioBand Half = RatioBand.Exactly(0.5, Stated);

    private static Part Shaft => Part.Shaft("shaft");

    private static Part Wheel => Part.Flywheel("flywheel", MassMomentOfInertia.FromKilogramSquareMeters(9));

    [Fact]
    public void Find_NoDevice_IsOpenEverywhere() => Assert.All(Found(Shaft, Wheel, Shaft), r => Assert.Equal(Reach.Open, r));

    [Fact]
    public void Find_OneDevice_ReachesBothSidesUnchanged() => Assert.All(
        Found(Shaft, Bolt(900, 1000, 1200), Shaft),
        r => Assert.Equal(new Reach { Band = new Band(900, 1000, 1200), Device = 1, Inertia = -1 }, r));

    // Speed doubled, 0.9 kept: behind the gearbox 1000 · 0.9 / 2 = 450 N·m.
    [Fact]
    public void Find_BehindAGearbox_IsTheTorqueThatGetsThrough()
    {
        Reach[] found = Found(Bolt(800, 1000, 1200), Part.Gearbox("gearbox", 2).WithEfficiency(0.9), Shaft);
        Assert.Equal(new Band(800, 1000, 1200), found[1].Band);
        Near(360, 450, 540, found[2]);
        Assert.False(found[2].RestsOnEfficiency);
    }

    // The same looked at from the work: a bolt of 450 behind it holds 450 · 2 / 0.9 = 1000 N·m before it.
    [Fact]
    public void Find_BeforeAGearbox_IsTheTorqueThatIsHeld()
    {
        Reach[] found = Found(Shaft, Part.Gearbox("gearbox", 2).WithEfficiency(0.9), Bolt(360, 450, 540));
        Near(800, 1000, 1200, found[0]);
        Near(800, 1000, 1200, found[1]);
        Assert.False(found[0].RestsOnEfficiency);
        Assert.Equal(2, found[0].Device);
    }

    [Fact]
    public void Find_EfficiencyNobodyStated_CarriesTheHighEndOnlyBeforeTheGearbox()
    {
        Reach[] behind = Found(Shaft, Part.Gearbox("gearbox", 2), Bolt(360, 450, 540));
        Assert.True(behind[0].RestsOnEfficiency && behind[1].RestsOnEfficiency && !behind[2].RestsOnEfficiency);
        Assert.DoesNotContain(Found(Bolt(360, 450, 540), Part.Gearbox("gearbox", 2), Shaft), r => r.RestsOnEfficiency);
    }

    // Two efficiencies nobody stated are no better than one.
    [Fact]
    public void Find_TwoEfficienciesNobodyStated_StillCarryTheHighEnd()
    {
        Reach[] found = Found(Shaft, Part.Gearbox("first", 2), Part.Gearbox("second", 2), Bolt(360, 450, 540));
        Assert.Equal([true, true, true, false], found.Select(r => r.RestsOnEfficiency));
    }

    // A ratio of 1 with a loss is no shaft: 1000 / 0.8 = 1250 N·m before it, 1000 · 0.8 behind it.
    [Fact]
    public void Find_AngleDriveOfRatioOne_LosesItsShare()
    {
        Part drive = Part.Gearbox("angle drive", 1).WithEfficiency(0.8);
        Near(1250, 1250, 1250, Found(Shaft, drive, Bolt(1000, 1000, 1000))[0]);
        Near(800, 800, 800, Found(Bolt(1000, 1000, 1000), drive, Shaft)[2]);
        Near(1500, 1500, 1500, Found(Shaft, Part.Gearbox("up", 1.5).WithEfficiency(1), Bolt(1000, 1000, 1000))[0]);
    }

    [Fact]
    public void Find_RatioNotKnown_LeavesTheFarSideUnknownAndBarred()
    {
        Reach[] ahead = Found(Shaft, Part.Gearbox("gearbox"), Bolt(900, 1000, 1200));
        Reach[] behind = Found(Bolt(900, 1000, 1200), Part.Gearbox("gearbox"), Shaft);
        Assert.All(new[] { ahead[0], ahead[1], behind[2] }, r =>
        {
            Assert.Equal(Anything, r.Band);
            Assert.True(r.HasUnknown && r.IsBarred && !r.IsOpen);
        });
        Assert.False(ahead[2].HasUnknown || behind[0].IsBarred || behind[1].HasUnknown);
    }

    [Fact]
    public void Find_DeviceNotIdentified_MayActAtAnyTorqueAndEarlier()
    {
        Reach unknown = Found(StatedDevice.NotIdentified("x"), Shaft)[1];
        Assert.Equal(Anything, unknown.Band);
        Assert.True(unknown.HasUnknown && unknown.MayActEarlier);
        Assert.Equal(0, unknown.Device);
    }

    // Only a least torque is known: it may act anywhere above. A stuck clutch is known not to: its unbounded torque is its state.
    [Fact]
    public void Find_ExpectedNotKnown_MayActEarlierUnlessStuck()
    {
        ProtectiveDevice atLeast = StatedDevice.Of(
            "pin", DeviceKind.ShearBolt, AfterTrip.TorqueGone, TorqueBand.AtLeast(Torque.FromNewtonMeters(900), Stated));
        Assert.True(Found(atLeast, Shaft)[1] is { MayActEarlier: true, HasUnknown: false });
        Assert.False(Found(Bolt(900, 1000, 1200), Shaft)[1].MayActEarlier);
        ProtectiveDevice stuck = SlipClutchDevice.Of(
            "clutch", SlipTorque.Of(Clutches.Build.NineSprings(), Clutches.Build.Clean(RunInState.RunIn).Stuck()));
        Assert.True(Found(stuck, Shaft)[1] is { MayActEarlier: false, IsBarred: true });
        Assert.False(Found(Bolt(900, 1000, 1200), Shaft)[1].IsBarred);
    }

    // The wheel itself still lies on the tractor's side of what it stores; what is behind it does not, nor what is before it.
    [Fact]
    public void Find_AcrossAFlywheel_NamesIt()
    {
        Reach[] behind = Found(Bolt(900, 1000, 1200), Wheel, Shaft, Shaft);
        Assert.Equal([-1, -1, 1, 1], behind.Select(r => r.Inertia));
        Reach[] before = Found(Shaft, Wheel, Bolt(900, 1000, 1200));
        Assert.Equal([1, 1, -1], before.Select(r => r.Inertia));
    }

    // Positions: bolt 0, branch 1, side wheel 2, trunk 3 and 4. What the side stores reaches the trunk past the bolt, and no further back.
    [Fact]
    public void Find_BesideAStore_NamesItOnTheOtherBranchAlone()
    {
        Reach[] found = Found(Bolt(900, 1000, 1200), Branch.Of("side", Half, Wheel), Shaft, Shaft);
        Assert.Equal([-1, -1, -1, 2, 2], found.Select(r => r.Inertia));
        Reach[] turned = Found(Bolt(900, 1000, 1200), Branch.Of("side", Half, Shaft), Shaft, Wheel);
        Assert.Equal([-1, -1, 4, -1, -1], turned.Select(r => r.Inertia));
    }

    // A bolt ahead of the side wheel parts it from the junction; without any device nothing is held back and nothing passes.
    [Fact]
    public void Find_BesideAStoreThatADeviceParts_IsHeldByTheOneAhead()
    {
        Reach[] found = Found(Bolt(900, 1000, 1200), Branch.Of("side", Half, Bolt(90, 100, 110), Wheel), Shaft);
        Assert.Equal(-1, found[^1].Inertia);
        Assert.Equal(0, found[^1].Device);
        Assert.All(Found(Shaft, Branch.Of("side", Half, Wheel), Shaft), r => Assert.Equal(Reach.Open, r));
    }

    // As deep as the longest chain, memory comes from the stack; a longer one must not, and finds the same.
    [Theory]
    [InlineData(2, 0)]
    [InlineData(GuardReach.MostOnStack, 0)]
    [InlineData(GuardReach.MostOnStack + 1, 1)]
    [InlineData(200, 1)]
    public void Find_LongestChain_TakesItsRoomFromTheStack(int length, int least)
    {
        Element[] elements = [Bolt(900, 1000, 1200), .. Enumerable.Repeat(0, length - 1).Select(_ => (Element)Shaft)];
        ChainNode[] nodes = DrivelineChain.Of(elements).Nodes;
        Assert.Equal(length, nodes.Length);
        var reach = new Reach[length];
        GuardReach.Find(nodes, reach);
        long before = GC.GetAllocatedBytesForCurrentThread();
        GuardReach.Find(nodes, reach);
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;

        // A byte, a number of 4 bytes and a reach for each position, when there is no room on the stack.
        long room = least * length * (1L + sizeof(int) + System.Runtime.CompilerServices.Unsafe.SizeOf<Reach>());
        Assert.InRange(taken, room, room + (least * 3 * 32));
        Assert.All(reach, r => Assert.Equal(new Band(900, 1000, 1200), r.Band));
    }

    private static void Near(double low, double expected, double high, Reach found)
    {
        Close.Relative(low, found.Band.Low, 1e-12, "worked above");
        Close.Relative(expected, found.Band.Expected, 1e-12, "worked above");
        Close.Relative(high, found.Band.High, 1e-12, "worked above");
    }

    private static Reach[] Found(params Element[] elements)
    {
        ChainNode[] nodes = DrivelineChain.Of(elements).Nodes;
        var reach = new Reach[nodes.Length];
        GuardReach.Find(nodes, reach);
        return reach;
    }
}
