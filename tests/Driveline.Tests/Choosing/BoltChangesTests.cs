using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Choosing;

/// <summary>Each change that is named is made, just beyond its number and just short of it, and the choice asked again.</summary>
public class BoltChangesTests
{
    private const double Tight = 0.0005;

    [Theory]
    [InlineData(1, true)]
    [InlineData(-1, false)]
    public void ChangePower_WorkBelowTheNumber_MakesABoltFit(int side, bool fits)
    {
        // The M8 8.8 of this size guards a tube of 3000 N·m and breaks in work of 2000 N·m.
        ProtectionQuestion question = Bench.Question(3000, 2000);
        Finding power = One(BoltChoice.For(question), ChoosingFindings.ChangePower);
        Assert.Equal(2000, power.Value("now"), 1e-9);
        Assert.Equal(100 * power.Value("below") / 2000, power.Value("percent"), 1e-9);
        BoltChoice again = BoltChoice.For(question.WithWork(WorkPeak.Stated(Nm(power.Value("below") * (1 - (side * Tight))))));
        Assert.Equal(fits, again.Best is not null);
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(-1, false)]
    public void ChangePart_EveryPartAboveTheNumber_MakesABoltFit(int side, bool fits)
    {
        ProtectionQuestion question = Bench.Question(700, 600);
        BoltChoice choice = BoltChoice.For(question);
        Finding part = One(choice, ChoosingFindings.ChangePart);
        Assert.Equal("drive tube", part.Parameter("name")!.Text);
        Assert.Equal("asIs", part.Parameter("place")!.Text);
        Assert.Equal(700, part.Value("now"), 1e-9);
        BoltChoice again = BoltChoice.For(Bench.Question(part.Value("above") * (1 + (side * Tight)), 600));
        Assert.Equal(fits, again.Best is not null);
    }

    [Fact]
    public void ChangeRadius_WithinTheRange_ActsInTimeAndStaysQuiet()
    {
        ProtectionQuestion question = Bench.Question(2000, 1200);
        Finding radius = One(BoltChoice.For(question), ChoosingFindings.ChangeRadius);
        string[] bolt = radius.Parameter("bolt")!.Text!.Split(' ');
        double low = radius.Value("low") * 1000;
        double high = radius.Value("high") * 1000;
        Assert.Equal(50, radius.Value("now") * 1000, 1e-9);
        Assert.True(high > low);
        foreach ((double mm, bool isQuiet, bool guards) in new[]
        {
            (low * (1 - Tight), false, true), (low * (1 + Tight), true, true), (Math.Sqrt(low * high), true, true),
            (high * (1 - Tight), true, true), (high * (1 + Tight), true, false),
        })
        {
            ShearBoltDevice moved = Bench.Bolt(string.Join(" ", bolt[..^2]), bolt[^2] + " " + bolt[^1], mm);
            ProtectionVerdict verdict = ProtectionCheck.Run(question.WithChain(Bench.Chain(moved, 2000)));
            Assert.Equal(isQuiet, verdict.WorkMargin > 1);
            Assert.Equal(guards, verdict.GuardMargin > 1);
        }
    }

    [Fact]
    public void ChangeRadius_ThroughAShaft_ClearsTheShaft()
    {
        // hand: shaft 31.75 mm, so a bolt beside it has its axis at least 15.875 mm plus 4 mm, half of an M8, away
        BoltChoice choice = BoltChoice.For(Cases.DemoCases.Verdict("thornbeck-unmarked").Question);
        Finding radius = One(choice, ChoosingFindings.ChangeRadius);
        Assert.Equal("M8 ISO 10.9", radius.Parameter("bolt")!.Text);
        Assert.True(radius.Value("low") >= 0.019875 - 1e-9, "the bolt would sit in the shaft");
    }

