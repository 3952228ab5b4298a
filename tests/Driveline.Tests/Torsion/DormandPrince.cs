namespace Driveline.Tests.Torsion;

/// <summary>The embedded Runge–Kutta pair of orders 5 and 4 with dense output: a second method to check transients by.</summary>
/// <remarks>
/// Coefficients: J. R. Dormand, P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19–26; dense output of order 4 as in Hairer,
/// Nørsett, Wanner, Solving Ordinary Differential Equations I, 2nd ed., II.6 (both from memory; the order test below checks them).
/// </remarks>
internal static class DormandPrince
{
    private static readonly double[][] A =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    private static readonly double[] C = [0, 0.2, 0.3, 0.8, 8.0 / 9, 1, 1];

    private static readonly double[] Error =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private static readonly double[] Dense =
    [
        -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072,
        701980252875.0 / 199316789632, -1453857185.0 / 822651844, 69997945.0 / 29380423,
    ];

    /// <summary>States at the asked times, ascending from 0.</summary>
    public static double[][] Solve(Func<double, double[], double[]> rates, double[] start, double[] times, double tolerance)
    {
        var states = new double[times.Length][];
        int next = 0;
        double t = 0;
        double h = 1e-5;
        double[] y = (double[])start.Clone();
        double[] first = rates(0, y);
        while (next < times.Length)
        {
            double[][] k = Stages(rates, t, y, h, first, out double[] end);
            double worst = 0;
            for (int i = 0; i < y.Length; i++)
            {
                double error = h * Enumerable.Range(0, 7).Sum(s => Error[s] * k[s][i]);
                worst = Math.Max(worst, Math.Abs(error) / (tolerance * (1 + Math.Max(Math.Abs(y[i]), Math.Abs(end[i])))));
            }

            if (worst <= 1)
            {
                for (; next < times.Length && times[next] <= t + h; next++)
                {
                    states[next] = Between(y, end, k, h, (times[next] - t) / h);
                }

                t += h;
                y = end;
                first = k[6];
            }

            h *= Math.Min(4, Math.Max(0.2, 0.9 * Math.Pow(Math.Max(worst, 1e-10), -0.2)));
        }

        return states;
    }

    private static double[][] Stages(
        Func<double, double[], double[]> rates, double t, double[] y, double h, double[] first, out double[] end)
    {
        var k = new double[7][];
        k[0] = first;
        double[] at = y;
        for (int s = 1; s < 7; s++)
        {
            at = new double[y.Length];
            for (int i = 0; i < y.Length; i++)
            {
                at[i] = y[i] + (h * Enumerable.Range(0, s).Sum(p => A[s][p] * k[p][i]));
            }

            k[s] = rates(t + (C[s] * h), at);
        }

        end = at;
        return k;
    }

    private static double[] Between(double[] y, double[] end, double[][] k, double h, double s)
    {
        double[] state = new double[y.Length];
        for (int i = 0; i < y.Length; i++)
        {
            double rise = end[i] - y[i];
            double spread = (h * k[0][i]) - rise;
            double bend = rise - (h * k[6][i]) - spread;
            double last = h * Enumerable.Range(0, 7).Sum(p => Dense[p] * k[p][i]);
            state[i] = y[i] + (s * (rise + ((1 - s) * (spread + (s * (bend + ((1 - s) * last)))))));
        }

        return state;
    }
}
