using Driveline.Fasteners;
using Driveline.Quantities;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Fasteners;

public sealed class FastenerLaws
{
    private static readonly ScrewThread[] Threads = [.. UnifiedThread.All, .. MetricThread.All];

    [Fact]
    public void TensileBand_EveryGradeAndThread_IsOrderedAndLoadFollowsIt()
    {
        int held = 0;
        foreach (BoltGrade grade in BoltGrades.All)
        {
            foreach (ScrewThread thread in Threads)
            {
                if (BoltStrength.TryOf(grade, thread, out BoltStrength? strength))
                {
                    held++;
                    Band band = strength!.Strength.Tensile.SiBand;
                    Assert.True(band.Low > 0 && band.Low <= band.Expected && band.Expected <= band.High, grade + " " + thread);
                    Assert.Equal(band.Low * thread.StressAreaM2, strength.TensileLoad.SiBand.Low, 6);
                    Assert.True(strength.ProofLoadByRule is null || strength.ProofLoadByRule.Value < strength.MinimumTensileLoadByRule,
                        grade + " " + thread);
                }
            }
        }

        Assert.True(held > 600, FormattableString.Invariant($"{held} pairs of grade and thread are held."));
    }

    [Theory]
    [InlineData("SAE 1,SAE 2,SAE 5,SAE 7,SAE 8", "1/2-13 UNC")]
    [InlineData("SAE 1,SAE 2,SAE 5,SAE 7,SAE 8", "1-1/4-7 UNC")]
    [InlineData("ISO 3.6,ISO 4.6,ISO 4.8,ISO 5.6,ISO 5.8,ISO 6.8,ISO 8.8,ISO 9.8,ISO 10.9,ISO 12.9", "M12")]
    [InlineData("ISO 3.6,ISO 4.6,ISO 4.8,ISO 5.6,ISO 5.8,ISO 6.8,ISO 8.8,ISO 10.9,ISO 12.9", "M20")]
    public void StrongerGrade_AtOneSize_IsNeverLowerAtAnyEnd(string grades, string thread)
    {
        Band[] bands = [.. grades.Split(',').Select(g => BoltGrade.Parse(g).At(ScrewThread.Parse(thread)).Tensile.SiBand)];
        for (int i = 1; i < bands.Length; i++)
        {
            Assert.True(bands[i].Low >= bands[i - 1].Low && bands[i].Expected >= bands[i - 1].Expected
                && bands[i].High >= bands[i - 1].High, grades.Split(',')[i]);
        }
    }

    [Fact]
    public void Areas_EveryThread_AreOrderedRootStressShank() =>
        Assert.All(Threads, t => Assert.True(t.RootAreaM2 < t.StressAreaM2 && t.StressAreaM2 < t.ShankAreaM2, t.Designation));

    [Law(MaxTest = 200)]
    public Property Hardness_Higher_NeverConvertsLower() => Prop.ForAll(
        Gen.Elements(HardnessScale.Vickers, HardnessScale.Brinell, HardnessScale.RockwellB, HardnessScale.RockwellC)
            .SelectMany(s => Gen.Choose(0, 10000).SelectMany(a => Gen.Choose(0, 10000).Select(b => (s, Math.Min(a, b), Math.Max(a, b)))))
                .ToArbitrary(),
        sample =>
        {
            (HardnessScale scale, int low, int high) = sample;
            Band softer = At(scale, low).ToTensile().SiBand;
            Band harder = At(scale, high).ToTensile().SiBand;
            return softer.Low <= harder.Low + 1 && softer.Expected <= harder.Expected + 1 && softer.High <= harder.High + 1;
        });

    [Law(MaxTest = 200)]
    public Property Thread_AnySpacingAndCase_ReadsTheSame() => Prop.ForAll(
        Gen.Elements(Threads).SelectMany(t => Gen.Choose(0, 3).SelectMany(n => Gen.Elements(true, false).Select(u => (t, n, u))))
            .ToArbitrary(),
        sample =>
        {
            (ScrewThread thread, int spaces, bool upper) = sample;
            string text = new string(' ', spaces) + (upper ? thread.Designation.ToUpperInvariant() : thread.Designation.ToLowerInvariant())
                + new string(' ', spaces);
            return ScrewThread.Parse(text).Equals(thread);
        });

    [Fact]
    public void Thread_DecimalInches_ReadsAsTheFraction() =>
        Assert.All(UnifiedThread.All, t => Assert.Equal(
            t, ScrewThread.Parse(FormattableString.Invariant($"{t.MajorDiameter.Inches:0.####} in-{t.ThreadsPerInch}"))));

    [Law(MaxTest = 300)]
    public Property Texts_OfAnyKind_NeverThrow() => Prop.ForAll(
        ArbMap.Default.ArbFor<string?>(),
        text =>
        {
            bool thread = ScrewThread.TryParse(text, out ScrewThread? t, out string? p1);
            bool grade = BoltGrade.TryParse(text, out BoltGrade? g, out string? p2);
            bool pin = SpringPin.TryParse(text, out SpringPin? s, out string? p3);
            bool hardness = Hardness.TryParse(text, out Hardness? h, out string? p4);
            bool rod = RodMaterial.TryParse(text, out RodMaterial? r, out string? p5);
            HeadMarks.Identify(text, Threads[0]);
            return thread == (t is not null) && grade == (g is not null) && pin == (s is not null) && hardness == (h is not null)
                && rod == (r is not null)
                && thread == (p1 is null) && grade == (p2 is null) && pin == (p3 is null) && hardness == (p4 is null)
                    && rod == (p5 is null);
        });

    private static Hardness At(HardnessScale scale, int share)
    {
        (double low, double high) = scale switch
        {
            HardnessScale.Vickers => (80, 450),
            HardnessScale.Brinell => (76, 428),
            HardnessScale.RockwellB => (65, 100),
            _ => (20, 45.0),
        };
        return Hardness.Of(scale, low + ((high - low) * share / 10000));
    }
}
