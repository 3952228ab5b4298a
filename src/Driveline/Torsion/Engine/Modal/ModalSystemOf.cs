namespace Driveline.Torsion;

/// <summary>Finds the modes of a mechanism in the present states of its links.</summary>
internal static class ModalSystemOf
{
    /// <summary>Beyond it finding modes costs more than it saves.</summary>
    public const int MostStates = 240;

    /// <summary>Work of finding modes, by the cube of the states that hang together.</summary>
    private const int EigenWork = 40;

    public static ModalSystem Links(Mechanism m, RunState x, Plan plan, StepSeries series, RunState unit) =>
        new(m, x, Suits(m) ? Parts(m, x, plan, series, unit) : null);

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

    // A drive of no slope within limits meets them at once or never: left to the series.
    private static bool Suits(Mechanism m) => !m.HasJoints
        && (m.DriveRotor < 0 || m.DriveSlope > 0 || (double.IsPositiveInfinity(m.DriveMost) && double.IsNegativeInfinity(m.DriveLeast)));

    private static ModalParts? Parts(Mechanism m, RunState x, Plan plan, StepSeries series, RunState unit)
    {
        ModalState[] states = [.. States(m, x, plan)];
        int n = states.Length;
        if (n > MostStates)
        {
            return null;
        }

        double[,] a = new double[n, n];
        int rows = ModalRow.Count(m);
        double[] columns = new double[n * rows];
        plan.HideInputs();
        for (int s = 0; s < n; s++)
        {
            Still(m, x, plan, unit, false);
            Touch(m, plan, unit, states[s]);
            series.Compute(m, unit, plan, 1, 0);
            ModalRow.Read(m, series, columns.AsSpan(s * rows, rows));
            for (int t = 0; t < n; t++)
            {
                a[t, s] = Rate(series, states[t]);
            }
        }

        plan.ShowInputs();
        return Modes(m, x, plan, states, a, columns);
    }

    /// <summary>Rate of a coordinate, from a series of one second and degree 0.</summary>
    public static double Rate(StepSeries series, ModalState state) => state.Scale
        * (state.Root >= 0 ? series.Speed[(state.Root * StepSeries.Stride) + 1] : series.Twist[(state.Link * StepSeries.Stride) + 1]);

