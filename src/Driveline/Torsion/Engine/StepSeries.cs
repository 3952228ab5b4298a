namespace Driveline.Torsion;

/// <summary>Every quantity of one step as a power series in s = (t − start)/h, 0 ≤ s ≤ 1.</summary>
/// <remarks>
/// Between events the model is linear with inputs that are constant or rise linearly, so the series of the state is the
/// exponential of the system matrix acting on it, xⱼ₊₁ = h/(j+1)·(A·xⱼ + bⱼ), cut where its remainder is below rounding.
/// No matrix is formed: the chain is sparse, and a product A·x costs a few operations a link. A universal joint makes the
/// model non-linear; its ratio R = cos β/(1 − sin²β·cos²θ) then enters as a series of its own.
/// </remarks>
internal sealed partial class StepSeries
{
    public const int MaxDegree = 27;
    /// <summary>Room for each series; one more than its coefficients, so that the last advance needs no question.</summary>
    public const int Stride = MaxDegree + 2;

    private readonly JointSeries joints;
    private readonly double[] transferred;
    private readonly double[] residue;

    public StepSeries(int rotors, int links)
    {
        Speed = new double[rotors * Stride];
        Angle = new double[rotors * Stride];
        Net = new double[rotors * Stride];
        Twist = new double[links * Stride];
        Slip = new double[links * Stride];
        SlipRate = new double[links * Stride];
        Closing = new double[links * Stride];
        Torque = new double[links * Stride];
        joints = new JointSeries(links);
        transferred = new double[links * Stride];
        residue = new double[rotors];
    }

    public double[] Speed { get; }

    public double[] Angle { get; }

    /// <summary>Torque that a held rotor gives to the driveline.</summary>
    public double[] Net { get; }

    public double[] Twist { get; }

    public double[] Slip { get; }

    public double[] SlipRate { get; }

    /// <summary>Speed difference across the link: twist rate plus slip rate.</summary>
    public double[] Closing { get; }

    public double[] Torque { get; }

    /// <summary>Highest power held.</summary>
    public int Degree { get; private set; }

    public double Length { get; private set; }

    public ReadOnlySpan<double> Of(double[] series, int index) => new(series, index * Stride, Degree + 1);

    /// <summary>Least degree whose remainder is below rounding for a step of that many radians of the fastest rate.</summary>
    public static int DegreeFor(double reach)
    {
        double term = 1;
        for (int j = 1; j <= MaxDegree; j++)
        {
            term *= reach / j;
            if (term < 1e-18 && j >= 3)
            {
                return j;
            }
        }

        return MaxDegree;
    }

    public void Compute(Mechanism m, RunState x, Plan plan, double h, int degree)
    {
        Degree = degree;
        Length = h;
        Begin(m, x);
        if (!m.HasJoints)
        {
            Straight(m, plan, h);
            for (int n = 0; n < plan.OtherCount; n++)
            {
                Other(m, x, plan, plan.Others[n], h);
            }

            return;
        }

        for (int j = 0; j <= degree; j++)
        {
            double gain = h / (j + 1);
            for (int l = 0; l < m.Links; l++)
            {
                Link(m, x, plan, l, j, h, gain);
            }

            Rotors(m, plan, j, h, gain);
        }
    }

    /// <summary>Shortens the step to a part of it; the series stay exact.</summary>
    public void Shorten(Mechanism m, double part)
    {
        double power = 1;
        for (int j = 1; j <= Degree; j++)
        {
            power *= part;
            for (int i = 0; i < m.Rotors; i++)
            {
                Speed[(i * Stride) + j] *= power;
                Angle[(i * Stride) + j] *= power;
                Net[(i * Stride) + j] *= power;
            }

            for (int l = 0; l < m.Links; l++)
            {
                int at = (l * Stride) + j;
                Twist[at] *= power;
                Slip[at] *= power;
                SlipRate[at] *= power;
                Closing[at] *= power;
                Torque[at] *= power;
            }
        }

        Length *= part;
    }

    /// <summary>Writes the state at the end of the step.</summary>
    public void Finish(Mechanism m, RunState x)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            x.Speed[i] = Sum(Speed, i);
            x.Angle[i] = Sum(Angle, i);
        }

        for (int l = 0; l < m.Links; l++)
        {
            x.Twist[l] = Sum(Twist, l);
            x.Slip[l] = Sum(Slip, l);
        }
    }

    private double Sum(double[] series, int index)
    {
        double sum = 0;
        int first = index * Stride;
        for (int j = Degree; j >= 0; j--)
        {
            sum += series[first + j];
        }

        return sum;
    }

    private void Begin(Mechanism m, RunState x)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            Speed[i * Stride] = x.Speed[i];
            Angle[i * Stride] = x.Angle[i];
        }

        for (int l = 0; l < m.Links; l++)
        {
            int at = l * Stride;
            Twist[at] = x.Twist[l];
            Slip[at] = x.Slip[l];
            bool spring = x.Links[l] == LinkState.Locked && m.IsElastic(l);
            if (!spring && !x.Relaxing[l])
            {
                Array.Clear(Twist, at + 1, MaxDegree);
            }

            if (spring && !m.HasJoints)
            {
                Array.Clear(Slip, at + 1, MaxDegree);
                Array.Clear(SlipRate, at, MaxDegree + 1);
            }
        }
    }

    private void Rotors(Mechanism m, Plan plan, int j, double h, double gain)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            double load = j == 0 ? plan.Constant[i] : j == 1 ? plan.Ramp[i] * h : 0;
            residue[i] = load - (plan.Viscous[i] * Speed[(i * Stride) + j]);
        }

        for (int l = 0; l < m.Links; l++)
        {
            int at = (l * Stride) + j;
            residue[m.From[l]] -= m.JointCosine[l] < 1 ? transferred[at] : Torque[at];
            if (m.To[l] >= 0)
            {
                residue[m.To[l]] += Torque[at];
            }
        }

        if (plan.Bodies.HasRigid)
        {
            plan.Bodies.Torques(m, residue, Torque, j);
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            int at = (i * Stride) + j;
            double acceleration = plan.Bodies.HasRigid ? plan.Bodies.Acceleration(i) : residue[i] * m.InverseInertia[i];
            Net[at] = m.IsHeld(i) ? -residue[i] : 0;
            Speed[at + 1] = gain * acceleration;
            Angle[at + 1] = gain * Speed[at];
        }
    }
}
