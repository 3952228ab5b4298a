namespace Driveline.Benchmarks.Torsion;

/// <summary>
/// The baseline: a four-inertia chain by hand-written classical Runge–Kutta of fixed step, as one would write it for speed.
/// </summary>
/// <remarks>
/// The break is found by secant steps within the step that crosses it, and peaks by the cubic through the values and slopes
/// at a step's ends, so that the step need not be fine for their sake. No memory is allocated.
/// </remarks>
internal sealed class FixedStepChain
{
    private readonly double[] k;
    private readonly double[] c;
    private readonly double[] inverse;
    private readonly double capacity;
    private readonly double[] y = new double[6];
    private readonly double[] y0 = new double[6];
    private readonly double[] a = new double[6];
    private readonly double[] b = new double[6];
    private readonly double[] d = new double[6];
    private readonly double[] e = new double[6];
    private readonly double[] stage = new double[6];
    private readonly double[] torque = new double[3];
    private readonly double[] slope = new double[3];
    private bool broken;

    public FixedStepChain(double[] inertia, double[] stiffness, double[] damping, double capacity)
    {
        k = stiffness;
        c = damping;
        inverse = Array.ConvertAll(inertia, j => 1 / j);
        this.capacity = capacity;
    }

    public double[] Peak { get; } = new double[3];

    public double BreakTime { get; private set; }

    /// <summary>Runs from all turning at a speed with the last rotor jammed; returns the largest peak.</summary>
    public double Run(double speed, double seconds, int steps)
    {
        Array.Clear(y);
        Array.Clear(Peak);
        y[3] = y[4] = y[5] = speed;
        broken = false;
        double h = seconds / steps;
        Rates(y, a);
        Torques(y, a, torque, slope);
        for (int n = 0; n < steps; n++)
        {
            Advance(h, n * h);
        }

        return Math.Max(Peak[0], Math.Max(Peak[1], Peak[2]));
    }

    private void Advance(double h, double time)
    {
        Array.Copy(y, y0, 6);
        double before = torque[1];
        double t0 = torque[0];
        double t2 = torque[2];
        double s0 = slope[0];
        double s1 = slope[1];
        double s2 = slope[2];
        Step(h);
        if (!broken && torque[1] > capacity)
        {
            double part = Crossing(h, before, torque[1]);
            BreakTime = time + (part * h);
            Peak[1] = capacity;
            broken = true;
            Rates(y, a);
            Torques(y, a, torque, slope);
            Step((1 - part) * h);
            return;
        }

        Raise(0, t0, s0, h);
        Raise(1, before, s1, h);
        Raise(2, t2, s2, h);
    }

    private double Crossing(double h, double low, double high)
    {
        double left = 0;
        double right = 1;
        double fl = low - capacity;
        double fr = high - capacity;
        double part = 1;
        for (int i = 0; i < 30 && Math.Abs(fr) > 1e-12 * capacity && Math.Abs(fl) > 1e-12 * capacity; i++)
        {
            part = right - (fr * (right - left) / (fr - fl));
            Array.Copy(y0, y, 6);
            Rates(y, a);
            Step(part * h);
            double f = torque[1] - capacity;
            if (f > 0)
            {
                right = part;
                fr = f;
            }
            else
            {
                left = part;
                fl = f;
            }
        }

        return part;
    }

    private void Step(double h)
    {
        for (int i = 0; i < 6; i++)
        {
            stage[i] = y[i] + (0.5 * h * a[i]);
        }

        Rates(stage, b);
        for (int i = 0; i < 6; i++)
        {
            stage[i] = y[i] + (0.5 * h * b[i]);
        }

        Rates(stage, d);
        for (int i = 0; i < 6; i++)
        {
            stage[i] = y[i] + (h * d[i]);
        }

        Rates(stage, e);
        for (int i = 0; i < 6; i++)
        {
            y[i] += h / 6 * (a[i] + (2 * (b[i] + d[i])) + e[i]);
        }

        Rates(y, a);
        Torques(y, a, torque, slope);
    }

    private void Rates(double[] x, double[] rate)
    {
        double d0 = x[3] - x[4];
        double d1 = x[4] - x[5];
        double t0 = (k[0] * x[0]) + (c[0] * d0);
        double t1 = broken ? 0 : (k[1] * x[1]) + (c[1] * d1);
        double t2 = (k[2] * x[2]) + (c[2] * x[5]);
        rate[0] = d0;
        rate[1] = d1;
        rate[2] = x[5];
        rate[3] = -t0 * inverse[0];
        rate[4] = (t0 - t1) * inverse[1];
        rate[5] = (t1 - t2) * inverse[2];
    }

    private void Torques(double[] x, double[] rate, double[] t, double[] s)
    {
        t[0] = (k[0] * x[0]) + (c[0] * rate[0]);
        s[0] = (k[0] * rate[0]) + (c[0] * (rate[3] - rate[4]));
        t[1] = broken ? 0 : (k[1] * x[1]) + (c[1] * rate[1]);
        s[1] = broken ? 0 : (k[1] * rate[1]) + (c[1] * (rate[4] - rate[5]));
        t[2] = (k[2] * x[2]) + (c[2] * rate[2]);
        s[2] = (k[2] * rate[2]) + (c[2] * rate[5]);
    }

    private void Raise(int i, double before, double slopeBefore, double h)
    {
        double peak = Math.Max(before, torque[i]);
        if (slopeBefore > 0 && slope[i] < 0 && peak > 0.99 * Peak[i])
        {
            double p = h * slopeBefore;
            double q = h * slope[i];
            double rise = torque[i] - before;
            double cubic = (2 * -rise) + p + q;
            double square = (3 * rise) - (2 * p) - q;
            double s = -p / (square - Math.Sqrt((square * square) - (3 * cubic * p)));
            peak = Math.Max(peak, before + (s * (p + (s * (square + (s * cubic))))));
        }

        Peak[i] = Math.Max(Peak[i], peak);
    }
}
