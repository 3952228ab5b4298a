namespace Driveline.Sweeps.Tests;

/// <summary>Functions whose indices are known in closed form; factors from 0 to 1.</summary>
internal static class TestFunctions
{
    /// <summary>Ishigami and Homma (1990), a = 7, b = 0.1.</summary>
    public static double Ishigami(ReadOnlySpan<double> u)
    {
        double x1 = Math.PI * ((2 * u[0]) - 1);
        double x2 = Math.PI * ((2 * u[1]) - 1);
        double x3 = Math.PI * ((2 * u[2]) - 1);
        return Math.Sin(x1) + (7 * Math.Sin(x2) * Math.Sin(x2)) + (0.1 * x3 * x3 * x3 * x3 * Math.Sin(x1));
    }

    /// <summary>Sobol's G.</summary>
    public static double G(ReadOnlySpan<double> u, ReadOnlySpan<double> a)
    {
        double product = 1;
        for (int k = 0; k < u.Length; k++)
        {
            product *= (Math.Abs((4 * u[k]) - 2) + a[k]) / (1 + a[k]);
        }

        return product;
    }

    public static Factor[] Units(int count) => [.. Enumerable.Range(1, count).Select(k => Factor.Uniform("x" + k, 0, 1))];
}
