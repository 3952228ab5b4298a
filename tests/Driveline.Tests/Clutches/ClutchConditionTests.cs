using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class ClutchConditionTests
{
    private static readonly DateTime Day = Build.Today;

    [Theory]
    [InlineData(-1, SlipTrust.MustNotBeTrusted)]
    [InlineData(0, SlipTrust.MayBeTrusted)]
    [InlineData(1, SlipTrust.MayBeTrusted)]
    public void Trust_TestAroundEndOfStorage_FollowsTheOrder(int daysAfterStorage, SlipTrust expected)
    {
        DateTime ended = Day.AddDays(-20);
        ClutchCondition condition = ClutchCondition.AsOf(Day).WithStorage(ended)
            .WithSlipTest(SlipTest.Slipped(ended.AddDays(daysAfterStorage)));
        Assert.Equal(expected, condition.Trust);
    }

    [Theory]
    [InlineData(0, SlipTrust.MayBeTrusted)]
    [InlineData(1, SlipTrust.NotKnown)]
    public void Trust_StorageNotKnown_CountsOnTheDayOfTheTestOnly(int age, SlipTrust expected) =>
        Assert.Equal(expected, ClutchCondition.AsOf(Day).WithSlipTest(SlipTest.Slipped(Day.AddDays(-age))).Trust);

    [Theory]
    [InlineData(365, SlipTrust.MayBeTrusted)]
    [InlineData(366, SlipTrust.NotKnown)]
    public void Trust_TestAgeAtAYear_IsTheLimit(int age, SlipTrust expected) => Assert.Equal(
        expected, ClutchCondition.AsOf(Day).WithStorage(Day.AddDays(-400)).WithSlipTest(SlipTest.Slipped(Day.AddDays(-age))).Trust);

    [Fact]
    public void Trust_NothingKnown_IsNotKnown()
    {
        Assert.Equal(SlipTrust.NotKnown, ClutchCondition.AsOf(Day).Trust);
        Assert.Equal(SlipTrust.NotKnown, ClutchCondition.AsOf(Day).WithSlipTest(SlipTest.NotRecorded(Day)).Trust);
        Assert.Equal(SlipTrust.MustNotBeTrusted, ClutchCondition.AsOf(Day).WithSlipTest(SlipTest.DidNotSlip(Day)).Trust);
    }

    [Fact]
    public void Stuck_ThenSlipped_IsFree()
    {
        ClutchCondition stuck = ClutchCondition.AsOf(Day).Stuck();
        Assert.Equal(SlipTrust.MustNotBeTrusted, stuck.Trust);
        Assert.Equal(SlipTrust.MayBeTrusted, stuck.WithSlipTest(SlipTest.Slipped(Day)).Trust);
        Assert.Equal(SlipTrust.MustNotBeTrusted, stuck.WithSlipTest(SlipTest.NotRecorded(Day)).Trust);
    }

    [Fact]
    public void FutureDates_AreRefusedWithBothDates()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(
            () => ClutchCondition.AsOf(Day).WithSlipTest(SlipTest.Slipped(Day.AddDays(1))));
        Assert.Contains("2026-05-04", error.Message, StringComparison.Ordinal);
        Assert.Contains("2026-05-05", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => ClutchCondition.AsOf(Day).WithStorage(Day.AddDays(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ClutchCondition.AsOf(Day).WithStorage(Day).JudgedOn(Day.AddDays(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ClutchCondition.AsOf(default));
    }

    [Theory]
    [InlineData(-0.1, false)]
    [InlineData(0, true)]
    [InlineData(1200, true)]
    [InlineData(1201, false)]
    [InlineData(double.NaN, false)]
    public void Storage_Months_KeepTheirRange(double months, bool accepted)
    {
        if (accepted)
        {
            Assert.Equal(months, ClutchCondition.AsOf(Day).WithStorage(Day, months).StorageMonths);
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => ClutchCondition.AsOf(Day).WithStorage(Day, months));
        }
    }

    [Fact]
    public void StoredMoist_WithoutTest_IsFound()
    {
        SlipTorque moist = SlipTorque.Of(
            Build.NineSprings(), Build.Clean(RunInState.RunIn).WithStorage(Day, 7).WithClimate(StorageClimate.Moist));
        SlipTorque dry = SlipTorque.Of(
            Build.NineSprings(), Build.Clean(RunInState.RunIn).WithStorage(Day, 7).WithClimate(StorageClimate.Dry));
        Assert.Contains(moist.Findings, f => f.Code == ClutchFindings.StoodMoist);
        Assert.DoesNotContain(dry.Findings, f => f.Code == ClutchFindings.StoodMoist);
        Assert.Null(dry.Breakaway.High);
    }

    [Fact]
    public void UnboundedWear_IsRefused() =>
        Assert.Throws<ArgumentException>(() => ClutchCondition.AsOf(Day).WithWear(LengthBand.AtLeast(Length.Zero, Build.Stated)));

    [Fact]
    public void Lever_DocumentedExample_Matches()
    {
        // Example of the documentation: 200 N at 3 m: 600 N·m, read as 540 to 660 N·m.
        TorqueBand read = SlipTest.Lever(Day, Force.FromNewtons(200), Length.FromMeters(3)).Running!;
        Assert.Equal(540, read.Low.NewtonMeters, 1e-9);
        Assert.Equal(600, Build.Expected(read), 1e-9);
        Assert.Equal(660, read.High!.Value.NewtonMeters, 1e-9);
    }

    [Theory]
    [InlineData(0, 3)]
    [InlineData(200, 0)]
    [InlineData(200, 10.1)]
    [InlineData(-5, 3)]
    public void Lever_BadReading_IsRefused(double newtons, double meters) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SlipTest.Lever(Day, Force.FromNewtons(newtons), Length.FromMeters(meters)));

    [Fact]
    public void Measured_UnboundedOrZero_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => SlipTest.Measured(Day, TorqueBand.AtLeast(Torque.FromNewtonMeters(5), Build.Stated)));
        Assert.Throws<ArgumentException>(() => SlipTest.Measured(Day, TorqueBand.Exactly(Torque.Zero, Build.Stated)));
        Assert.Throws<ArgumentException>(
            () => SlipTest.Slipped(Day).WithBreakaway(TorqueBand.Exactly(Torque.FromNewtonMeters(5), Build.Stated)));
    }
}
