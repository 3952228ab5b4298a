using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Tests.Protection;

/// <summary>Two devices one after the other, and two branches on one shaft: every fact of what results.</summary>
public class ReachTests
{
    private static readonly Reach Weak = new() { Band = new Band(100, 200, 300), Device = 1, Inertia = -1 };

    private static readonly Reach Strong = new() { Band = new Band(110, 210, 310), Device = 2, Inertia = -1 };

    [Fact]
    public void Open_Made_LetsAnyTorqueThrough()
    {
        Assert.Equal(new Band(0, double.PositiveInfinity, double.PositiveInfinity), Reach.Open.Band);
        Assert.True(Reach.Open.IsOpen);
        Assert.False(Reach.Open.PassesInertia);
        Assert.Equal(-1, Reach.Open.Device);
    }

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(3, true)]
    public void PassesInertia_NodeOfTheStore_IsAnyFromZero(int node, bool passes) =>
        Assert.Equal(passes, (Weak with { Inertia = node }).PassesInertia);

    [Fact]
    public void First_OneOpen_IsTheOther()
    {
        Assert.Equal(Weak, Reach.First(Weak, Reach.Open));
        Assert.Equal(Weak, Reach.First(Reach.Open, Weak));
        Assert.True(Reach.First(Reach.Open, Reach.Open).IsOpen);
    }

    // What a flywheel reaches past its device leaves the work to the other device, however strong that is.
    [Fact]
    public void First_StoredEnergyPassesOne_IsTheOther()
    {
        Reach passed = Weak with { Inertia = 5 };
        Assert.Equal(Strong, Reach.First(passed, Strong));
        Assert.Equal(Strong, Reach.First(Strong, passed));
    }

    [Fact]
    public void First_StoredEnergyPassesBoth_IsTheEarlierAndStillPassed()
    {
        Reach first = Reach.First(Weak with { Inertia = 5 }, Strong with { Inertia = 6 });
        Assert.Equal(Weak.Band, first.Band);
        Assert.Equal(5, first.Inertia);
    }

    // Lowest of each end: min(100, 90), min(200, 210), min(300, 290).
    [Fact]
    public void First_BandsThatCross_IsTheLowerOfEachEnd()
    {
        Reach crossing = new() { Band = new Band(90, 210, 290), Device = 2, Inertia = -1 };
        Reach first = Reach.First(Weak, crossing);
        Assert.Equal(new Band(90, 200, 290), first.Band);
        Assert.Equal(1, first.Device);   // 200 is expected before 210
        Assert.Equal(1, Reach.First(crossing, Weak).Device);
    }

    [Fact]
    public void First_ExpectedTied_IsTheFirstNamed()
    {
        Assert.Equal(1, Reach.First(Weak, Strong with { Band = Weak.Band }).Device);
        Assert.Equal(2, Reach.First(Strong with { Band = Weak.Band }, Weak).Device);
    }

    // A bar counts only of the device that sets the high end.
    [Theory]
    [InlineData(true, false, 300, 310, true)]
    [InlineData(true, false, 310, 300, false)]
    [InlineData(false, true, 300, 310, false)]
    [InlineData(false, true, 310, 300, true)]
    [InlineData(true, false, 300, 300, false)]
    [InlineData(false, true, 300, 300, false)]
    [InlineData(true, true, 300, 300, true)]
    public void First_Barred_IsAskedOfTheOneThatSetsTheHighEnd(bool a, bool b, double highA, double highB, bool barred)
    {
        Reach one = Weak with { Band = new Band(100, 200, highA), IsBarred = a, RestsOnEfficiency = a };
        Reach two = Strong with { Band = new Band(100, 200, highB), IsBarred = b, RestsOnEfficiency = b };
        Assert.Equal(barred, Reach.First(one, two).IsBarred);
        Assert.Equal(barred, Reach.First(one, two).RestsOnEfficiency);
    }

    [Theory]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(false, false, false)]
    public void First_OneUnknownOrEarlier_StaysSo(bool a, bool b, bool either)
    {
        Assert.Equal(either, Reach.First(Weak with { HasUnknown = a }, Strong with { HasUnknown = b }).HasUnknown);
        Assert.Equal(either, Reach.First(Weak with { MayActEarlier = a }, Strong with { MayActEarlier = b }).MayActEarlier);
        Assert.False(Reach.First(Weak with { HasUnknown = a }, Strong with { HasUnknown = b }).MayActEarlier);
    }

    [Fact]
    public void Both_OneOpen_IsOpen()
    {
        Assert.Equal(Reach.Open, Reach.Both(Weak, Reach.Open));
        Assert.Equal(Reach.Open, Reach.Both(Reach.Open, Weak));
    }

    // 100 + 110, 200 + 210, 300 + 310.
    [Fact]
    public void Both_TwoBranches_Add()
    {
        Reach both = Reach.Both(Weak, Strong);
        Assert.Equal(new Band(210, 410, 610), both.Band);
        Assert.Equal(1, both.Device);
        Assert.Equal(1, Reach.Both(Strong, Weak).Device);
        Assert.Equal(2, Reach.Both(Strong with { Band = Weak.Band }, Weak).Device);   // tied: the first named
        Assert.False(both.IsOpen);
        Assert.False(both.PassesInertia);
    }

    [Theory]
    [InlineData(-1, 4, 4)]
    [InlineData(4, -1, 4)]
    [InlineData(-1, -1, -1)]
    public void Both_AStoreInOneBranch_ReachesTheShaft(int a, int b, int store) =>
        Assert.Equal(store, Reach.Both(Weak with { Inertia = a }, Strong with { Inertia = b }).Inertia);

    [Theory]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(false, false, false)]
    public void Both_OneFlagged_StaysSo(bool a, bool b, bool either)
    {
        Assert.Equal(either, Reach.Both(Weak with { HasUnknown = a }, Strong with { HasUnknown = b }).HasUnknown);
        Assert.Equal(either, Reach.Both(Weak with { MayActEarlier = a }, Strong with { MayActEarlier = b }).MayActEarlier);
        Assert.Equal(either, Reach.Both(Weak with { IsBarred = a }, Strong with { IsBarred = b }).IsBarred);
        Assert.Equal(either, Reach.Both(Weak with { RestsOnEfficiency = a }, Strong with { RestsOnEfficiency = b }).RestsOnEfficiency);
    }
}
