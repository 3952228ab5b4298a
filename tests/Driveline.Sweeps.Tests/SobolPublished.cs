using System.Globalization;
using Driveline.Sweeps.Sampling;
using Driveline.Tests;

namespace Driveline.Sweeps.Tests;

/// <summary>Sobol points against stores of the direction numbers and points of another library.</summary>
public class SobolPublished
{
    public static TheoryData<ReferenceRow> Numbers => ReferenceTable.Where("sweeps", "sensitivity.csv",
        r => r["id"].StartsWith("JK", StringComparison.Ordinal) && r["id"] != "JK1");

    public static TheoryData<ReferenceRow> FirstPoints => ReferenceTable.Where("sweeps", "sensitivity.csv",
        r => r["id"].StartsWith("SP", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void DirectionNumbers_OfADimension_AreThePublished(ReferenceRow row)
    {
        int dimension = int.Parse(row["id"][2..], CultureInfo.InvariantCulture);
        uint[] m = [.. row["value"].Split(';')[2].Trim().Split(' ').Select(v => uint.Parse(v, CultureInfo.InvariantCulture))];
        uint[] held = JoeKuo.Of(dimension - 1);
        Assert.Equal(m, m.Select((_, k) => held[k] >> (31 - k)));
    }

    [Theory]
    [MemberData(nameof(FirstPoints))]
    public void Sobol_FirstPoints_AreThePublished(ReferenceRow row)
    {
        uint index = uint.Parse(row["id"][2..], CultureInfo.InvariantCulture);
        double[] point = [.. row["value"].Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
        Assert.Equal(8, point.Length);
        Assert.Equal(point, Enumerable.Range(0, 8).Select(d => SobolPoints.Dimension(d, null)[index] / 4294967296.0));
    }

    [Fact]
    public void Sobol_MeanOfIshigami_IsThatOfAnotherLibrary()
    {
        // 4096 points with the origin: 3.5000033227 (row SQ1, SciPy 1.10.1).
        double sum = 0;
        SobolDimension[] x = [.. Enumerable.Range(0, 3).Select(d => SobolPoints.Dimension(d, null))];
        for (uint k = 0; k < 4096; k++)
        {
            sum += TestFunctions.Ishigami([x[0][k] / 4294967296.0, x[1][k] / 4294967296.0, x[2][k] / 4294967296.0]);
        }

        Assert.Equal(3.5000033227, sum / 4096, 10);
    }
}
