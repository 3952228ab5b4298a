namespace Driveline.Torsion;

/// <summary>Finds the modes of a mechanism in the present states of its links, in memory that is used again.</summary>
internal sealed partial class ModalSystemOf
{
    /// <summary>Beyond it finding modes costs more than it saves.</summary>
    public const int MostStates = 240;

    /// <summary>Work of finding modes, by the cube of the states that hang together.</summary>
    private const int EigenWork = 40;

    private readonly RunState unit;
    private readonly EigenBasis basis = new();
    private readonly ModalState[] states;
    private readonly int[] part;
    private readonly int[] members;
    private readonly double[] still;
    private readonly double[] re;
    private readonly double[] im;
    private double[] a = [];
    private double[] among = [];
    private double[] forth = [];
    private double[] back = [];
    private double[] columns = [];
    private int n;
    private int modes;
    private long work;

    public ModalSystemOf(int rotors, int links)
    {
        int most = rotors + links;
        unit = new RunState(rotors, links);
        states = new ModalState[most];
        part = new int[most];
        members = new int[most];
        still = new double[most];
        re = new double[most];
        im = new double[most];
    }

    /// <summary>Fills a system with the modes; one without sound modes says so.</summary>
    public void Fill(ModalSystem into, Mechanism m, RunState x, Plan plan, StepSeries series)
    {
        into.Begin(m, x);
        if (!Suits(m) || !TakeStates(m, x, plan))
        {
            return;
        }

        int rows = ModalRow.Count(m);
        Fit(rows);
        plan.HideInputs();
        for (int s = 0; s < n; s++)
        {
            Still(m, x, plan, unit, false);
            Touch(m, plan, states[s]);
            series.Compute(m, unit, plan, 1, 0);
            ModalRow.Read(m, series, columns.AsSpan(s * rows, rows));
            for (int t = 0; t < n; t++)
            {
                a[(t * n) + s] = Rate(series, states[t]);
            }
        }

        plan.ShowInputs();
        if (TryModes(m, x, plan))
        {
            Assemble(into, rows);
        }
    }

    /// <summary>The unit state with the links as they are and nothing in motion but what is held.</summary>
    public static void Still(Mechanism m, RunState x, Plan plan, RunState unit, bool isHeldTurning)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            unit.Speed[i] = isHeldTurning && plan.Bodies.Inverse[plan.Bodies.Body[i]] == 0 ? x.Speed[i] : 0;
        }

        for (int l = 0; l < m.Links; l++)
        {
            unit.Twist[l] = 0;
            unit.Links[l] = x.Links[l];
            unit.Relaxing[l] = x.Relaxing[l];
        }
    }

    /// <summary>Rate of a coordinate, from a series of one second and degree 0.</summary>
    public static double Rate(StepSeries series, ModalState state) => state.Scale
        * (state.Root >= 0 ? series.Speed[(state.Root * StepSeries.Stride) + 1] : series.Twist[(state.Link * StepSeries.Stride) + 1]);

    // A drive of no slope within limits meets them at once or never: left to the series.
    private static bool Suits(Mechanism m) => !m.HasJoints
        && (m.DriveRotor < 0 || m.DriveSlope > 0 || (double.IsPositiveInfinity(m.DriveMost) && double.IsNegativeInfinity(m.DriveLeast)));

    private bool TakeStates(Mechanism m, RunState x, Plan plan)
    {
        n = 0;
        for (int i = 0; i < m.Rotors; i++)
        {
            if (plan.Bodies.Body[i] == i && plan.Bodies.Inverse[i] > 0)
            {
                states[n++] = new ModalState(i, -1, Math.Sqrt(1 / plan.Bodies.Inverse[i]));
            }
        }

        for (int l = 0; l < m.Links; l++)
        {
            if (m.IsElastic(l) && (x.Links[l] == LinkState.Locked || x.Relaxing[l]))
            {
                states[n++] = new ModalState(-1, l, Math.Sqrt(m.Stiffness[l]));
            }
        }

        return n <= MostStates;
    }

    private void Fit(int rows)
    {
        if (a.Length < n * n)
        {
            a = new double[n * n];
            among = new double[n * n];
            forth = new double[2 * n * n];
            back = new double[2 * n * n];
            columns = new double[n * rows];
        }
    }

    private void Touch(Mechanism m, Plan plan, ModalState state)
    {
        if (state.Root < 0)
        {
            unit.Twist[state.Link] = 1 / state.Scale;
            return;
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            unit.Speed[i] = plan.Bodies.Body[i] == state.Root ? 1 / state.Scale : 0;
        }
    }

    private bool TryModes(Mechanism m, RunState x, Plan plan)
    {
        Connect();
        modes = 0;
        work = 0;
        for (int first = 0; first < n; first++)
        {
            int count = 0;
            for (int i = first; i < n && part[first] >= 0; i++)
            {
                if (part[i] == part[first])
                {
                    members[count++] = i;
                }
            }

            if (count == 0)
            {
                continue;
            }

            for (int i = 0; i < count; i++)
            {
                for (int j = 0; j < count; j++)
                {
                    among[(i * count) + j] = a[(members[i] * n) + members[j]];
                }
            }

            bool isFree = IsFree(m, x, plan, count);
            work += EigenWork * (long)count * count * count;
            if (!basis.Solve(among, count, isFree ? still.AsSpan(0, count) : default))
            {
                return false;
            }

            TakeModes(count);
            for (int i = count - 1; i >= 0; i--)
            {
                part[members[i]] = -1;
            }
        }

        return true;
    }

    private void TakeModes(int count)
    {
        double[] vectors = basis.Vectors;
        double[] inverse = basis.Inverse;
        for (int j = 0; j < count; j++, modes++)
        {
            bool isPair = basis.Im[j] > 0;
            int at = 2 * modes * n;
            re[modes] = basis.Re[j];
            im[modes] = basis.Im[j];
            Array.Clear(forth, at, 2 * n);
            Array.Clear(back, at, 2 * n);
            for (int i = 0; i < count; i++)
            {
                int to = at + members[i];
                forth[to] = inverse[(j * count) + i];
                back[to] = vectors[(i * count) + j];
                if (isPair)
                {
                    forth[to + n] = -inverse[((j + 1) * count) + i];
                    back[to + n] = -vectors[(i * count) + j + 1];
                }
            }

            j += isPair ? 1 : 0;
        }
    }
}
