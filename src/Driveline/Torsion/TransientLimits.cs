using Driveline.Quantities;

namespace Driveline.Torsion;

/// <summary>How far a run may go before it gives up and says so. Immutable.</summary>
public sealed class TransientLimits
{
    private TransientLimits(int events, long steps, long work, CancellationToken stop)
    {
        Events = events;
        Steps = steps;
        Work = work;
        Stop = stop;
    }

    /// <summary>10 000 events, 20 million steps, and any work.</summary>
    public static TransientLimits Usual { get; } = new(10_000, 20_000_000, long.MaxValue, CancellationToken.None);

    /// <summary>Most events of a run.</summary>
    public int Events { get; }

    /// <summary>Most steps of a run, as <see cref="TransientResult.StepCount"/> counts them.</summary>
    public long Steps { get; }

    /// <summary>Most work of a run, as <see cref="TransientResult.Work"/> counts it.</summary>
    public long Work { get; }

    /// <summary>Ends a run from outside: it throws <see cref="OperationCanceledException"/>.</summary>
    public CancellationToken Stop { get; }

    /// <summary>The same limits with another number of events; from 1 to a million.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public TransientLimits WithEvents(int most) =>
        new(Guard.Within(most, 1, 1_000_000, "Number of events", nameof(most)), Steps, Work, Stop);

    /// <summary>The same limits with another number of steps; 1 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public TransientLimits WithSteps(int most) =>
        new(Events, Guard.Within(most, 1, int.MaxValue, "Number of steps", nameof(most)), Work, Stop);

    /// <summary>The same limits with another amount of work; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is outside its range.</exception>
    public TransientLimits WithWork(long most) => new(Events, Steps, Guard.NotNegative(most, "Work", nameof(most)), Stop);

    /// <summary>The same limits with another amount of work, 0 or more, and a token.</summary>
    internal TransientLimits With(long work, CancellationToken stop) =>
        new(Events, Steps, Guard.NotNegative(work, "Work", nameof(work)), stop);

    /// <summary>The same limits with a token that ends a run from outside; it is asked after every step.</summary>
    public TransientLimits WithStop(CancellationToken stop) => new(Events, Steps, Work, stop);
}
