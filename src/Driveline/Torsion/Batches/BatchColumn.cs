using Driveline.Quantities;

namespace Driveline.Torsion;

/// <summary>Values of one figure, one a run.</summary>
internal sealed class BatchColumn
{
    private readonly BatchFigure figure;
    private readonly int index;
    private readonly string name;
    private readonly double[] values;

    public BatchColumn(BatchFigure figure, int index, string name, double[] values)
    {
        this.figure = figure;
        this.index = index;
        this.name = name;
        this.values = values;
    }

    /// <summary>Number of runs.</summary>
    public int Count => values.Length;

    /// <summary>Checks all values, so that no run begins before all can.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or not above 0 where it must be.</exception>
    public void Check()
    {
        for (int run = 0; run < values.Length; run++)
        {
            double value = values[run];
            bool isSound = Guard.IsFinite(value)
                && (figure == BatchFigure.Speed || value > 0 || (figure == BatchFigure.Damping && value == 0));
            if (!isSound)
            {
                string wanted = figure == BatchFigure.Speed ? "a finite value" : figure == BatchFigure.Damping ? "0 or more" : "above 0";
                throw Guard.OutOfRange(FormattableString.Invariant($"{figure} of \"{name}\" in run {run}"), wanted, value, Unit, "values");
            }
        }
    }

    /// <summary>Sets the figure of one run, as the builder would.</summary>
    /// <param name="plain">The mechanism before any column.</param>
    /// <param name="varied">The one to change.</param>
    /// <param name="state">Speeds and twists at the start.</param>
    /// <param name="run">Number of the run.</param>
    public void Apply(Mechanism plain, Mechanism varied, RunState state, int run)
    {
        double value = values[run];
        double r;
        switch (figure)
        {
            case BatchFigure.Inertia:
                r = plain.RotorRatio[index];
                varied.Inertia[index] = value * r * r;
                varied.InverseInertia[index] = 1 / varied.Inertia[index];
                break;
            case BatchFigure.Stiffness:
                r = plain.LinkRatio[index];
                varied.Stiffness[index] = value * r * r;
                state.Twist[index] *= plain.Stiffness[index] / varied.Stiffness[index];
                break;
            case BatchFigure.Damping:
                r = plain.LinkRatio[index];
                varied.Damping[index] = value * r * r;
                break;
            case BatchFigure.TripTorque:
                TripAt(plain, varied, value * plain.LinkRatio[index]);
                break;
            default:
                for (int i = 0; i < plain.Rotors; i++)
                {
                    state.Speed[i] = plain.IsHeld(i) ? state.Speed[i] : value;
                }

                break;
        }
    }

    private string Unit => figure switch
    {
        BatchFigure.Inertia => "kg·m²",
        BatchFigure.Stiffness => "N·m/rad",
        BatchFigure.Damping => "N·m·s/rad",
        BatchFigure.TripTorque => "N·m",
        _ => "rad/s",
    };

    // What it runs at stays in proportion.
    private void TripAt(Mechanism plain, Mechanism varied, double torque)
    {
        double before = plain.Breakaway[index];
        varied.Breakaway[index] = torque;
        varied.ReverseBreakaway[index] = torque * (plain.ReverseBreakaway[index] / before);
        varied.Running[index] = torque * (plain.Running[index] / before);
        varied.ReverseRunning[index] = torque * (plain.ReverseRunning[index] / before);
    }
}
