namespace Driveline.Torsion;

/// <content>Integrals of the swings: of one by powers of time, and of two by one another.</content>
internal sealed partial class ModalIntegrals
{
    // ∫sʲ·e^zs ds for all j.
    private void Moments(int k, double re, double im)
    {
        int at = k * 2 * (MostDegree + 1);
        double square = (re * re) + (im * im);
        if (square < 4)
        {
            for (int j = 0; j <= degree; j++)
            {
                double a = 1;
                double b = 0;
                double sum = 0;
                double other = 0;
                for (int i = 1; i <= 30; i++)
                {
                    sum += a / (i + j);
                    other += b / (i + j);
                    double next = ((a * re) - (b * im)) / i;
                    b = ((a * im) + (b * re)) / i;
                    a = next;
                }

                moments[at + (2 * j)] = sum;
                moments[at + (2 * j) + 1] = other;
            }

            return;
        }

        double er = step.Factors[8 * k];
        double ei = step.Factors[(8 * k) + 1];
        for (int j = 0; j <= degree; j++)
        {
            double a = er - (j == 0 ? 1 : j * moments[at + (2 * j) - 2]);
            double b = ei - (j == 0 ? 0 : j * moments[at + (2 * j) - 1]);
            moments[at + (2 * j)] = ((a * re) + (b * im)) / square;
            moments[at + (2 * j) + 1] = ((b * re) - (a * im)) / square;
        }
    }

    private double SwingMoment(int j)
    {
        double sum = 0;
        for (int k = 0; k < modes; k++)
        {
            int at = (k * 2 * (MostDegree + 1)) + (2 * j);
            sum += (row[2 * k] * moments[at]) - (row[(2 * k) + 1] * moments[at + 1]);
        }

        return sum;
    }

    // ½·Σ Re(Zₘ·Zₙ·K(zₘ+zₙ) + Zₘ·Z̄ₙ·K(zₘ+z̄ₙ)); both terms are symmetric in m and n.
    private double SwingSquare()
    {
        Products();
        double sum = 0;
        for (int m = 0, at = 0; m < modes; m++)
        {
            double a = row[2 * m];
            double b = row[(2 * m) + 1];
            for (int n = 0; n <= m; n++, at += 4)
            {
                double c = row[2 * n];
                double d = row[(2 * n) + 1];
                double value = (((a * c) - (b * d)) * products[at]) - (((a * d) + (b * c)) * products[at + 1])
                    + (((a * c) + (b * d)) * products[at + 2]) - (((b * c) - (a * d)) * products[at + 3]);
                sum += m == n ? 0.5 * value : value;
            }
        }

        return sum;
    }

    private void Products()
    {
        if (hasProducts)
        {
            return;
        }

        hasProducts = true;
        ModalSystem system = motion.System;
        ReadOnlySpan<double> e = step.Factors;
        double length = step.Length;
        for (int m = 0, at = 0; m < modes; m++)
        {
            for (int n = 0; n <= m; n++, at += 4)
            {
                double re = (system.Re[m] + system.Re[n]) * length;
                double a = e[8 * m];
                double b = e[(8 * m) + 1];
                double c = e[8 * n];
                double d = e[(8 * n) + 1];
                Mean(re, (system.Im[m] + system.Im[n]) * length, (a * c) - (b * d), (a * d) + (b * c), at);
                Mean(re, (system.Im[m] - system.Im[n]) * length, (a * c) + (b * d), (b * c) - (a * d), at + 2);
            }
        }
    }

    // (e^z − 1)/z, given e^z.
    private void Mean(double re, double im, double er, double ei, int at)
    {
        double square = (re * re) + (im * im);
        if (square < 1)
        {
            Span<double> values = stackalloc double[8];
            PhiFunctions.Of(re, im, values);
            products[at] = values[2];
            products[at + 1] = values[3];
            return;
        }

        products[at] = (((er - 1) * re) + (ei * im)) / square;
        products[at + 1] = ((ei * re) - ((er - 1) * im)) / square;
    }
}
