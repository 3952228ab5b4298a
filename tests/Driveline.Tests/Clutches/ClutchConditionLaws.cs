using Driveline.Clutches;
using FsCheck.Xunit;
using UnitsNet;

namespace Driveline.Tests.Clutches;

[Properties(Arbitrary = [typeof(Shares)])]
public class ClutchConditionLaws
{
    [Law]
    public void Ageing_WithoutSlipTest_NeverImproves(Share facts, Share testAge, Share storageAge, Share later)
    {
        ClutchCondition now = Any(facts, testAge, storageAge);
        AssertNotBetter(now, now.JudgedOn(Build.Today.AddDays(later.Count(0, 900))));
    }

    [Law]
    public void Storage_AfterTheTest_NeverImproves(Share facts, Share testAge, Share storageAge, Share later)
    {
        ClutchCondition now = Any(facts, testAge, storageAge);
        DateTime day = Build.Today.AddDays(later.Count(1, 900));
        AssertNotBetter(now, now.JudgedOn(day).WithStorage(day, 3));
        Assert.False(now.JudgedOn(day).WithStorage(day).MayBeTrustedToSlip);
    }

    [Law]
    public void DroppingAFact_NeverCreatesTrust(Share facts, Share testAge, Share storageAge)
    {
        ClutchCondition full = Any(facts, testAge, storageAge);
        ClutchCondition noStorage = ClutchCondition.AsOf(full.Day).WithClimate(full.Climate);
        if (full.LastSlipTest is not null)
        {
            noStorage = noStorage.WithSlipTest(full.LastSlipTest);
        }

        ClutchCondition noTest = ClutchCondition.AsOf(full.Day);
        if (full.LastStorageEnded is { } ended)
        {
            noTest = noTest.WithStorage(ended);
        }

        Assert.True(full.MayBeTrustedToSlip || !noStorage.MayBeTrustedToSlip);
        Assert.False(noTest.MayBeTrustedToSlip);
    }

    private static void AssertNotBetter(ClutchCondition before, ClutchCondition after)
    {
        Assert.True(before.MayBeTrustedToSlip || !after.MayBeTrustedToSlip);
        SlipTorque first = SlipTorque.Of(Build.NineSprings(), before);
        SlipTorque second = SlipTorque.Of(Build.NineSprings(), after);
        Assert.True(second.Breakaway.SiBand.High >= first.Breakaway.SiBand.High);
        Assert.True(second.Breakaway.SiBand.Expected >= first.Breakaway.SiBand.Expected);
        Assert.True(second.Running.SiBand.Low <= first.Running.SiBand.Low);
    }

    private static ClutchCondition Any(Share facts, Share testAge, Share storageAge)
    {
        int kind = facts.Count(0, 15);
        ClutchCondition condition = Build.Clean(RunInState.RunIn).WithClimate((StorageClimate)(kind % 3));
        if ((kind & 1) == 1)
        {
            condition = condition.WithStorage(Build.Today.AddDays(-storageAge.Count(0, 500)));
        }

        DateTime tested = Build.Today.AddDays(-testAge.Count(0, 500));
        return (kind >> 1) switch
        {
            0 => condition,
            1 => condition.WithSlipTest(SlipTest.DidNotSlip(tested)),
            2 => condition.WithSlipTest(SlipTest.Lever(tested, Force.FromNewtons(180), Length.FromMeters(3))),
            3 => condition.Stuck(),
            _ => condition.WithSlipTest(SlipTest.Slipped(tested)),
        };
    }
}
