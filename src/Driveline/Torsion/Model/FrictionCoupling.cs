using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>A coupling that sticks up to its breakaway torque and slips at its running torque.</summary>
/// <remarks>Immutable. The capacity may rise from nothing over a time: an engagement.</remarks>
public sealed class FrictionCoupling : Coupling
{
    private readonly double breakaway;
    private readonly double running;
    private readonly double start;
    private readonly double rise;

    private FrictionCoupling(double breakaway, double running, double start, double rise)
    {
        this.breakaway = breakaway;
        this.running = running;
        this.start = start;
        this.rise = rise;
    }

    /// <summary>Torque at which it begins to slip, at its own speed.</summary>
    public Torque Breakaway => Torque.FromNewtonMeters(breakaway);

    /// <summary>Torque it carries while it slips.</summary>
    public Torque Running => Torque.FromNewtonMeters(running);

    /// <summary>A coupling with equal breakaway and running torque.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The torque is zero, negative or not finite.</exception>
    public static FrictionCoupling Of(Torque torque) => Of(torque, torque);

    /// <summary>A coupling with a breakaway and a running torque.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Breakaway is not above 0, or running is not from 0 to breakaway.</exception>
    public static FrictionCoupling Of(Torque breakaway, Torque running)
    {
        double most = Guard.Positive(Si.NewtonMeters(breakaway), "Breakaway torque", "N·m", nameof(breakaway));
        return new FrictionCoupling(most, Guard.Within(Si.NewtonMeters(running), 0, most, "Running torque", "N·m", nameof(running)), 0, -1);
    }

    /// <summary>The same coupling, open at first, taking hold from a time on, its capacity rising in proportion to time.</summary>
    /// <param name="from">When it begins; 0 s or more.</param>
    /// <param name="over">Time to full capacity; 0 s or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is negative or not finite.</exception>
    public FrictionCoupling Engaging(Duration from, Duration over) => new(
        breakaway,
        running,
        Guard.NotNegative(Si.Seconds(from), "Start of engagement", "s", nameof(from)),
        Guard.NotNegative(Si.Seconds(over), "Time of engagement", "s", nameof(over)));

    /// <summary>The torques at which it breaks loose and slips.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Breakaway.NewtonMeters:G4} N·m, slipping {Running.NewtonMeters:G4} N·m");

    internal override void WriteTo(Mechanism m, int link, double ratio)
    {
        m.Breakaway[link] = m.ReverseBreakaway[link] = breakaway * ratio;
        m.Running[link] = m.ReverseRunning[link] = running * ratio;
        m.RampStart[link] = start;
        m.RampTime[link] = rise;
    }
}
