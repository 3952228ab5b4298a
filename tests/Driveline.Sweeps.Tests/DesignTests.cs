using Driveline.Sweeps.Sampling;

namespace Driveline.Sweeps.Tests;

public class DesignTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(7, 3)]
    [InlineData(1024, 5)]
    [InlineData(1000, 2)]
    public void LatinHypercube_EachDimension_HasOnePointAStratum(int rows, int dimensions) =>
        AssertOnePointAStratum(new LatinPoints(dimensions, rows, 11), rows);

    [Theory]
    [InlineData(9, 2)]
    [InlineData(40, 4)]
    public void MaximinHypercube_EachDimension_HasOnePointAStratum(int rows, int dimensions) =>
        AssertOnePointAStratum(new MaximinPoints(dimensions, rows, 11), rows);

    [Theory]
    [InlineData(30, 2, 1)]
    [InlineData(60, 3, 2)]
    public void MaximinHypercube_SmallestDistance_IsAboveThatOfAPlainOne(int rows, int dimensions, int seed)
    {
        var spread = new MaximinPoints(dimensions, rows, (ulong)seed);
        double plain = Enumerable.Range(0, 20).Average(s => SmallestDistance(new LatinPoints(dimensions, rows, (ulong)s), rows));
        Assert.True(spread.SmallestDistance() / rows > 1.5 * plain, $"{spread.SmallestDistance() / rows} against {plain}");
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(500, 2)]
    [InlineData(1110, 3)]
    public void ScrambledSobol_FirstPowerOfTwo_HasOnePointAStratum(int dimension, int seed)
    {
        SobolDimension x = SobolPoints.Dimension(dimension, (ulong)seed);
        Assert.Equal(
            Enumerable.Range(0, 1024), Enumerable.Range(0, 1024).Select(k => (int)(x[(uint)k] >> 22)).Order());
    }

    [Fact]
    public void ScrambledSobol_TwoDimensions_FillEveryElementaryBox()
    {
        // Dimensions 1 and 2 make a (0, m, 2)-net: 256 points, one in each of 16 × 16, 4 × 64 and 64 × 4 boxes (Sobol 1967).
        SobolDimension x = SobolPoints.Dimension(0, 5);
        SobolDimension y = SobolPoints.Dimension(1, 5);
        foreach (int bits in new[] { 2, 4, 6 })
        {
            Assert.Equal(256, Enumerable.Range(0, 256)
                .Select(k => ((x[(uint)k] >> (32 - bits)) << (8 - bits)) | (y[(uint)k] >> (24 + bits))).Distinct().Count());
        }
    }

    [Theory]
    [InlineData(0u, 1000)]
    [InlineData(1u, 255)]
    [InlineData(250u, 600)]
    [InlineData(4294967000u, 296)]
    public void Sobol_ManyAtOnce_AreThoseOneByOne(uint first, int count)
    {
        foreach (ulong? seed in new ulong?[] { null, 9 })
        {
            SobolDimension x = SobolPoints.Dimension(17, seed);
            double[] many = new double[count];
            x.Fill(first, many);
            Assert.Equal(Enumerable.Range(0, count).Select(k => (x[first + (uint)k] + 0.5) / 4294967296.0), many);
        }
    }

    [Fact]
    public void Random_PairsOfDimensions_DoNotCorrelate()
    {
        double[][] columns = Columns(new RandomPoints(4, 20_000, 3), 20_000);
        for (int a = 0; a < 4; a++)
        {
            Assert.InRange(columns[a].Average(), 0.5 - 0.01, 0.5 + 0.01);
            for (int b = 0; b < a; b++)
            {
                // 4 / √n = 0.028.
                Assert.InRange(Statistics.Ranks.Correlation(columns[a], columns[b])!.Value, -0.028, 0.028);
            }
        }
    }

    [Fact]
    public void Grid_LastFactor_RunsFastest()
    {
        double[][] columns = Columns(new GridPoints([2, 3], [false, false], 6), 6);
        Assert.Equal([0, 0, 0, 1, 1, 1], columns[0]);
        Assert.Equal([0, 0.5, 1, 0, 0.5, 1], columns[1]);
    }

    [Fact]
    public void Morris_EachTrajectory_StepsEachFactorOnceWithinTheGrid()
    {
        var points = new MorrisPoints(5, 20, 4, 8);
        double[][] x = Columns(points, 120);
        for (int t = 0; t < 20; t++)
        {
            var stepped = new HashSet<int>();
            for (int k = 0; k < 5; k++)
            {
                int row = (6 * t) + k;
                int[] moved = [.. Enumerable.Range(0, 5).Where(d => x[d][row] != x[d][row + 1])];
                Assert.Equal(2.0 / 3, Math.Abs(x[Assert.Single(moved)][row + 1] - x[moved[0]][row]), 12);
                Assert.Equal(points.Stepped(t, k), moved[0]);
                Assert.True(stepped.Add(moved[0]));
            }
        }

        Assert.All(x, column => Assert.All(column, v => Assert.InRange(v, -1e-15, 1 + 1e-15)));
        Assert.All(x.SelectMany(c => c), v => Assert.Equal(Math.Round(3 * v) / 3, v, 12));
    }

    [Fact]
    public void Saltelli_RowsOfAPoint_AreAThenBThenMixed()
    {
        double[][] both = Columns(new SobolPoints(4, 3, 1), 3);
        double[][] rows = Columns(new SaltelliPoints(new SobolPoints(4, 3, 1)), 12);
        for (int j = 0; j < 3; j++)
        {
            (double a0, double a1, double b0, double b1) = (both[0][j], both[1][j], both[2][j], both[3][j]);
            Assert.Equal([a0, b0, b0, a0], rows[0].AsSpan(4 * j, 4).ToArray());
            Assert.Equal([a1, b1, a1, b1], rows[1].AsSpan(4 * j, 4).ToArray());
        }
    }

    [Theory]
    [InlineData(DesignKind.Random)]
    [InlineData(DesignKind.LatinHypercube)]
    [InlineData(DesignKind.Sobol)]
    [InlineData(DesignKind.Morris)]
    [InlineData(DesignKind.Grid)]
    public void Design_AnyPart_IsThatOfTheWhole(DesignKind kind)
    {
        UnitPoints points = kind switch
        {
            DesignKind.Random => new RandomPoints(3, 1000, 5),
            DesignKind.LatinHypercube => new LatinPoints(3, 1000, 5),
            DesignKind.Sobol => new SaltelliPoints(new SobolPoints(6, 200, 5)),
            DesignKind.Morris => new MorrisPoints(3, 250, 4, 5),
            _ => new GridPoints([10, 10, 10], [false, true, false], 1000),
        };
        double[][] whole = Columns(points, 1000);
        double[][] part = [new double[333], new double[333], new double[333]];
        points.Fill(421, 333, part);
        Assert.All(Enumerable.Range(0, 3), d => Assert.Equal(whole[d].AsSpan(421, 333).ToArray(), part[d]));
    }

    private static double[][] Columns(UnitPoints points, int rows)
    {
        double[][] columns = [.. Enumerable.Range(0, points.Dimensions).Select(_ => new double[rows])];
        points.Fill(0, rows, columns);
        return columns;
    }

    private static void AssertOnePointAStratum(UnitPoints points, int rows) => Assert.All(Columns(points, rows), column =>
        Assert.Equal(Enumerable.Range(0, rows), column.Select(v => (int)Math.Floor(v * rows)).Order()));

    private static double SmallestDistance(UnitPoints points, int rows)
    {
        double[][] x = Columns(points, rows);
        return Math.Sqrt(Enumerable.Range(0, rows).SelectMany(a => Enumerable.Range(0, a)
            .Select(b => x.Sum(c => (c[a] - c[b]) * (c[a] - c[b])))).Min());
    }
}
