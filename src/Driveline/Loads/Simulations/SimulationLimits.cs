using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>How much computing the simulations of one question may take together. Immutable.</summary>
/// <remarks>
/// Work is counted, not timed, so that the same case has the same answer on every machine: one to two nanoseconds each on a desk
/// computer of 2024. Stiff or light parts beside slow ones, long runs and long drivelines cost most. When the work is spent,
/// nothing that was cut off is used; a finding says so.
/// </remarks>
public sealed class SimulationLimits
{
    private SimulationLimits(long work) => Work = work;

    /// <summary>110 million: well below half a second.</summary>
    public static SimulationLimits Usual { get; } = new(110_000_000);

    /// <summary>Most work of all runs together.</summary>
    public long Work { get; }

    /// <summary>Limits of another amount of work; 0 runs nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is below 0.</exception>
    public static SimulationLimits OfWork(long most) => new(Guard.NotNegative(most, "Work", nameof(most)));
}
