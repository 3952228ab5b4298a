namespace Driveline.Torsion;

/// <summary>Eigenvalues and eigenvectors of one part of a system that hangs together, with the inverse of the vectors.</summary>
/// <remarks>
/// Column n is a real eigenvector; columns n and n + 1 are real and imaginary part of the vector of λ = Re + i·Im, Im &gt; 0.
/// The matrix is in coordinates whose square is energy, so that lightly damped vectors are nearly orthogonal. All matrices are row by row.
/// </remarks>
internal sealed partial class EigenBasis
{
    private const double WorstCondition = 300;

    // Keeps a pair a pair that rounding alone has made of two real values.
    private const double Least = 1e-300;

    private readonly RealEigen eigen = new();
    private int n;
    private double[] left = [];

    public double[] Re { get; private set; } = [];

    /// <summary>0 for a real eigenvalue; above 0 in the first column of a pair, below 0 in the second.</summary>
    public double[] Im { get; private set; } = [];

    public double[] Vectors { get; private set; } = [];

    public double[] Inverse { get; private set; } = [];

    /// <summary>Solves a square matrix; a vector that it must send to nothing may be given.</summary>
    /// <returns>False when vectors are too near one another to part the motion into modes.</returns>
    public bool Solve(double[] a, int size, ReadOnlySpan<double> still)
    {
        n = size;
        Fit();
        if (!Solve(a) || !Invert() || !(Condition() <= WorstCondition * n))
        {
            return false;
        }

        Polish(a);
        if (still.Length > 0)
        {
            Replace(still);
        }

        return true;
    }

    private void Fit()
    {
        if (Re.Length < n)
        {
            Re = new double[n];
            Im = new double[n];
            Vectors = new double[n * n];
            Inverse = new double[n * n];
            left = new double[n * n];
        }
    }

    private bool Solve(double[] a)
    {
        if (n == 1)
        {
            Re[0] = Math.Min(a[0], 0);
            Im[0] = 0;
            Vectors[0] = 1;
            return true;
        }

        if (!eigen.Solve(a, n))
        {
            return false;
        }

        double[] of = eigen.Vectors;
        for (int j = 0; j < n; j++)
        {
            Re[j] = eigen.Re[j];
            Im[j] = eigen.Im[j];
        }

        for (int j = 0; j < n; j++)
        {
            int other = Im[j] > 0 ? j + 1 : j;
            double square = 0;
            for (int at = 0; at < n * n; at += n)
            {
                square += ((of[at + j] * of[at + j]) + (of[at + other] * of[at + other])) / 2;
            }

            double scale = 1 / Math.Sqrt(square);
            for (int at = 0; at < n * n; at += n)
            {
                Vectors[at + j] = of[at + j] * scale;
                Vectors[at + other] = of[at + other] * scale;
            }

            j = other;
        }

        return true;
    }

    // Gauss and Jordan with pivots.
    private bool Invert()
    {
        Array.Copy(Vectors, left, n * n);
        Array.Clear(Inverse, 0, n * n);
        for (int i = 0; i < n; i++)
        {
            Inverse[(i * n) + i] = 1;
        }

        for (int c = 0; c < n; c++)
        {
            int pivot = c;
            for (int i = c + 1; i < n; i++)
            {
                pivot = Math.Abs(left[(i * n) + c]) > Math.Abs(left[(pivot * n) + c]) ? i : pivot;
            }

            if (!(Math.Abs(left[(pivot * n) + c]) > 1e-9))
            {
                return false;
            }

            Pivot(c, pivot);
            for (int i = 0; i < n; i++)
            {
                double factor = left[(i * n) + c];
                if (i == c || factor == 0)
                {
                    continue;
                }

                for (int j = 0, to = i * n, from = c * n; j < n; j++, to++, from++)
                {
                    left[to] -= factor * left[from];
                    Inverse[to] -= factor * Inverse[from];
                }
            }
        }

        return true;
    }

    private void Pivot(int c, int pivot)
    {
        double scale = 1 / left[(pivot * n) + c];
        for (int j = 0, at = c * n, other = pivot * n; j < n; j++, at++, other++)
        {
            (left[at], left[other]) = (left[other], left[at]);
            (Inverse[at], Inverse[other]) = (Inverse[other], Inverse[at]);
            left[at] *= scale;
            Inverse[at] *= scale;
        }
    }

    private double Condition()
    {
        double v = 0;
        double w = 0;
        for (int i = 0; i < n * n; i++)
        {
            v += Vectors[i] * Vectors[i];
            w += Inverse[i] * Inverse[i];
        }

        return Math.Sqrt(v * w);
    }
}
