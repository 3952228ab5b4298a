using Driveline.Torsion;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Torsion;

/// <summary>The search that no event escapes, on polynomials whose roots and peaks are known by construction.</summary>
public class RootSearchTests
{
    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    [InlineData(1e-9)]
    public void FirstRise_GrazingHumpAboveZero_IsNotMissed(double halfWidth)
    {
        // w² − (s − 0.4)²: above zero only within 0.4 ± w.
        double[] c = [(halfWidth * halfWidth) - 0.16, 0.8, -1];
        Assert.Equal(0.4 - halfWidth, RootSearch.FirstRise(c, 0, 1), 1e-8 * halfWidth + 2e-16 / halfWidth);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    public void FirstRise_HumpThatStaysBelow_FindsNothing(double gap)
    {
        double[] c = [-gap - 0.16, 0.8, -1];
        Assert.True(double.IsNaN(RootSearch.FirstRise(c, 0, 1)));
    }

    [Fact]
    public void FirstRise_FallingRoot_IsNoEvent() => Assert.True(double.IsNaN(RootSearch.FirstRise([-1.0, -2, 1], 0, 1)));

    [Fact]
    public void FirstRise_RootBeyondTheEnd_IsNoEvent() => Assert.True(double.IsNaN(RootSearch.FirstRise([-0.5, 1], 0, 0.49)));

    [Fact]
    public void FirstRise_RootAtTheEnd_IsFoundJustPastIt() => Assert.Equal(0.5, RootSearch.FirstRise([-0.5, 1], 0, 0.500001), 1e-15);

    [Law(MaxTest = 200)]
    public Property FirstRise_ThreeRoots_GivesTheFirstRisingOne() =>
        Prop.ForAll(Place().ToArbitrary(), Place().ToArbitrary(), Place().ToArbitrary(), (a, b, d) =>
    {
        double[] r = [a, b, d];
        Array.Sort(r);
        if (r[1] - r[0] < 1e-4 || r[2] - r[1] < 1e-4)
        {
            return true;
        }

        // (s − r0)(s − r1)(s − r2) is negative at 0 and rises first at r0.
        double[] c = [-r[0] * r[1] * r[2], (r[0] * r[1]) + (r[1] * r[2]) + (r[0] * r[2]), -(r[0] + r[1] + r[2]), 1];
        double[] negative = Array.ConvertAll(c, x => -x);

        // Rounding moves a root by at most about 4 ε Σ|c| / |slope|, Σ|c| ≤ 8: two roots 0.001 apart allow no 1e-11.
        double first = 7e-15 / ((r[1] - r[0]) * (r[2] - r[0])), second = 7e-15 / ((r[1] - r[0]) * (r[2] - r[1]));
        return Math.Abs(RootSearch.FirstRise(c, 0, 1) - r[0]) < 1e-11 + first
            && Math.Abs(RootSearch.FirstRise(negative, r[0] + 1e-5, 1) - r[1]) < 1e-10 + second;
    });

    [Theory]
    [InlineData(1.0, 0.1)]
    [InlineData(3.0, 0.7)]
    [InlineData(3.4, 2.5)]
    [InlineData(3.4, -1.5)]
    public void Raise_SeriesOfASine_FindsThePeakOfOne(double reach, double phase)
    {
        // sin(reach·s + phase), its Taylor series to the 27th power.
        double[] c = new double[28];
        double term = 1;
        for (int j = 0; j < c.Length; j++)
        {
            c[j] = term * Math.Sin(phase + (j * Math.PI / 2));
            term *= reach / (j + 1);
        }

        double best = 0;
        double at = 0;
        Assert.True(PeakSearch.Raise(c, 1, ref best, ref at));
        double place = (Math.PI / 2) - phase;
        while (place < 0)
        {
            place += 2 * Math.PI;
        }

        bool inside = place < reach;
        Assert.Equal(inside ? 1 : Math.Max(Math.Sin(phase), Math.Sin(reach + phase)), best, 1e-13);
        Assert.Equal(inside ? place / reach : Math.Sin(phase) > Math.Sin(reach + phase) ? 0 : 1, at, 1e-8);
    }

    private static Gen<double> Place() => Gen.Choose(1, 999).Select(n => n / 1000.0);

    [Fact]
    public void Raise_TermsThatCancelToRounding_IsNoLongSearch()
    {
        // e^(−x)·e^x terms: values about 0, terms up to 1e9, so that every value is rounding.
        double[] c = new double[28];
        for (int j = 0; j < c.Length; j++)
        {
            c[j] = (j % 2 == 0 ? 1e9 : -1e9) / (j + 1);
        }

        double sum = Polynomial.Value(c, 1);
        c[0] -= sum;
        double best = 0;
        double at = 0;
        long work = 0;
        PeakSearch.Raise(c, 1, ref best, ref at, ref work);
        Assert.True(work < 100_000, work.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }
}
