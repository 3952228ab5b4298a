namespace Driveline.Torsion;

/// <summary>Integrals of rows of a modal system over a whole stretch, in closed form.</summary>
/// <remarks>
/// Over the stretch, s from 0 to 1, a row is Σ Pⱼ·sʲ + Σ Re(Zₖ·e^zₖs): modes that hardly change go into the polynomial, so that
/// nothing is divided by a small λ. ∫sʲ·e^zs ds and ∫e^(zₘ+zₙ)s ds are elementary.
/// </remarks>
internal sealed class ModalIntegrals
{
    private const double Hardly = 0.01;
    private const int MostDegree = 8;

    private readonly double[] polynomial = new double[MostDegree + 1];
    private double[] terms = [];
    private double[] swings = [];
    private double[] moments = [];
    private double[] products = [];
    private double[] row = [];
    private ModalMotion motion = null!;
    private ModalStep step = null!;
    private int modes;
    private int degree;
    private bool hasProducts;
    private bool hasSwings;

    public void Begin(ModalMotion of, ModalStep whole)
    {
        motion = of;
        step = whole;
        ModalSystem system = of.System;
        modes = system.Modes;
        Fit();
        degree = 1;
        hasProducts = hasSwings = false;
        double length = whole.Length;
        for (int k = 0; k < modes; k++)
        {
            Array.Clear(terms, k * 2 * (MostDegree + 1), 2 * (MostDegree + 1));
            swings[2 * k] = swings[(2 * k) + 1] = 0;
            if (system.Size[k] * length < Hardly)
            {
                Grow(k, length);
                continue;
            }

            hasSwings = true;
            for (int n = 2 * k; n < (2 * k) + 2; n++)
            {
                int at = (k * 2 * (MostDegree + 1)) + n - (2 * k);
                terms[at] = of.Steady[n];
                terms[at + 2] = of.SteadyRate[n] * length;
                swings[n] = of.Start[n] - of.Steady[n];
            }
        }

        for (int k = 0; k < modes; k++)
        {
            Moments(k, system.Re[k] * length, system.Im[k] * length);
        }
    }

    /// <summary>∫ y dt.</summary>
    public double Integral(int of)
    {
        Polynomial(of);
        double sum = 0;
        for (int j = 0; j <= degree; j++)
        {
            sum += polynomial[j] / (j + 1);
        }

        return step.Length * (sum + (hasSwings ? SwingMoment(0) : 0));
    }

    /// <summary>∫ (t − start)·y dt.</summary>
    public double Moment(int of)
    {
        Polynomial(of);
        double sum = 0;
        for (int j = 0; j <= degree; j++)
        {
            sum += polynomial[j] / (j + 2);
        }

        return step.Length * step.Length * (sum + (hasSwings ? SwingMoment(1) : 0));
    }

    /// <summary>∫ y² dt.</summary>
    public double Square(int of)
    {
        Polynomial(of);
        double sum = 0;
        for (int i = 0; i <= degree; i++)
        {
            for (int j = 0; j <= degree; j++)
            {
                sum += polynomial[i] * polynomial[j] / (i + j + 1);
            }
        }

        if (!hasSwings)
        {
            return step.Length * sum;
        }

        for (int j = 0; j <= degree; j++)
        {
            sum += polynomial[j] == 0 ? 0 : 2 * polynomial[j] * SwingMoment(j);
        }

        return step.Length * (sum + SwingSquare());
    }

    // Taylor's terms of a mode that hardly changes.
    private void Grow(int k, double length)
    {
        ModalSystem system = motion.System;
        int n = 2 * k;
        int at = k * 2 * (MostDegree + 1);
        double a = motion.Start[n];
        double b = motion.Start[n + 1];
        terms[at] = a;
        terms[at + 1] = b;
        for (int j = 1; j <= MostDegree && (j <= 2 || system.Size[k] > 0); j++)
        {
            double g = j == 1 ? motion.Input[n] : j == 2 ? motion.InputRate[n] * length : 0;
            double f = j == 1 ? motion.Input[n + 1] : j == 2 ? motion.InputRate[n + 1] * length : 0;
            double c = length / j * ((system.Re[k] * a) - (system.Im[k] * b) + g);
            b = length / j * ((system.Re[k] * b) + (system.Im[k] * a) + f);
            a = c;
            terms[at + (2 * j)] = a;
            terms[at + (2 * j) + 1] = b;
            degree = a != 0 || b != 0 ? Math.Max(degree, j) : degree;
        }
    }

    private void Polynomial(int of)
    {
        ReadOnlySpan<double> c = motion.System.Row(of);
        for (int j = 0; j <= degree; j++)
        {
            double sum = j == 0 ? motion.Offset[of] : j == 1 ? motion.OffsetRate[of] * step.Length : 0;
            for (int k = 0; k < modes; k++)
            {
                int at = (k * 2 * (MostDegree + 1)) + (2 * j);
                sum += (c[2 * k] * terms[at]) + (c[(2 * k) + 1] * terms[at + 1]);
            }

            polynomial[j] = sum;
        }

        for (int n = 0; n < 2 * modes && hasSwings; n += 2)
        {
            row[n] = (c[n] * swings[n]) + (c[n + 1] * swings[n + 1]);
            row[n + 1] = (c[n] * swings[n + 1]) - (c[n + 1] * swings[n]);
        }
    }

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

    private void Fit()
    {
        if (swings.Length < 2 * modes)
        {
            swings = new double[2 * modes];
            row = new double[2 * modes];
            terms = new double[2 * modes * (MostDegree + 1)];
            moments = new double[2 * modes * (MostDegree + 1)];
            products = new double[2 * modes * (modes + 1)];
        }
    }
}
