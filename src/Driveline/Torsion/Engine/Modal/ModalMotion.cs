namespace Driveline.Torsion;

/// <summary>Modes and inputs of one stretch between events, from its start.</summary>
internal sealed class ModalMotion
{
    private readonly RunState unit;
    private double[] states = [];
    private int width = -1;

    public ModalMotion(int rotors, int links) => unit = new RunState(rotors, links);

    public ModalSystem System { get; private set; } = null!;

    /// <summary>Scratch state for reading rows.</summary>
    public RunState Unit => unit;

    /// <summary>Modes at the start.</summary>
    public double[] Start { get; private set; } = [];

    /// <summary>Inputs g₀ and g₁ of each mode.</summary>
    public double[] Input { get; private set; } = [];

    public double[] InputRate { get; private set; } = [];

    /// <summary>The motion without swings, p₀ + p₁·t, of each mode of λ ≠ 0.</summary>
    public double[] Steady { get; private set; } = [];

    public double[] SteadyRate { get; private set; } = [];

    /// <summary>Room for one more state in modes.</summary>
    public double[] Scratch { get; private set; } = [];

    /// <summary>The same, for the state before.</summary>
    public double[] Before { get; private set; } = [];

    /// <summary>Room for the inputs at a time.</summary>
    public double[] InputNow { get; private set; } = [];

    /// <summary>a₀ and a₁ of each row.</summary>
    public double[] Offset { get; private set; } = [];

    public double[] OffsetRate { get; private set; } = [];

    public void Begin(ModalSystem system, Mechanism m, RunState x, Plan plan, StepSeries series)
    {
        System = system;
        Fit(system, m);
        ModalState[] of = system.States;
        var column = states.AsSpan(0, system.StateCount);
        for (int s = 0; s < column.Length; s++)
        {
            column[s] = of[s].Scale * (of[s].Root >= 0 ? x.Speed[of[s].Root] : x.Twist[of[s].Link]);
        }

        system.ToModes(column, Start);
        Inputs(m, x, plan, series, true, column, Offset, Input);
        if (plan.HasRamps)
        {
            plan.HideInputs();
            plan.ShowInputRates();
            Inputs(m, x, plan, series, false, column, OffsetRate, InputRate);
            plan.ShowInputs();
        }
        else
        {
            Array.Clear(OffsetRate, 0, OffsetRate.Length);
            Array.Clear(InputRate, 0, width);
        }

        for (int k = 0; k < system.Modes; k++)
        {
            double square = system.Size[k] * system.Size[k];
            double re = square == 0 ? 0 : system.Re[k] / square;
            double im = square == 0 ? 0 : -system.Im[k] / square;
            double a = InputRate[2 * k];
            double b = InputRate[(2 * k) + 1];
            SteadyRate[2 * k] = -((a * re) - (b * im));
            SteadyRate[(2 * k) + 1] = -((a * im) + (b * re));
            a = Input[2 * k] - SteadyRate[2 * k];
            b = Input[(2 * k) + 1] - SteadyRate[(2 * k) + 1];
            Steady[2 * k] = -((a * re) - (b * im));
            Steady[(2 * k) + 1] = -((a * im) + (b * re));
        }
    }

    /// <summary>Part of a row that does not swing, at a time of the stretch.</summary>
    public double At(int row, double time) => Offset[row] + (OffsetRate[row] * time);

    /// <summary>Inputs of all modes at a time of the stretch.</summary>
    public void InputAt(double time, Span<double> into)
    {
        for (int n = 0; n < width; n++)
        {
            into[n] = Input[n] + (InputRate[n] * time);
        }
    }

    /// <summary>Writes speeds and twists of a state in modes.</summary>
    public void Finish(Mechanism m, Plan plan, RunState x, ReadOnlySpan<double> q)
    {
        ModalState[] of = System.States;
        var column = states.AsSpan(0, System.StateCount);
        System.ToStates(q, column);
        for (int s = 0; s < column.Length; s++)
        {
            double value = column[s] / of[s].Scale;
            if (of[s].Root < 0)
            {
                x.Twist[of[s].Link] = value;
                continue;
            }

            for (int i = 0; i < m.Rotors; i++)
            {
                x.Speed[i] = plan.Bodies.Body[i] == of[s].Root ? value : x.Speed[i];
            }
        }
    }

    private void Inputs(
        Mechanism m, RunState x, Plan plan, StepSeries series, bool isHeldTurning, Span<double> column, double[] rows, double[] modes)
    {
        ModalSystemOf.Still(m, x, plan, unit, isHeldTurning);
        series.Compute(m, unit, plan, 1, 0);
        ModalRow.Read(m, series, rows);
        for (int s = 0; s < column.Length; s++)
        {
            column[s] = ModalSystemOf.Rate(series, System.States[s]);
        }

        System.ToModes(column, modes);
    }

    private void Fit(ModalSystem system, Mechanism m)
    {
        if (Offset.Length == 0)
        {
            Offset = new double[ModalRow.Count(m)];
            OffsetRate = new double[Offset.Length];
            states = new double[m.Rotors + m.Links];
        }

        if (width == system.Width)
        {
            return;
        }

        width = system.Width;
        if (Start.Length < width)
        {
            Start = new double[width];
            Scratch = new double[width];
            Before = new double[width];
            InputNow = new double[width];
            Input = new double[width];
            InputRate = new double[width];
            Steady = new double[width];
            SteadyRate = new double[width];
        }
    }
}
