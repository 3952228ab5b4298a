using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Counts the work of the runs of one question, in memory that they share. Not for two threads at a time.</summary>
internal class WorkMeter
{
    private readonly TransientWorkspaces workspaces;
    private readonly long most;
    private readonly CancellationToken stop;

    public WorkMeter(SimulationLimits limits)
        : this(limits, 0, CancellationToken.None)
    {
    }

    /// <summary>A meter that counts on from work done before, until it is stopped.</summary>
    public WorkMeter(SimulationLimits limits, long done, CancellationToken stop)
        : this(limits, done, new TransientWorkspaces(), stop)
    {
    }

    /// <summary>The same in memory that questions of one thread may share, one after another.</summary>
    public WorkMeter(SimulationLimits limits, long done, TransientWorkspaces workspaces, CancellationToken stop)
    {
        this.workspaces = workspaces;
        most = Guard.NotNull(limits, nameof(limits)).Work;
        Done = done;
        this.stop = stop;
    }

    /// <summary>Work done so far.</summary>
    public long Done { get; private set; }

    /// <summary>True when something was cut off or not run at all.</summary>
    public bool IsSpent { get; private set; }

    /// <summary>What a caller must notice when it is spent.</summary>
    public IEnumerable<Finding> Findings => IsSpent ? [Finding.Of(SimulationFindings.TooMuchWork, Severity.Warning)] : [];

    /// <summary>Adds work that is about to be done; false when too little is left for it.</summary>
    public bool TrySpend(long work)
    {
        stop.ThrowIfCancellationRequested();
        IsSpent |= work > most - Done;
        Done += IsSpent ? 0 : work;
        return !IsSpent;
    }

    /// <summary>Runs a line as far as the work lasts. The result is valid until the next run.</summary>
    public TransientResult Run(TorsionStart start, double seconds)
    {
        TransientResult result = RunWithin(
            start, Duration.FromSeconds(seconds), TransientLimits.Usual.With(most - Done, stop));
        Done += result.Work;
        IsSpent |= Done > most;
        return result;
    }

    private protected virtual TransientResult RunWithin(TorsionStart start, Duration duration, TransientLimits limits) =>
        Transient.Run(start, duration, limits, workspaces.Of(start.Model.Mechanism));
}
