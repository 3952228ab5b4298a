using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>A coupling that holds up to its capacity in either direction and breaks once when it is reached.</summary>
/// <remarks>After the break it carries its residual torque, a dry friction against slip; none unless given. Immutable.</remarks>
public sealed class BreakingCoupling : Coupling
{
    private readonly double capacity;
    private readonly double residual;

    private BreakingCoupling(double capacity, double residual)
    {
        this.capacity = capacity;
        this.residual = residual;
    }

    /// <summary>Torque at which it breaks, at its own speed.</summary>
    public Torque Capacity => Torque.FromNewtonMeters(capacity);

    /// <summary>Torque it still carries after the break.</summary>
    public Torque Residual => Torque.FromNewtonMeters(residual);

    /// <summary>A coupling that breaks at that torque and then carries nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is zero, negative or not finite.</exception>
    public static BreakingCoupling At(Torque capacity) =>
        new(Guard.Positive(Si.NewtonMeters(capacity), "Breaking torque", "N·m", nameof(capacity)), 0);

    /// <summary>The same coupling with a torque that remains after the break.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The residual is negative, not finite or above the capacity.</exception>
    public BreakingCoupling WithResidual(Torque torque) =>
        new(capacity, Guard.Within(Si.NewtonMeters(torque), 0, capacity, "Residual torque", "N·m", nameof(torque)));

    /// <summary>The torque at which it breaks.</summary>
    public override string ToString() => FormattableString.Invariant($"breaks at {Capacity.NewtonMeters:G4} N·m");

    internal override void WriteTo(Mechanism m, int link, double ratio)
    {
        m.Breakaway[link] = m.ReverseBreakaway[link] = m.Running[link] = m.ReverseRunning[link] = capacity * ratio;
        m.Residual[link] = residual * ratio;
        m.BreaksOnce[link] = true;
    }
}
