using Driveline.Torsion;

namespace Driveline.Tests.Torsion;

public class RealEigenTests
{
    // λ² − 2λ + 5 = 0: 1 ± 2i.
    [Fact]
    public void Solve_TurningMatrix_GivesThePairOfTheHandCalculation()
    {
        var eigen = new RealEigen();
        Assert.True(eigen.Solve([1, -2, 2, 1], 2));
        Assert.Equal([1, 1], eigen.Re.Take(2));
        Assert.Equal([2, -2], eigen.Im.Take(2));
    }

    // Companion matrix of (λ − 1)(λ − 2)(λ − 3) = λ³ − 6λ² + 11λ − 6.
    [Fact]
    public void Solve_CompanionMatrix_GivesTheRoots()
    {
        var eigen = new RealEigen();
        Assert.True(eigen.Solve([6, -11, 6, 1, 0, 0, 0, 1, 0], 3));
        double[] roots = [.. eigen.Re.Take(3).Order()];
        Assert.Equal(1, roots[0], 1e-13);
        Assert.Equal(2, roots[1], 1e-13);
        Assert.Equal(3, roots[2], 1e-13);
        Assert.All(eigen.Im.Take(3), im => Assert.Equal(0, im));
    }

    // A cyclic shift: the n-th roots of one. A diagonal matrix and none at all: nothing to be done.
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(25)]
    public void Solve_CyclicShift_GivesTheRootsOfOne(int n)
    {
        double[] a = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            a[(i * n) + ((i + 1) % n)] = 1;
        }

        var eigen = new RealEigen();
        Assert.True(eigen.Solve(a, n));
        double[] angles = [.. Enumerable.Range(0, n).Select(j => Math.Atan2(eigen.Im[j], eigen.Re[j]) * n / (2 * Math.PI)).Order()];
        for (int j = 0; j < n; j++)
        {
            Assert.Equal(1, Math.Sqrt((eigen.Re[j] * eigen.Re[j]) + (eigen.Im[j] * eigen.Im[j])), 1e-12);
            Assert.Equal(Math.Round(angles[j]), angles[j], 1e-10);
        }
    }

    // A·v = λ·v for every vector, whatever the matrix and whatever was solved before in the same memory.
    [Fact]
    public void Solve_AnyMatrix_GivesVectorsOfItsValues()
    {
        var random = new Random(3);
        var eigen = new RealEigen();
        for (int trial = 0; trial < 300; trial++)
        {
            int n = random.Next(2, 14);
            double[] a = new double[n * n];
            for (int i = 0; i < a.Length; i++)
            {
                a[i] = random.Next(4) == 0 ? 0 : Math.Pow(10, random.Next(-2, 3)) * ((2 * random.NextDouble()) - 1);
            }

            Assert.True(eigen.Solve(a, n));
            for (int j = 0; j < n; j++)
            {
                Residue(eigen, a, n, j);
            }
        }
    }

    [Fact]
    public void Solve_NoNumbers_SaysSo() => Assert.False(new RealEigen().Solve([1, double.NaN, 2, 1], 2));

    private static void Residue(RealEigen eigen, double[] a, int n, int j)
    {
        int first = eigen.Im[j] < 0 ? j - 1 : j;
        bool isPair = eigen.Im[first] != 0;
        double size = 0;
        double worst = 0;
        double norm = a.Sum(Math.Abs);
        for (int i = 0; i < n; i++)
        {
            double re = 0;
            double im = 0;
            for (int k = 0; k < n; k++)
            {
                re += a[(i * n) + k] * eigen.Vectors[(k * n) + first];
                im += isPair ? a[(i * n) + k] * eigen.Vectors[(k * n) + first + 1] : 0;
            }

            double v = eigen.Vectors[(i * n) + first];
            double w = isPair ? eigen.Vectors[(i * n) + first + 1] : 0;
            worst = Math.Max(worst, Math.Abs(re - (eigen.Re[first] * v) + (eigen.Im[first] * w)));
            worst = Math.Max(worst, Math.Abs(im - (eigen.Re[first] * w) - (eigen.Im[first] * v)));
            size = Math.Max(size, Math.Max(Math.Abs(v), Math.Abs(w)));
        }

        Assert.True(worst <= 1e-13 * n * norm * size, "residue " + worst + " of " + (norm * size));
    }
}
