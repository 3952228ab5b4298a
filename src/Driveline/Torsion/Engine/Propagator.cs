namespace Driveline.Torsion;

/// <summary>
/// Whole steps by a matrix while nothing happens: the exponential of one step, kept as long as the links keep their states.
/// </summary>
/// <remarks>
/// A step is taken only when a bound shows that within it no torque passes a capacity, nor its peak so far other than at its
/// end; otherwise the series decides. The bound: |T⁗| ≤ (√k + c/√J₁ + c/√J₂)·‖d⁴x/dt⁴‖ in terms of energy, which never rises
/// (inputs are constant, damping only takes).
/// Energies come from Gram matrices, ∫q² dt = zᵀGz, made with the same quadrature as elsewhere.
/// </remarks>
internal sealed partial class Propagator
{
    private const int Patience = 8;

    // Beyond it matrices cost more than series.
    private const int MostStates = 40;

    private readonly RunState unit;
    private readonly double[] z;
    private readonly double[] end;
    private double[] phi = [];
    private double[] turned = [];
    private double[] given = [];
    private double[] value = [];
    private double[] slope = [];
    private double[] gram = [];
    private double[] nodes = [];
    private readonly double[] reaches;
    private readonly double[] net;
    private readonly int[] outputs;
    private readonly int stride;
    private int size;
    private int outputCount;
    private int waited;
    private bool ready;
    private long stepWork;
    private int squares;

    public Propagator(int rotors, int links)
    {
        stride = rotors + links + 1;
        unit = new RunState(rotors, links);
        z = new double[stride];
        end = new double[stride];
        if (stride <= MostStates)
        {
            phi = new double[stride * stride];
            product = new double[stride * stride];
            turned = new double[rotors * stride];
            given = new double[rotors * stride];
            value = new double[links * stride];
            slope = new double[links * stride];
            gram = new double[(rotors + links) * stride * stride];
            nodes = new double[(rotors + links) * stride * EnergyMeter.NodeCount];
        }

        reaches = new double[links];
        net = new double[rotors];
        settling = new Settling(rotors, links);
        row = new double[stride];
        rightEnd = new double[links];
        derivative = new double[stride];
        nextDerivative = new double[stride];
        outputs = new int[links];
    }

    /// <summary>To be called when a link changes its state.</summary>
    public void Forget()
    {
        ready = false;
        waited = 0;
        settling.Forget();
    }

    /// <summary>Takes one step of the usual length when nothing can happen in it.</summary>
    public bool TryStep(Mechanism m, RunState x, Plan plan, StepSeries series, RunLog log, EnergyMeter energy, double next)
    {
        if (!ready)
        {
            if (waited < 0 || ++waited < Patience)
            {
                return false;
            }

            if (stride > MostStates || !Suits(m, x, plan))
            {
                waited = -1;
                return false;
            }

            Prepare(m, x, plan, series);
            log.Work += PrepareWork(m, plan);
            stepWork = StepWork(m);
        }

        return Stretch(m, x, plan, log, energy, next);
    }

    private long PrepareWork(Mechanism m, Plan plan) => (size * TransientLoop.SeriesWork(m, StepSeries.DegreeFor(TransientLoop.Reach)))
        + ((long)(m.Rotors + plan.SpringCount) * size * size * EnergyMeter.NodeCount);

    private long StepWork(Mechanism m) => (long)size * ((squares * size) + size + m.Rotors + (4 * outputCount) + 10);

    // Quantities whose square is heat or work: speeds under viscous loads and drive, closing speeds of damped springs.
    private static bool IsSquared(Mechanism m, Plan plan, int quantity) => quantity < m.Rotors
        ? m.Viscous[quantity] > 0 || quantity == m.DriveRotor
        : plan.Springs[quantity - m.Rotors].Damping > 0;

