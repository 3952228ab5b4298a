namespace Driveline.Torsion;

/// <summary>Work done and heat made during a run, J.</summary>
/// <remarks>
/// Products of a linear series with a slip, speed or torque series are integrated term by term; squares by eight-point
/// Gauss quadrature, whose error over one step is below 1e-13 of the largest square.
/// </remarks>
internal sealed class EnergyMeter
{
    public const int NodeCount = 8;

    private const double N0 = 0.019855071751231884;
    private const double N1 = 0.101666761293186630;
    private const double N2 = 0.237233795041835507;
    private const double N3 = 0.408282678752175098;
    private const double N4 = 0.591717321247824902;
    private const double N5 = 0.762766204958164493;
    private const double N6 = 0.898333238706813370;
    private const double N7 = 0.980144928248768116;
    private const double W0 = 0.050614268145188130;
    private const double W1 = 0.111190517226687235;
    private const double W2 = 0.156853322938943644;
    private const double W3 = 0.181341891689180992;

    private static readonly double[] Nodes = [N0, N1, N2, N3, N4, N5, N6, N7];
    private static readonly double[] Weights = [W0, W1, W2, W3, W3, W2, W1, W0];

    private readonly double[] rate = new double[StepSeries.Stride];

    public EnergyMeter(int rotors, int links, int torques)
    {
        Damper = new double[links];
        Slip = new double[links];
        Impact = new double[links];
        SpeedSquare = new double[rotors];
        Held = new double[rotors];
        Torque = new double[torques];
    }

    public double[] Damper { get; }

    public double[] Slip { get; }

    public double[] Impact { get; }

    /// <summary>∫ω² dt of rotors with a viscous load.</summary>
    public double[] SpeedSquare { get; }

    /// <summary>Work given by rotors held at their speed.</summary>
    public double[] Held { get; }

    public double[] Torque { get; }

    public double Drive { get; private set; }

    public void AddDrive(double joules) => Drive += joules;

    public double Start { get; set; }

    public void Clear()
    {
        Array.Clear(Damper, 0, Damper.Length);
        Array.Clear(Slip, 0, Slip.Length);
        Array.Clear(Impact, 0, Impact.Length);
        Array.Clear(SpeedSquare, 0, SpeedSquare.Length);
        Array.Clear(Held, 0, Held.Length);
        Array.Clear(Torque, 0, Torque.Length);
        Drive = 0;
    }

    public static double Stored(Mechanism m, RunState x)
    {
        double sum = 0;
        for (int i = 0; i < m.Rotors; i++)
        {
            sum += m.IsHeld(i) ? 0 : 0.5 * m.Inertia[i] * x.Speed[i] * x.Speed[i];
        }

        for (int l = 0; l < m.Links; l++)
        {
            sum += m.IsElastic(l) ? 0.5 * m.Stiffness[l] * x.Twist[l] * x.Twist[l] : 0;
        }

        return sum;
    }

    public void Add(Mechanism m, RunState x, Plan plan, StepSeries series)
    {
        double h = series.Length;
        for (int l = 0; l < m.Links; l++)
        {
            LinkState state = x.Links[l];
            if (state == LinkState.Absent)
            {
                continue;
            }

            if (m.Damping[l] > 0 && (state == LinkState.Locked || x.Relaxing[l] || plan.CarriedRate[l] != 0))
            {
                Damper[l] += m.Damping[l] * h * TwistRateSquare(series, l);
            }

            if (plan.Carried[l] != 0 || plan.CarriedRate[l] != 0)
            {
                ReadOnlySpan<double> slip = series.Of(series.SlipRate, l);
                Slip[l] += h * ((plan.Carried[l] * Polynomial.Integral(slip)) + (plan.CarriedRate[l] * h * Polynomial.FirstMoment(slip)));
            }
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            bool driven = i == m.DriveRotor;
            double square = m.Viscous[i] > 0 || (driven && x.DriveLimit == 0) ? h * Square(series.Of(series.Speed, i)) : 0;
            SpeedSquare[i] += square;
            if (driven)
            {
                Drive += (plan.DriveConstant * h * Polynomial.Integral(series.Of(series.Speed, i))) - (
                    x.DriveLimit == 0 ? m.DriveSlope * square : 0);
            }

            if (m.IsHeld(i))
            {
                Held[i] += x.Speed[i] * h * Polynomial.Integral(series.Of(series.Net, i));
            }
        }

        for (int k = 0; k < m.Torque.Length; k++)
        {
            Plan.Scale(x.Time, m.TorqueStart[k], m.TorqueRamp[k], out double scale, out double slope);
            ReadOnlySpan<double> speed = series.Of(series.Speed, m.TorqueRotor[k]);
            Torque[k] += m.Torque[k] * h * ((scale * Polynomial.Integral(speed)) + (slope * h * Polynomial.FirstMoment(speed)));
        }
    }

    /// <summary>Energy not accounted for, as a part of all energy that took part.</summary>
    public double Imbalance(Mechanism m, RunState x)
    {
        double end = Stored(m, x);
        double given = Drive;
        double size = Start + Math.Abs(Drive);
        for (int k = 0; k < Torque.Length; k++)
        {
            given += Torque[k];
            size += Math.Abs(Torque[k]);
        }

        double lost = 0;
        for (int i = 0; i < m.Rotors; i++)
        {
            given += Held[i];
            size += Math.Abs(Held[i]);
            lost += m.Viscous[i] * SpeedSquare[i];
        }

        for (int l = 0; l < m.Links; l++)
        {
            lost += Damper[l] + Slip[l] + Impact[l];
        }

        return size == 0 ? 0 : (Start + given - lost - end) / Math.Max(size, end);
    }

    private double TwistRateSquare(StepSeries series, int l)
    {
        ReadOnlySpan<double> closing = series.Of(series.Closing, l);
        ReadOnlySpan<double> slip = series.Of(series.SlipRate, l);
        for (int j = 0; j < closing.Length; j++)
        {
            rate[j] = closing[j] - slip[j];
        }

        return Square(new ReadOnlySpan<double>(rate, 0, closing.Length));
    }

    /// <summary>∫ a·b ds from 0 to 1, from values at the nodes.</summary>
    public static double ProductOfNodes(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int q = 0; q < NodeCount; q++)
        {
            sum += Weights[q] * a[q] * b[q];
        }

        return sum;
    }

    /// <summary>Values of a series at the nodes.</summary>
    public static void AtNodes(ReadOnlySpan<double> c, Span<double> values)
    {
        for (int q = 0; q < NodeCount; q++)
        {
            values[q] = Polynomial.Value(c, Nodes[q]);
        }
    }

    // The eight nodes side by side: eight independent Horner chains.
    private static double Square(ReadOnlySpan<double> c)
    {
        double a = 0, b = 0, d = 0, e = 0, f = 0, g = 0, p = 0, q = 0;
        for (int j = c.Length - 1; j >= 0; j--)
        {
            double term = c[j];
            a = (a * N0) + term;
            b = (b * N1) + term;
            d = (d * N2) + term;
            e = (e * N3) + term;
            f = (f * N4) + term;
            g = (g * N5) + term;
            p = (p * N6) + term;
            q = (q * N7) + term;
        }

        return (W0 * ((a * a) + (q * q))) + (W1 * ((b * b) + (p * p))) + (W2 * ((d * d) + (g * g))) + (W3 * ((e * e) + (f * f)));
    }
}
