using Driveline.Protection;

namespace Driveline.Tests.Protection;

public class ProtectionLaws
{
    [Law(MaxTest = 400)]
    public void RemovingAFactOrAPart_NeverCreatesAYes(int seed)
    {
        ProtectionSpec spec = ProtectionSpec.Random(seed);
        ProtectionVerdict full = spec.Check();
        foreach ((string what, ProtectionSpec without) in spec.WithOneLess())
        {
            ProtectionVerdict less = without.Check();
            Assert.False(less.Guards == Answer.Yes && full.Guards != Answer.Yes, "guards became Yes without " + what);
            Assert.False(less.Quiet == Answer.Yes && full.Quiet != Answer.Yes, "quiet became Yes without " + what);
            Assert.False(less.Headline == Headline.Protected && full.Headline != Headline.Protected, "Protected without " + what);
        }
    }

    [Fact]
    public void RandomQuestions_ReachEveryAnswer()
    {
        // The law above would prove nothing over questions that never have a Yes.
        ProtectionVerdict[] verdicts = [.. Enumerable.Range(1, 300).Select(seed => ProtectionSpec.Random(seed).Check())];
        Assert.Contains(verdicts, v => v.Headline == Headline.Protected);
        Assert.Contains(verdicts, v => v.Guards == Answer.No);
        Assert.Contains(verdicts, v => v.Guards == Answer.Maybe);
        Assert.Contains(verdicts, v => v.Quiet == Answer.Yes && v.Guards != Answer.Yes);
        Assert.Contains(verdicts, v => v.Quiet == Answer.No);
    }

    [Law(MaxTest = 200)]
    public void ScalingEveryTorque_ChangesNoAnswer(int seed, byte exponent)
    {
        ProtectionSpec spec = ProtectionSpec.Random(seed);
        ProtectionVerdict one = spec.Check();
        ProtectionVerdict scaled = spec.ScaledBy(Math.Pow(2, (exponent % 9) - 4)).Check();   // powers of two keep the digits
        Assert.Equal(one.Headline, scaled.Headline);
        Assert.Equal(one.GuardMargin!.Value, scaled.GuardMargin!.Value, 1e-12);
        Assert.Equal(one.WorkMargin!.Value, scaled.WorkMargin!.Value, 1e-12);
    }

    [Law(MaxTest = 200)]
    public void StrongerParts_NeverWorsenGuards(int seed, byte percent)
    {
        ProtectionSpec spec = ProtectionSpec.Random(seed);
        Assert.True(spec.WithStrongerParts(1 + (percent / 100.0)).Check().Guards >= spec.Check().Guards);
    }

    [Law(MaxTest = 200)]
    public void StrongerDevice_NeverImprovesGuards_NeverWorsensQuiet(int seed, byte percent)
    {
        ProtectionSpec spec = ProtectionSpec.Random(seed);
        ProtectionVerdict one = spec.Check();
        ProtectionVerdict stronger = spec.WithStrongerDevice(1 + (percent / 100.0)).Check();
        Assert.True(stronger.Guards <= one.Guards);
        Assert.True(stronger.Quiet >= one.Quiet);
        Assert.True(stronger.GuardMargin <= one.GuardMargin);
        Assert.True(stronger.WorkMargin >= one.WorkMargin);
    }

    [Law(MaxTest = 200)]
    public void Yes_MeansItsMarginExceedsOne(int seed)
    {
        ProtectionVerdict verdict = ProtectionSpec.Random(seed).Check();
        Assert.True(verdict.Guards != Answer.Yes || verdict.GuardMargin > 1);
        Assert.True(verdict.Quiet != Answer.Yes || verdict.WorkMargin > 1);
        Assert.Equal(verdict.Guards != Answer.Yes, verdict.Doubts.Any(o => o.OnGuards));
        Assert.Equal(verdict.Quiet != Answer.Yes, verdict.Doubts.Any(o => o.OnQuiet));
    }
}