    private static bool Suits(Mechanism m, RunState x, Plan plan)
    {
        bool suits = plan.Rate > 0 && !m.HasJoints && !plan.Bodies.HasHanging && !plan.HasRamps
            && (m.DriveRotor < 0 || (double.IsPositiveInfinity(m.DriveMost) && double.IsNegativeInfinity(m.DriveLeast)));
        for (int l = 0; l < m.Links && suits; l++)
        {
            bool jammed = !double.IsPositiveInfinity(plan.Forward[l]) || !double.IsPositiveInfinity(plan.Reverse[l]);
            suits = !x.Relaxing[l] && x.Links[l] switch
            {
                LinkState.Locked => m.IsElastic(l) || !jammed,
                LinkState.Absent or LinkState.Free => true,
                _ => false,
            };
        }

        return suits;
    }

    private static double Dot(double[] rows, int first, ReadOnlySpan<double> state)
    {
        double sum = 0;
        var row = new ReadOnlySpan<double>(rows, first, state.Length);
        for (int i = 0; i < state.Length; i++)
        {
            sum += row[i] * state[i];
        }

        return sum;
    }

    private double Dot(double[] rows, int first, double[] state) => Dot(rows, first, new ReadOnlySpan<double>(state, 0, size));

    private void Prepare(Mechanism m, RunState x, Plan plan, StepSeries series)
    {
        double h = TransientLoop.Reach / plan.Rate;
        int degree = StepSeries.DegreeFor(TransientLoop.Reach);
        size = m.Rotors + plan.SpringCount + 1;
        outputCount = 0;
        for (int l = 0; l < m.Links; l++)
        {
            unit.Links[l] = x.Links[l];
            unit.Twist[l] = 0;
            if (x.Links[l] == LinkState.Locked)
            {
                reaches[outputCount] = ReachOf(m, plan, l);
                outputs[outputCount++] = l;
            }
        }

        Array.Clear(unit.Speed, 0, m.Rotors);
        for (int column = 0; column < size; column++)
        {
            bool inputs = column == size - 1;
            Touch(plan, m.Rotors, column, 1);
            plan.HushInputs(!inputs);
            series.Compute(m, unit, plan, h, degree);
            plan.HushInputs(false);
            Touch(plan, m.Rotors, column, 0);
            Column(m, plan, series, column);
        }

        Grams(m, plan, h);
        phi[((size - 1) * stride) + size - 1] = 1;
        Begin();
        ready = true;
    }

    private void Touch(Plan plan, int rotors, int column, double amount)
    {
        if (column < rotors)
        {
            unit.Speed[column] = amount;
        }
        else if (column < size - 1)
        {
            unit.Twist[plan.Springs[column - rotors].Link] = amount;
        }
    }

    private void Column(Mechanism m, Plan plan, StepSeries series, int column)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            phi[(i * stride) + column] = Polynomial.Value(series.Of(series.Speed, i), 1);
            turned[(i * stride) + column] = series.Length * Polynomial.Integral(series.Of(series.Speed, i));
            given[(i * stride) + column] = m.IsHeld(i) ? series.Length * Polynomial.Integral(series.Of(series.Net, i)) : 0;
            if (!IsSquared(m, plan, i))
            {
                continue;
            }

