namespace Driveline.Torsion;

/// <content>One double step down the matrix.</content>
internal sealed partial class RealEigen
{
    private void Sweep(int l, int m, int last, double p, double q, double r)
    {
        double x = 1;
        for (int k = m; k < last; k++)
        {
            bool isThree = k != last - 1;
            if (k != m)
            {
                p = h[(k * n) + k - 1];
                q = h[((k + 1) * n) + k - 1];
                r = isThree ? h[((k + 2) * n) + k - 1] : 0;
                x = Math.Abs(p) + Math.Abs(q) + Math.Abs(r);
                if (x == 0)
                {
                    continue;
                }

                p /= x;
                q /= x;
                r /= x;
            }

            double s = Math.Sqrt((p * p) + (q * q) + (r * r));
            s = p < 0 ? -s : s;
            if (s == 0)
            {
                continue;
            }

            if (k != m)
            {
                h[(k * n) + k - 1] = -s * x;
            }
            else if (l != m)
            {
                h[(k * n) + k - 1] = -h[(k * n) + k - 1];
            }

            p += s;
            Bulge(k, last, isThree, p / s, q / s, r / s, q / p, r / p);
        }
    }

    // Reflects rows and columns k, k + 1 and k + 2.
    private void Bulge(int k, int last, bool isThree, double x, double y, double z, double q, double r)
    {
        int a = k * n;
        int b = a + n;
        int c = b + n;
        for (int j = k; j < n; j++)
        {
            double p = h[a + j] + (q * h[b + j]);
            if (isThree)
            {
                p += r * h[c + j];
                h[c + j] -= p * z;
            }

            h[a + j] -= p * x;
            h[b + j] -= p * y;
        }

        int most = Math.Min(last, k + 3);
        for (int i = 0; i <= most; i++)
        {
            Fold(h, (i * n) + k, isThree, x, y, z, q, r);
        }

        for (int i = 0; i < n; i++)
        {
            Fold(v, (i * n) + k, isThree, x, y, z, q, r);
        }
    }

    private static void Fold(double[] of, int at, bool isThree, double x, double y, double z, double q, double r)
    {
        double p = (x * of[at]) + (y * of[at + 1]);
        if (isThree)
        {
            p += z * of[at + 2];
            of[at + 2] -= p * r;
        }

        of[at] -= p;
        of[at + 1] -= p * q;
    }
}
