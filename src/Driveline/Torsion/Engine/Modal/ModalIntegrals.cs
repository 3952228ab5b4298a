namespace Driveline.Torsion;

/// <summary>Integrals of rows of a modal system over a whole stretch, in closed form.</summary>
/// <remarks>
/// Over the stretch, s from 0 to 1, a row is Σ Pⱼ·sʲ + Σ Re(Zₖ·e^zₖs): modes that hardly change go into the polynomial, so that
/// nothing is divided by a small λ. ∫sʲ·e^zs ds and ∫e^(zₘ+zₙ)s ds are elementary.
/// </remarks>
internal sealed partial class ModalIntegrals
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