            EnergyMeter.AtNodes(series.Of(series.Speed, i),
                new Span<double>(nodes, ((i * stride) + column) * EnergyMeter.NodeCount, EnergyMeter.NodeCount));
        }

        for (int n = 0; n < plan.SpringCount; n++)
        {
            int l = plan.Springs[n].Link;
            int place = m.Rotors + n;
            phi[(place * stride) + column] = Polynomial.Value(series.Of(series.Twist, l), 1);
            if (!IsSquared(m, plan, place))
            {
                continue;
            }

            EnergyMeter.AtNodes(series.Of(series.Closing, l),
                new Span<double>(nodes, ((place * stride) + column) * EnergyMeter.NodeCount, EnergyMeter.NodeCount));
        }

        phi[((size - 1) * stride) + column] = 0;
        for (int n = 0; n < outputCount; n++)
        {
            ReadOnlySpan<double> torque = series.Of(series.Torque, outputs[n]);
            value[(n * stride) + column] = torque[0];
            slope[(n * stride) + column] = torque[1];
        }
    }

    private void Grams(Mechanism m, Plan plan, double h)
    {
        squares = 0;
        for (int q = 0; q < m.Rotors + plan.SpringCount; q++)
        {
            if (!IsSquared(m, plan, q))
            {
                continue;
            }

            squares++;
            for (int a = 0; a < size; a++)
            {
                for (int b = 0; b < size; b++)
                {
                    int at = q * stride;
                    gram[((at + a) * stride) + b] = h * EnergyMeter.ProductOfNodes(
                        new ReadOnlySpan<double>(nodes, (at + a) * EnergyMeter.NodeCount, EnergyMeter.NodeCount),
                        new ReadOnlySpan<double>(nodes, (at + b) * EnergyMeter.NodeCount, EnergyMeter.NodeCount));
                }
            }
        }
    }

    // Torque over the energy norm: a spring's own; for a jam, of all springs at its rotor.
    private static double ReachOf(Mechanism m, Plan plan, int l)
    {
        double sum = 0;
        for (int n = 0; n < plan.SpringCount; n++)
        {
            Spring spring = plan.Springs[n];
            if (spring.Link == l || (!m.IsElastic(l) && (spring.From == m.From[l] || spring.To == m.From[l])))
            {
                double inertias = Math.Sqrt(plan.Inverse[spring.From]) + (spring.To < 0 ? 0 : Math.Sqrt(plan.Inverse[spring.To]));
                sum += Math.Sqrt(spring.Stiffness) + (spring.Damping * inertias);
            }
        }

        return sum;
    }

    private void Load(RunState x, Plan plan)
    {
        int rotors = x.Speed.Length;
        Array.Copy(x.Speed, z, rotors);
        for (int n = 0; n < plan.SpringCount; n++)
        {
            z[rotors + n] = x.Twist[plan.Springs[n].Link];
        }

        z[size - 1] = 1;
    }

    private void Store(RunState x, Plan plan)
    {
        int rotors = x.Speed.Length;
        for (int i = 0; i < rotors; i++)
        {
            x.Angle[i] += Dot(turned, i * stride, z);
            x.Speed[i] = end[i];
        }

        for (int n = 0; n < plan.SpringCount; n++)
        {
            x.Twist[plan.Springs[n].Link] = end[rotors + n];
        }
    }

    private void Energies(Mechanism m, RunState x, Plan plan, EnergyMeter energy)
    {
        for (int n = 0; n < plan.SpringCount; n++)
        {
            ref readonly Spring spring = ref plan.Springs[n];
            if (spring.Damping > 0)
            {
                energy.Damper[spring.Link] += spring.Damping * Quadratic(m.Rotors + n);
            }
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            bool driven = i == m.DriveRotor;
            double square = m.Viscous[i] > 0 || driven ? Quadratic(i) : 0;
            energy.SpeedSquare[i] += square;
            if (driven)
            {
                energy.AddDrive((plan.DriveConstant * Dot(turned, i * stride, z)) - (m.DriveSlope * square));
            }

            if (m.IsHeld(i))
            {
                energy.Held[i] += x.Speed[i] * Dot(given, i * stride, z);
            }
        }

        for (int k = 0; k < m.Torque.Length; k++)
        {
            Plan.Scale(x.Time, m.TorqueStart[k], m.TorqueRamp[k], out double scale, out _);
            energy.Torque[k] += scale * m.Torque[k] * Dot(turned, m.TorqueRotor[k] * stride, z);
        }
    }

    private double Quadratic(int quantity)
    {
        double sum = 0;
        for (int a = 0; a < size; a++)
        {
            sum += z[a] * Dot(gram, ((quantity * stride) + a) * stride, z);
        }

        return sum;
    }
}
