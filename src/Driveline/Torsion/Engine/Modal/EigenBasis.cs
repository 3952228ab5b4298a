using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Driveline.Torsion;

/// <summary>Eigenvalues and eigenvectors of one part of a system that hangs together, with the inverse of the vectors.</summary>
/// <remarks>
/// Column n is a real eigenvector; columns n and n + 1 are real and imaginary part of the vector of λ = Re + i·Im, Im &gt; 0.
/// The matrix is in coordinates whose square is energy, so that lightly damped vectors are nearly orthogonal.
/// </remarks>
internal sealed class EigenBasis
{
    private const double WorstCondition = 300;

    // Keeps a pair a pair that rounding alone has made of two real values.
    private const double Least = 1e-300;

    private readonly int n;
    private readonly double[,] inverse;

    private EigenBasis(double[,] a)
    {
        n = a.GetLength(0);
        Re = new double[n];
        Im = new double[n];
        Vectors = new double[n, n];
        inverse = new double[n, n];
        Solve(a);
        IsSound = Invert() && Condition() <= WorstCondition * n;
        if (IsSound)
        {
            Polish(a);
        }
    }

    public double[] Re { get; }

    /// <summary>0 for a real eigenvalue; above 0 in the first column of a pair, below 0 in the second.</summary>
    public double[] Im { get; }

    public double[,] Vectors { get; }

    public double[,] Inverse => inverse;

    /// <summary>False when vectors are too near one another to part the motion into modes.</summary>
    public bool IsSound { get; }

    /// <summary>Of a square matrix; a vector that it must send to nothing may be given.</summary>
    public static EigenBasis Of(double[,] a, double[]? still)
    {
        var basis = new EigenBasis(a);
        if (still is not null && basis.IsSound)
        {
            basis.Replace(still);
        }

        return basis;
    }

    private void Solve(double[,] a)
    {
        if (n == 1)
        {
            Re[0] = Math.Min(a[0, 0], 0);
            Vectors[0, 0] = 1;
            return;
        }

        Evd<double> evd = DenseMatrix.OfArray(a).Evd(Symmetricity.Asymmetric);
        for (int j = 0; j < n; j++)
        {
            Re[j] = evd.EigenValues[j].Real;
            Im[j] = evd.EigenValues[j].Imaginary;
        }

        for (int j = 0; j < n; j++)
        {
            int other = Im[j] > 0 ? j + 1 : j;
            double square = 0;
            for (int i = 0; i < n; i++)
            {
                double v = evd.EigenVectors[i, j];
                double w = evd.EigenVectors[i, other];
                square += ((v * v) + (w * w)) / 2;
            }

            double scale = 1 / Math.Sqrt(square);
            for (int c = j; c <= other; c++)
            {
                for (int i = 0; i < n; i++)
                {
                    Vectors[i, c] = evd.EigenVectors[i, c] * scale;
                }
            }

            j = other;
        }
    }

    // Gauss and Jordan with pivots.
    private bool Invert()
    {
        double[,] left = (double[,])Vectors.Clone();
        for (int i = 0; i < n; i++)
        {
            inverse[i, i] = 1;
        }

        for (int c = 0; c < n; c++)
        {
            int pivot = c;
            for (int i = c + 1; i < n; i++)
            {
                pivot = Math.Abs(left[i, c]) > Math.Abs(left[pivot, c]) ? i : pivot;
            }

            if (!(Math.Abs(left[pivot, c]) > 1e-9))
            {
                return false;
            }

            for (int j = 0; j < n; j++)
            {
                (left[c, j], left[pivot, j]) = (left[pivot, j], left[c, j]);
                (inverse[c, j], inverse[pivot, j]) = (inverse[pivot, j], inverse[c, j]);
            }

            double scale = 1 / left[c, c];
            for (int j = 0; j < n; j++)
            {
                left[c, j] *= scale;
                inverse[c, j] *= scale;
            }

            for (int i = 0; i < n; i++)
            {
                double factor = i == c ? 0 : left[i, c];
                for (int j = 0; j < n && factor != 0; j++)
                {
                    left[i, j] -= factor * left[c, j];
                    inverse[i, j] -= factor * inverse[c, j];
                }
            }
        }

        return true;
    }

    private double Condition()
    {
        double v = 0;
        double w = 0;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                v += Vectors[i, j] * Vectors[i, j];
                w += inverse[i, j] * inverse[i, j];
            }
        }

        return Math.Sqrt(v * w);
    }

    // Eigenvalues anew from both vectors: their error is then of second order. None grows, since nothing here gives energy.
    private void Polish(double[,] a)
    {
        bool keeps = IsLossless(a);
        for (int j = 0; j < n; j++)
        {
            if (Im[j] > 0)
            {
                double re = (Entry(a, j, j) + Entry(a, j + 1, j + 1)) / 2;
                Im[j] = Math.Max((Entry(a, j, j + 1) - Entry(a, j + 1, j)) / 2, Least);
                Im[j + 1] = -Im[j];
                Re[j] = Re[j + 1] = keeps ? 0 : Math.Min(re, 0);
                j++;
            }
            else
            {
                Re[j] = keeps ? 0 : Math.Min(Entry(a, j, j), 0);
            }
        }
    }

    private bool IsLossless(double[,] a)
    {
        bool keeps = true;
        for (int i = 0; i < n; i++)
        {
            keeps &= a[i, i] == 0;
        }

        return keeps;
    }

    private double Entry(double[,] a, int row, int column)
    {
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            double inner = 0;
            for (int k = 0; k < n; k++)
            {
                inner += a[i, k] * Vectors[k, column];
            }

            sum += inverse[row, i] * inner;
        }

        return sum;
    }

    private void Replace(double[] still)
    {
        int at = 0;
        for (int j = 1; j < n; j++)
        {
            at = Math.Abs(Re[j]) + Math.Abs(Im[j]) < Math.Abs(Re[at]) + Math.Abs(Im[at]) ? j : at;
        }

        if (Im[at] != 0)
        {
            return;
        }

        Re[at] = 0;
        for (int i = 0; i < n; i++)
        {
            Vectors[i, at] = still[i];
            inverse[at, i] = still[i];
        }
    }
}
