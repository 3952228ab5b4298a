namespace Driveline.Torsion;

/// <summary>Eigenvalues and right eigenvectors of a small real matrix, in memory of its own that is used again.</summary>
/// <remarks>
/// Householder reduction to Hessenberg form, double QR steps to the real Schur form, back-substitution: procedures orthes and hqr2,
/// J. H. Wilkinson, C. Reinsch, Handbook for Automatic Computation II, 1971, contributions II/13 and II/15. Matrices are row by row.
/// Column j of the vectors belongs to a real value; columns j and j + 1 are real and imaginary part of the vector of Re + i·Im, Im &gt; 0.
/// </remarks>
internal sealed partial class RealEigen
{
    private const double Epsilon = 2.2204460492503131e-16;
    private const int MostSteps = 60;

    private int n;
    private double norm;
    private double[] h = [];
    private double[] v = [];
    private double[] ort = [];

    public double[] Re { get; private set; } = [];

    public double[] Im { get; private set; } = [];

    /// <summary>The vectors, of no particular length.</summary>
    public double[] Vectors => v;

    /// <summary>Finds them; false when the steps don't settle.</summary>
    public bool Solve(double[] matrix, int size)
    {
        n = size;
        if (h.Length < n * n)
        {
            h = new double[n * n];
            v = new double[n * n];
            ort = new double[n];
            Re = new double[n];
            Im = new double[n];
        }

        Array.Copy(matrix, h, n * n);
        Array.Clear(v, 0, n * n);
        for (int i = 0; i < n; i++)
        {
            v[(i * n) + i] = 1;
        }

        Reduce();
        norm = 0;
        for (int i = 0; i < n; i++)
        {
            for (int j = Math.Max(i - 1, 0); j < n; j++)
            {
                norm += Math.Abs(h[(i * n) + j]);
            }
        }

        if (!(norm <= double.MaxValue) || !Deflate())
        {
            return false;
        }

        Substitute();
        return true;
    }

    private void Reduce()
    {
        for (int m = 1; m < n - 1; m++)
        {
            double scale = 0;
            for (int i = m; i < n; i++)
            {
                scale += Math.Abs(h[(i * n) + m - 1]);
            }

            if (scale == 0)
            {
                continue;
            }

            double square = 0;
            for (int i = n - 1; i >= m; i--)
            {
                ort[i] = h[(i * n) + m - 1] / scale;
                square += ort[i] * ort[i];
            }

            double g = ort[m] > 0 ? -Math.Sqrt(square) : Math.Sqrt(square);
            square -= ort[m] * g;
            ort[m] -= g;
            Reflect(m, square);
            ort[m] *= scale;
            h[(m * n) + m - 1] = scale * g;
        }

        for (int m = n - 2; m >= 1; m--)
        {
            if (h[(m * n) + m - 1] != 0)
            {
                Gather(m);
            }
        }
    }

    // From both sides, by I − u·uᵀ/square.
    private void Reflect(int m, double square)
    {
        for (int j = m; j < n; j++)
        {
            double f = 0;
            for (int i = n - 1; i >= m; i--)
            {
                f += ort[i] * h[(i * n) + j];
            }

            f /= square;
            for (int i = m; i < n; i++)
            {
                h[(i * n) + j] -= f * ort[i];
            }
        }

        for (int i = 0; i < n; i++)
        {
            double f = 0;
            for (int j = n - 1; j >= m; j--)
            {
                f += ort[j] * h[(i * n) + j];
            }

            f /= square;
            for (int j = m; j < n; j++)
            {
                h[(i * n) + j] -= f * ort[j];
            }
        }
    }

    private void Gather(int m)
    {
        for (int i = m + 1; i < n; i++)
        {
            ort[i] = h[(i * n) + m - 1];
        }

        for (int j = m; j < n; j++)
        {
            double g = 0;
            for (int i = m; i < n; i++)
            {
                g += ort[i] * v[(i * n) + j];
            }

            g = g / ort[m] / h[(m * n) + m - 1];
            for (int i = m; i < n; i++)
            {
                v[(i * n) + j] += g * ort[i];
            }
        }
    }
}
