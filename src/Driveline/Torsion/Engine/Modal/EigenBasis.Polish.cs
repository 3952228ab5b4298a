namespace Driveline.Torsion;

/// <content>Eigenvalues once more, from the vectors; the motion of what turns on as one.</content>
internal sealed partial class EigenBasis
{
    // Eigenvalues anew from both vectors: their error is then of second order. None grows, since nothing here gives energy.
    private void Polish(double[] a)
    {
        bool keeps = IsLossless(a);
        Images(a);
        for (int j = 0; j < n; j++)
        {
            if (Im[j] > 0)
            {
                double re = (Entry(j, j) + Entry(j + 1, j + 1)) / 2;
                Im[j] = Math.Max((Entry(j, j + 1) - Entry(j + 1, j)) / 2, Least);
                Im[j + 1] = -Im[j];
                Re[j] = Re[j + 1] = keeps ? 0 : Math.Min(re, 0);
                j++;
            }
            else
            {
                Re[j] = keeps ? 0 : Math.Min(Entry(j, j), 0);
            }
        }
    }

    private bool IsLossless(double[] a)
    {
        bool keeps = true;
        for (int i = 0; i < n; i++)
        {
            keeps &= a[(i * n) + i] == 0;
        }

        return keeps;
    }

    // A times the vectors.
    private void Images(double[] a)
    {
        Array.Clear(left, 0, n * n);
        for (int i = 0; i < n * n; i += n)
        {
            for (int k = 0; k < n; k++)
            {
                double factor = a[i + k];
                for (int j = 0; j < n && factor != 0; j++)
                {
                    left[i + j] += factor * Vectors[(k * n) + j];
                }
            }
        }
    }

    private double Entry(int row, int column)
    {
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            sum += Inverse[(row * n) + i] * left[(i * n) + column];
        }

        return sum;
    }

    private void Replace(ReadOnlySpan<double> still)
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
            Vectors[(i * n) + at] = still[i];
            Inverse[(at * n) + i] = still[i];
        }
    }
}