    [Fact]
    public void ChangePosition_BehindTheGearbox_HasTheMarginsItNames()
    {
        // The tube takes little and the work is heavy: behind a speeding-up gearbox torque is less, so a smaller, tighter bolt serves.
        ProtectionQuestion question = Bench.Question(2000, 1200);
        Finding moved = One(BoltChoice.For(question), ChoosingFindings.ChangePositionBehind);
        string[] bolt = moved.Parameter("bolt")!.Text!.Split(' ');
        ShearBoltDevice device = Bench.Bolt(string.Join(" ", bolt[..^2]), bolt[^2] + " " + bolt[^1], 50);
        DrivelineChain chain = DrivelineChain.Of(
            Stub, Protection.Thornbeck.Joint, Part.Shaft("drive tube").WithDamageTorque(Nm(2000)), Gearbox, device, Blades);
        ProtectionVerdict verdict = ProtectionCheck.Run(question.WithChain(chain));
        Assert.Equal(verdict.WorkMargin!.Value, moved.Value("workMargin"), 1e-9);
        Assert.Equal(verdict.GuardMargin!.Value, moved.Value("guardMargin"), 1e-9);
        Assert.True(verdict is { WorkMargin: > 1, GuardMargin: > 1 });
    }

    [Theory]
    [InlineData(0.999, false)]
    [InlineData(1.001, true)]
    public void ChangeEngagement_AboveTheWeakestBolt_IsNamed(double timesTripLow, bool isNamed)
    {
        ProtectionQuestion question = Bench.Question(3000, 300);
        double low = BoltChoice.For(question).Best!.Trip!.Low.NewtonMeters;
        BoltChoice choice = BoltChoice.For(
            question.WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithPeak(Nm(low * timesTripLow))));
        Finding? gentle = choice.Findings.FirstOrDefault(f => f.Code == ChoosingFindings.ChangeEngagement);
        Assert.Equal(isNamed, gentle is not null);
        if (gentle is not null)
        {
            Assert.Equal(low * timesTripLow, gentle.Value("now"), 1e-6);
            Assert.True(gentle.Value("below") < gentle.Value("now"));
        }
    }

    [Fact]
    public void For_ABoltThatFits_NamesNoOtherChange()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300));
        Assert.NotNull(choice.Best);
        Assert.DoesNotContain(Bench.Codes(choice), c => c.StartsWith("choosing.change.", StringComparison.Ordinal));
    }

    [Fact]
    public void SmallerBetterBounded_HasTheMarginsOfThatBoltInAHoleOfItsOwn()
    {
        ProtectionQuestion question = Bench.Question(Bench.Bolt("M12", "4.6", 50), 2900, 900);
        BoltChoice choice = BoltChoice.For(
            question.WithSpecified(null), ChoiceTerms.Default.WithStock(Bench.Stock("M12, 4.6", "M8, 10.9")));
        Finding better = One(choice, ChoosingFindings.SmallerBetterBounded);
        Assert.Equal("M8 ISO 10.9", better.Parameter("bolt")!.Text);
        Assert.Equal("M12 ISO 4.6", better.Parameter("than")!.Text);
        Assert.True(better.Value("scatter") < better.Value("thanScatter"));
        ProtectionVerdict verdict = ProtectionCheck.Run(question.WithChain(Bench.Chain(Bench.Bolt("M8", "10.9", 50), 2900)));
        Assert.Equal(verdict.WorkMargin!.Value, better.Value("workMargin"), 1e-9);
        Assert.Equal(verdict.GuardMargin!.Value, better.Value("guardMargin"), 1e-9);
        Assert.DoesNotContain(choice.Choices, c => c.Item.Name == "M8 ISO 10.9");   // it would be loose in the hole that is there
    }

    [Fact]
    public void SmallerBetterBounded_LimitsNotComplete_IsNotShownWhenItMayBeStronger()
    {
        ProtectionQuestion question = Bench.Question(Bench.Bolt("M12", "4.6", 50), 2900, 900).WithSpecified(null).WithPartsComplete(false);
        BoltChoice choice = BoltChoice.For(question, ChoiceTerms.Default.WithStock(Bench.Stock("M12, 4.6", "M12, 8.8", "M10, 10.9")));
        Assert.Equal(["M12 ISO 4.6"], choice.Choices.Select(c => c.Item.Name));
        Assert.DoesNotContain(ChoosingFindings.SmallerBetterBounded, Bench.Codes(choice));
    }

    private static Finding One(BoltChoice choice, string code)
    {
        Assert.True(choice.Findings.Any(f => f.Code == code),
            code + " is missing: " + string.Join(", ", choice.Findings) + "; " + string.Join(
            ", ", choice.Choices.Select(c => FormattableString.Invariant($"{c} w {c.WorkMargin:F2} g {c.GuardMargin:F2}"))));
        return choice.Findings.First(f => f.Code == code);
    }
}
