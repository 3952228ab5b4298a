namespace Driveline.Torsion;

/// <content>Vectors of the Schur form by back-substitution, turned back.</content>
internal sealed partial class RealEigen
{
    private void Substitute()
    {
        if (norm == 0)
        {
            return;
        }

        for (int k = n - 1; k >= 0; k--)
        {
            if (Im[k] == 0)
            {
                RealVector(k);
            }
            else if (Im[k] < 0)
            {
                ComplexVector(k);
            }
        }

        for (int j = n - 1; j >= 0; j--)
        {
            for (int i = 0; i < n; i++)
            {
                double sum = 0;
                for (int k = 0; k <= j; k++)
                {
                    sum += v[(i * n) + k] * h[(k * n) + j];
                }

                v[(i * n) + j] = sum;
            }
        }
    }

    private void RealVector(int k)
    {
        double value = Re[k];
        double z = 0;
        double s = 0;
        int l = k;
        h[(k * n) + k] = 1;
        for (int i = k - 1; i >= 0; i--)
        {
            int at = i * n;
            double w = h[at + i] - value;
            double r = 0;
            for (int j = l; j <= k; j++)
            {
                r += h[at + j] * h[(j * n) + k];
            }

            if (Im[i] < 0)
            {
                z = w;
                s = r;
                continue;
            }

            l = i;
            if (Im[i] == 0)
            {
                h[at + k] = -r / (w != 0 ? w : Epsilon * norm);
            }
            else
            {
                double x = h[at + i + 1];
                double y = h[at + n + i];
                double d = Re[i] - value;
                double t = ((x * s) - (z * r)) / ((d * d) + (Im[i] * Im[i]));
                h[at + k] = t;
                h[at + n + k] = Math.Abs(x) > Math.Abs(z) ? (-r - (w * t)) / x : (-s - (y * t)) / z;
            }

            double size = Math.Abs(h[at + k]);
            if (Epsilon * size * size > 1)
            {
                Shrink(i, k, k, size);
            }
        }
    }

    private void ComplexVector(int k)
    {
        double p = Re[k];
        double q = Im[k];
        int l = k - 1;
        int b = k * n;
        int a = b - n;
        if (Math.Abs(h[b + k - 1]) > Math.Abs(h[a + k]))
        {
            h[a + k - 1] = q / h[b + k - 1];
            h[a + k] = -(h[b + k] - p) / h[b + k - 1];
        }
        else
        {
            Divide(0, -h[a + k], h[a + k - 1] - p, q, a + k);
        }

        h[b + k - 1] = 0;
        h[b + k] = 1;
        double z = 0;
        double r = 0;
        double s = 0;
        for (int i = k - 2; i >= 0; i--)
        {
            int at = i * n;
            double ra = 0;
            double sa = 0;
            for (int j = l; j <= k; j++)
            {
                ra += h[at + j] * h[(j * n) + k - 1];
                sa += h[at + j] * h[(j * n) + k];
            }

            double w = h[at + i] - p;
            if (Im[i] < 0)
            {
                z = w;
                r = ra;
                s = sa;
                continue;
            }

            l = i;
            if (Im[i] == 0)
            {
                Divide(-ra, -sa, w, q, at + k);
            }
            else
            {
                Two(k, i, w, ra, sa, z, r, s);
            }

            double size = Math.Max(Math.Abs(h[at + k - 1]), Math.Abs(h[at + k]));
            if (Epsilon * size * size > 1)
            {
                Shrink(i, k - 1, k, size);
            }
        }
    }

    private void Two(int k, int i, double w, double ra, double sa, double z, double r, double s)
    {
        double p = Re[k];
        double q = Im[k];
        int at = i * n;
        double x = h[at + i + 1];
        double y = h[at + n + i];
        double d = Re[i] - p;
        double vr = (d * d) + (Im[i] * Im[i]) - (q * q);
        double vi = d * 2 * q;
        if (vr == 0 && vi == 0)
        {
            vr = Epsilon * norm * (Math.Abs(w) + Math.Abs(q) + Math.Abs(x) + Math.Abs(y) + Math.Abs(z));
        }

        Divide((x * r) - (z * ra) + (q * sa), (x * s) - (z * sa) - (q * ra), vr, vi, at + k);
        if (Math.Abs(x) > Math.Abs(z) + Math.Abs(q))
        {
            h[at + n + k - 1] = (-ra - (w * h[at + k - 1]) + (q * h[at + k])) / x;
            h[at + n + k] = (-sa - (w * h[at + k]) - (q * h[at + k - 1])) / x;
        }
        else
        {
            Divide(-r - (y * h[at + k - 1]), -s - (y * h[at + k]), z, q, at + n + k);
        }
    }

    // (a + i·b)/(c + i·d) into two columns on end.
    private void Divide(double a, double b, double c, double d, int at)
    {
        if (Math.Abs(c) > Math.Abs(d))
        {
            double t = d / c;
            double u = c + (t * d);
            h[at - 1] = (a + (t * b)) / u;
            h[at] = (b - (t * a)) / u;
        }
        else
        {
            double t = c / d;
            double u = d + (t * c);
            h[at - 1] = ((t * a) + b) / u;
            h[at] = ((t * b) - a) / u;
        }
    }

    private void Shrink(int from, int first, int last, double size)
    {
        for (int j = from; j <= last; j++)
        {
            for (int c = first; c <= last; c++)
            {
                h[(j * n) + c] /= size;
            }
        }
    }
}
