namespace Driveline.Torsion;

/// <content>The QR steps.</content>
internal sealed partial class RealEigen
{
    private double shifted;

    private bool Deflate()
    {
        shifted = 0;
        int last = n - 1;
        int steps = 0;
        while (last >= 0)
        {
            int l = Small(last);
            if (l == last)
            {
                h[(last * n) + last] += shifted;
                Re[last] = h[(last * n) + last];
                Im[last] = 0;
                last--;
                steps = 0;
            }
            else if (l == last - 1)
            {
                Pair(last);
                last -= 2;
                steps = 0;
            }
            else if (++steps > MostSteps)
            {
                return false;
            }
            else
            {
                Step(l, last, steps);
            }
        }

        return true;
    }

    // The row from which on the block up to the last row hangs together.
    private int Small(int last)
    {
        int l = last;
        while (l > 0)
        {
            double s = Math.Abs(h[((l - 1) * n) + l - 1]) + Math.Abs(h[(l * n) + l]);
            s = s == 0 ? norm : s;
            if (Math.Abs(h[(l * n) + l - 1]) < Epsilon * s)
            {
                break;
            }

            l--;
        }

        return l;
    }

    private void Pair(int last)
    {
        int a = (last - 1) * n;
        int b = last * n;
        double w = h[b + last - 1] * h[a + last];
        double p = (h[a + last - 1] - h[b + last]) / 2;
        double q = (p * p) + w;
        double z = Math.Sqrt(Math.Abs(q));
        h[b + last] += shifted;
        h[a + last - 1] += shifted;
        double x = h[b + last];
        if (q < 0)
        {
            Re[last - 1] = Re[last] = x + p;
            Im[last - 1] = z;
            Im[last] = -z;
            return;
        }

        z = p >= 0 ? p + z : p - z;
        Re[last - 1] = x + z;
        Re[last] = z != 0 ? x - (w / z) : x + z;
        Im[last - 1] = Im[last] = 0;
        x = h[b + last - 1];
        double s = Math.Abs(x) + Math.Abs(z);
        p = x / s;
        q = z / s;
        double r = Math.Sqrt((p * p) + (q * q));
        Turn(last, p / r, q / r);
    }

    private void Turn(int last, double p, double q)
    {
        int a = (last - 1) * n;
        int b = last * n;
        for (int j = last - 1; j < n; j++)
        {
            double z = h[a + j];
            h[a + j] = (q * z) + (p * h[b + j]);
            h[b + j] = (q * h[b + j]) - (p * z);
        }

        for (int i = 0; i <= last; i++)
        {
            Mix(h, (i * n) + last, p, q);
        }

        for (int i = 0; i < n; i++)
        {
            Mix(v, (i * n) + last, p, q);
        }
    }

    private static void Mix(double[] of, int at, double p, double q)
    {
        double z = of[at - 1];
        of[at - 1] = (q * z) + (p * of[at]);
        of[at] = (q * of[at]) - (p * z);
    }

    private void Step(int l, int last, int steps)
    {
        double x = h[(last * n) + last];
        double y = h[((last - 1) * n) + last - 1];
        double w = h[(last * n) + last - 1] * h[((last - 1) * n) + last];
        if (steps % 20 == 11)
        {
            Shift(last, x);
            double s = Math.Abs(h[(last * n) + last - 1]) + Math.Abs(h[((last - 1) * n) + last - 2]);
            x = y = 0.75 * s;
            w = -0.4375 * s * s;
        }

        int m = last - 2;
        double p = 0;
        double q = 0;
        double r = 0;
        for (; m >= l; m--)
        {
            int at = m * n;
            double z = h[at + m];
            r = x - z;
            double s = y - z;
            p = (((r * s) - w) / h[at + n + m]) + h[at + m + 1];
            q = h[at + n + m + 1] - z - r - s;
            r = h[at + n + n + m + 1];
            s = Math.Abs(p) + Math.Abs(q) + Math.Abs(r);
            p /= s;
            q /= s;
            r /= s;
            if (m == l || Math.Abs(h[at + m - 1]) * (Math.Abs(q) + Math.Abs(r))
                < Epsilon * (Math.Abs(p) * (Math.Abs(h[at - n + m - 1]) + Math.Abs(z) + Math.Abs(h[at + n + m + 1]))))
            {
                break;
            }
        }

        for (int i = m + 2; i <= last; i++)
        {
            h[(i * n) + i - 2] = 0;
            if (i > m + 2)
            {
                h[(i * n) + i - 3] = 0;
            }
        }

        Sweep(l, m, last, p, q, r);
    }

    private void Shift(int last, double x)
    {
        shifted += x;
        for (int i = 0; i <= last; i++)
        {
            h[(i * n) + i] -= x;
        }
    }
}