    private static IEnumerable<ModalState> States(Mechanism m, RunState x, Plan plan)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            if (plan.Bodies.Body[i] == i && plan.Bodies.Inverse[i] > 0)
            {
                yield return new ModalState(i, -1, Math.Sqrt(1 / plan.Bodies.Inverse[i]));
            }
        }

        for (int l = 0; l < m.Links; l++)
        {
            if (m.IsElastic(l) && (x.Links[l] == LinkState.Locked || x.Relaxing[l]))
            {
                yield return new ModalState(-1, l, Math.Sqrt(m.Stiffness[l]));
            }
        }
    }

    private static void Touch(Mechanism m, Plan plan, RunState unit, ModalState state)
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

    private static ModalParts? Modes(Mechanism m, RunState x, Plan plan, ModalState[] states, double[,] a, double[] columns)
    {
        int n = states.Length;
        var re = new List<double>();
        var im = new List<double>();
        var forth = new List<double[]>();
        var back = new List<double[]>();
        long work = 0;
        foreach (int[] part in Connected(a))
        {
            EigenBasis basis = EigenBasis.Of(Among(a, part), Free(m, x, plan, states, part));
            work += EigenWork * (long)part.Length * part.Length * part.Length;
            if (!basis.IsSound)
            {
                return null;
            }

            for (int j = 0; j < part.Length; j++)
            {
                re.Add(basis.Re[j]);
                im.Add(basis.Im[j]);
                bool isPair = basis.Im[j] > 0;
                Add(forth, n, part, i => basis.Inverse[j, i]);
                Add(forth, n, part, i => isPair ? -basis.Inverse[j + 1, i] : 0);
                Add(back, n, part, i => basis.Vectors[i, j]);
                Add(back, n, part, i => isPair ? -basis.Vectors[i, j + 1] : 0);
                j += isPair ? 1 : 0;
            }
        }

        return Assembled(states, re, im, forth, back, columns, work);
    }

    private static ModalParts Assembled(
        ModalState[] states, List<double> re, List<double> im, List<double[]> forth, List<double[]> back, double[] columns, long work)
    {
        int n = states.Length;
        int width = 2 * re.Count;
        int rows = n == 0 ? 0 : columns.Length / n;
        var parts = new ModalParts
        {
            States = states,
            Re = [.. re],
            Im = [.. im],
            Forth = [.. forth.SelectMany(r => r)],
            Back = new double[n * width],
            Rows = new double[rows * width],
            RowSizes = new double[rows * width / 2],
        };
        for (int k = 0; k < width; k++)
        {
            for (int s = 0; s < n; s++)
            {
                parts.Back[(s * width) + k] = back[k][s];
                for (int r = 0; r < rows && back[k][s] != 0; r++)
                {
                    parts.Rows[(r * width) + k] += columns[(s * rows) + r] * back[k][s];
                }
            }
        }

        for (int c = 0; c < parts.RowSizes.Length; c++)
        {
            double a = parts.Rows[2 * c];
            double b = parts.Rows[(2 * c) + 1];
            parts.RowSizes[c] = Math.Sqrt((a * a) + (b * b));
        }

        parts.Work = work + ((long)rows * n * width);
        return parts;
    }

    private static void Add(List<double[]> rows, int n, int[] part, Func<int, double> value)
    {
        double[] row = new double[n];
        for (int i = 0; i < part.Length; i++)
        {
            row[part[i]] = value(i);
        }

        rows.Add(row);
    }

    private static double[,] Among(double[,] a, int[] part)
    {
        double[,] some = new double[part.Length, part.Length];
        for (int i = 0; i < part.Length; i++)
        {
            for (int j = 0; j < part.Length; j++)
            {
                some[i, j] = a[part[i], part[j]];
            }
        }

        return some;
    }

    // What hangs on nothing outside itself turns on as one: √M of each body, of length 1.
    private static double[]? Free(Mechanism m, RunState x, Plan plan, ModalState[] states, int[] part)
    {
        double[] still = new double[part.Length];
        double square = 0;
        for (int i = 0; i < part.Length; i++)
        {
            ModalState state = states[part[i]];
            if (state.Root < 0 ? !IsBetweenFree(m, x, plan, state.Link) : HasViscous(m, plan, state.Root))
            {
                return null;
            }

            still[i] = state.Root < 0 ? 0 : state.Scale;
            square += still[i] * still[i];
        }

        return square == 0 ? null : Array.ConvertAll(still, s => s / Math.Sqrt(square));
    }

    private static bool IsBetweenFree(Mechanism m, RunState x, Plan plan, int l) => x.Links[l] == LinkState.Locked
        && m.To[l] >= 0
        && plan.Bodies.Inverse[plan.Bodies.Body[m.From[l]]] > 0
        && plan.Bodies.Inverse[plan.Bodies.Body[m.To[l]]] > 0;

    private static bool HasViscous(Mechanism m, Plan plan, int root)
    {
        bool has = false;
        for (int i = 0; i < m.Rotors; i++)
        {
            has |= plan.Bodies.Body[i] == root && plan.Viscous[i] > 0;
        }

        return has;
    }

    private static IEnumerable<int[]> Connected(double[,] a)
    {
        int n = a.GetLength(0);
        int[] part = Enumerable.Range(0, n).ToArray();
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                if (a[i, j] != 0 && part[i] != part[j])
                {
                    int kept = part[i];
                    int merged = part[j];
                    part = Array.ConvertAll(part, p => p == merged ? kept : p);
                }
            }
        }

        return Enumerable.Range(0, n).GroupBy(i => part[i]).Select(g => g.ToArray());
    }
}
