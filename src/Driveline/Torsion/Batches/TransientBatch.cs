using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>Runs of one structure, one after another in the same memory: figures in by column, torques and times out by column.</summary>
/// <remarks>
/// Each run is that of a model built with its figures. Nothing is allocated after the first time with so many runs. Runs that differ in
/// trip torque and speed alone share their modes, and cost half as much. Not for two threads at a time: give each thread its own.
/// </remarks>
public sealed class TransientBatch
{
    private readonly TorsionStart start;
    private readonly Mechanism varied;
    private readonly List<BatchColumn> columns = [];
    private double[] most = [];
    private double[] least = [];
    private double[] trips = [];
    private bool[] complete = [];

    private TransientBatch(TorsionStart start)
    {
        this.start = start;
        varied = start.Model.Mechanism.Copy();
    }

    /// <summary>Number of runs: the length of the columns; 1 without any.</summary>
    public int Count { get; private set; } = 1;

    /// <summary>A batch of runs from a start; its figures stand wherever no column changes them.</summary>
    public static TransientBatch Of(TorsionStart start) => new(Guard.NotNull(start, nameof(start)));

    /// <summary>Sets the inertia of a rotor, kg·m², one value a run; the array is kept, so that it can be filled anew.</summary>
    /// <exception cref="ArgumentException">There is no such rotor, it is held, or the column is not as long as the others.</exception>
    public TransientBatch WithInertia(string rotor, double[] values)
    {
        int i = start.Model.RotorIndex(rotor);
        return start.Model.Mechanism.IsHeld(i)
            ? throw new ArgumentException("A held rotor has no inertia; \"" + rotor + "\" is held.", nameof(rotor))
            : Add(BatchFigure.Inertia, i, rotor, values);
    }

    /// <summary>Sets the stiffness of a shaft, N·m/rad, one value a run. A shaft that starts with a torque starts with the same.</summary>
    /// <exception cref="ArgumentException">There is no such shaft, or the column is not as long as the others.</exception>
    public TransientBatch WithStiffness(string shaft, double[] values) => Add(BatchFigure.Stiffness, Shaft(shaft), shaft, values);

    /// <summary>Sets the damping of a shaft, N·m·s/rad, one value a run.</summary>
    /// <exception cref="ArgumentException">There is no such shaft, or the column is not as long as the others.</exception>
    public TransientBatch WithDamping(string shaft, double[] values) => Add(BatchFigure.Damping, Shaft(shaft), shaft, values);

    /// <summary>
    /// Sets the torque at which a coupling breaks or begins to slip, N·m at its own speed, one value a run; the torque it slips at
    /// stays in proportion, what is left after a break stays.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such coupling, or the column is not as long as the others.</exception>
    public TransientBatch WithTripTorque(string coupling, double[] values)
    {
        int l = start.Model.LinkIndex(coupling);
        Mechanism m = start.Model.Mechanism;
        return double.IsPositiveInfinity(m.Breakaway[l]) || m.Start[l] >= 0
            ? throw new ArgumentException("Only a coupling trips; \"" + coupling + "\" is none.", nameof(coupling))
            : Add(BatchFigure.TripTorque, l, coupling, values);
    }

    /// <summary>Sets the speed at the start, rad/s, as <see cref="TorsionModel.TurningAt"/> does, one value a run.</summary>
    /// <exception cref="ArgumentException">The column is not as long as the others.</exception>
    public TransientBatch WithSpeed(double[] values) => Add(BatchFigure.Speed, 0, start.Model.Rotors[0], values);

    /// <summary>Makes all runs. A result in the workspace from before is no longer valid.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The duration is zero, negative or not finite, or a value of a column is not finite or not above 0.
    /// </exception>
    public void Run(Duration duration, TransientLimits limits, TransientWorkspace workspace)
    {
        Guard.NotNull(limits, nameof(limits));
        Guard.NotNull(workspace, nameof(workspace));
        double end = Guard.Positive(Si.Seconds(duration), "Duration", "s", nameof(duration));
        foreach (BatchColumn column in columns)
        {
            column.Check();
        }

        Fit();
        workspace.FitTo(varied);
        for (int run = 0; run < Count; run++)
        {
            start.WriteTo(workspace.State);
            foreach (BatchColumn column in columns)
            {
                column.Apply(start.Model.Mechanism, varied, workspace.State, run);
            }

            workspace.Log.WatchesSprings = false;
            TransientLoop.Run(varied, workspace, end, limits, new TransientTrace(default, false, default, end));
            Keep(workspace.Log, run);
        }
    }

    /// <summary>
    /// Largest torque of each run in the driving direction, N·m at the element's own speed; +∞ for a rigid obstacle struck at speed.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public ReadOnlySpan<double> Peaks(string element) => Column(most, element);

    /// <summary>Largest torque of each run against the driving direction, as a number of 0 or more.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public ReadOnlySpan<double> ReversePeaks(string element) => Column(least, element);

    /// <summary>When an element first broke or slipped in each run, s; NaN where it did not.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public ReadOnlySpan<double> TripTimes(string element) => Column(trips, element);

    /// <summary>True where a run reached its end; elsewhere peaks are those up to where it stopped: not safe to rely on.</summary>
    public ReadOnlySpan<bool> AreComplete => complete.AsSpan(0, Math.Min(Count, complete.Length));

    private int Shaft(string name)
    {
        int l = start.Model.LinkIndex(name);
        Mechanism m = start.Model.Mechanism;
        return m.IsElastic(l) && m.To[l] != Mechanism.Ground
            ? l
            : throw new ArgumentException("Only a shaft has a stiffness and a damping; \"" + name + "\" is none.", nameof(name));
    }

    private TransientBatch Add(BatchFigure figure, int index, string name, double[] values)
    {
        Guard.NotNull(values, nameof(values));
        if (values.Length == 0 || (columns.Count > 0 && values.Length != Count))
        {
            throw new ArgumentException(
                FormattableString.Invariant($"A column must have one value a run, {(columns.Count > 0 ? Count : 1)} or more at first; ")
                    + FormattableString.Invariant($"got {values.Length}."), nameof(values));
        }

        columns.Add(new BatchColumn(figure, index, name, values));
        Count = values.Length;
        return this;
    }

    private void Fit()
    {
        if (complete.Length != Count)
        {
            complete = new bool[Count];
            most = new double[Count * varied.Links];
            least = new double[most.Length];
            trips = new double[most.Length];
        }
    }

    private void Keep(RunLog log, int run)
    {
        for (int l = 0; l < varied.Links; l++)
        {
            most[(l * Count) + run] = log.Struck[l] ? double.PositiveInfinity : log.Most[l] / varied.LinkRatio[l];
            least[(l * Count) + run] = log.Least[l] / varied.LinkRatio[l];
            trips[(l * Count) + run] = log.FirstSlip[l];
        }

        complete[run] = !log.IsCutOff;
    }

    private ReadOnlySpan<double> Column(double[] of, string element)
    {
        int l = start.Model.LinkIndex(element);
        return of.Length == 0 ? default : of.AsSpan(l * Count, Count);
    }
}
