using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>Something that a rotor meets from a time on: a stop, a springy or yielding resistance, or a jam.</summary>
/// <remarks>
/// Immutable. All but the jam and the tie only push back: the rotor may leave the obstacle and meet it again at the same place. A rotor
/// that meets a rigid obstacle stops at once and its energy goes into the obstacle; the torque of that blow is unbounded. What yields may
/// end: once the rotor has gone through it, it is gone for good.
/// </remarks>
public sealed class Obstacle
{
    private Obstacle(double start, double stiffness, double damping, double yield, bool holdsBothWays)
    {
        Start = start;
        Stiffness = stiffness;
        Damping = damping;
        Yield = yield;
        HoldsBothWays = holdsBothWays;
    }

    /// <summary>Time of contact, s.</summary>
    internal double Start { get; }

    private double Stiffness { get; }

    private double Damping { get; }

    private double Yield { get; }

    private bool HoldsBothWays { get; }

    private double Through { get; init; } = double.PositiveInfinity;

    private double SwingAngle { get; init; }

    private double SwingTorque { get; init; }

    /// <summary>True when nothing gives: the blow has no bound.</summary>
    internal bool IsRigid => double.IsPositiveInfinity(Stiffness);

    /// <summary>True when it gives way and never ends.</summary>
    internal bool IsEndless => !double.IsPositiveInfinity(Yield) && double.IsPositiveInfinity(Through);

    /// <summary>The rotor stops at that time and is held in both directions.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public static Obstacle Jam(Duration at) => new(Time(at), double.PositiveInfinity, 0, double.PositiveInfinity, true);

    /// <summary>The rotor stops at that time; it may turn back.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public static Obstacle RigidStop(Duration at) => new(Time(at), double.PositiveInfinity, 0, double.PositiveInfinity, false);

    /// <summary>A spring and damper side by side, T = k·θ + c·dθ/dt, never pulling.</summary>
    /// <param name="at">Time of contact; 0 s or more.</param>
    /// <param name="stiffness">k; above 0.</param>
    /// <param name="newtonMeterSecondsPerRadian">Damping c, N·m·s/rad; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Obstacle SpringDamper(Duration at, RotationalStiffness stiffness, double newtonMeterSecondsPerRadian) => new(
        Time(at),
        Guard.Positive(Si.NewtonMetersPerRadian(stiffness), "Obstacle stiffness", "N·m/rad", nameof(stiffness)),
        Guard.NotNegative(newtonMeterSecondsPerRadian, "Obstacle damping", "N·m·s/rad", nameof(newtonMeterSecondsPerRadian)),
        double.PositiveInfinity,
        false);

    /// <summary>
    /// A spring and damper side by side, T = k·θ + c·dθ/dt, that pushes and pulls: from that time the rotor is tied to the ground.
    /// </summary>
    /// <param name="at">Time from which it holds; 0 s or more. θ counts from there.</param>
    /// <param name="stiffness">k; above 0.</param>
    /// <param name="newtonMeterSecondsPerRadian">Damping c, N·m·s/rad; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Obstacle Tie(Duration at, RotationalStiffness stiffness, double newtonMeterSecondsPerRadian)
    {
        Obstacle pushes = SpringDamper(at, stiffness, newtonMeterSecondsPerRadian);
        return new Obstacle(pushes.Start, pushes.Stiffness, pushes.Damping, pushes.Yield, true);
    }

    /// <summary>Elastic up to a torque, then giving way at that torque and staying deformed, without end.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Obstacle Yielding(Duration at, RotationalStiffness stiffness, Torque yieldTorque) => new(
        Time(at),
        Guard.Positive(Si.NewtonMetersPerRadian(stiffness), "Obstacle stiffness", "N·m/rad", nameof(stiffness)),
        0,
        Guard.Positive(Si.NewtonMeters(yieldTorque), "Yield torque", "N·m", nameof(yieldTorque)),
        false);

    /// <summary>The same, cut through and gone once the rotor has turned through an angle since first contact.</summary>
    /// <remarks>
    /// T = k·θ up to the lesser of yield torque and k·θ_through, then constant up to θ_through, then 0. The work it takes is
    /// T·θ_through − T²/2k.
    /// </remarks>
    /// <param name="at">Time of contact; 0 s or more.</param>
    /// <param name="stiffness">k; above 0.</param>
    /// <param name="yieldTorque">Torque at which it gives way; above 0.</param>
    /// <param name="through">θ_through, the elastic part included; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Obstacle Yielding(Duration at, RotationalStiffness stiffness, Torque yieldTorque, Angle through)
    {
        Obstacle endless = Yielding(at, stiffness, yieldTorque);
        double end = Guard.Positive(Si.Radians(through), "Angle through the obstacle", "rad", nameof(through));
        return new Obstacle(endless.Start, endless.Stiffness, 0, Math.Min(endless.Yield, endless.Stiffness * end), false) { Through = end };
    }

    /// <summary>Blades that fold over what they meet and pass it: a torque over a travel, then nothing.</summary>
    /// <remarks>The torque is reached after a twentieth of the travel; their own inertia is to be counted in the rotor.</remarks>
    /// <param name="at">Time of contact; 0 s or more.</param>
    /// <param name="travel">Rotor travel while the blades fold; above 0.</param>
    /// <param name="resistance">Torque on the rotor meanwhile; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Obstacle Passing(Duration at, Angle travel, Torque resistance)
    {
        double rad = Guard.Positive(Si.Radians(travel), "Travel while the blades fold", "rad", nameof(travel));
        double nm = Guard.Positive(Si.NewtonMeters(resistance), "Torque while the blades fold", "N·m", nameof(resistance));
        return Yielding(at, RotationalStiffness.FromNewtonMetersPerRadian(20 * nm / rad), resistance, travel);
    }

    /// <summary>The same obstacle met by blades that first swing back: a constant torque over a travel, then the obstacle itself.</summary>
    /// <param name="travel">Rotor travel while the blades swing back; above 0.</param>
    /// <param name="resistance">Torque on the rotor meanwhile; 0 or more, and below a yielding obstacle's torque.</param>
    /// <remarks>A simplification: the blades' own inertia is to be counted in the rotor, their swing costs resistance × travel.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The obstacle holds both ways, which leaves blades no travel.</exception>
    public Obstacle AfterSwingBack(Angle travel, Torque resistance) => new(Start, Stiffness, Damping, Yield, false)
    {
        Through = Through,
        SwingAngle = HoldsBothWays
            ? throw new InvalidOperationException(
                "A jam or a tie leaves blades no travel to swing back; use a rigid stop, a spring-damper or a yielding obstacle.")
            : Guard.Positive(Si.Radians(travel), "Swing-back travel", "rad", nameof(travel)),
        SwingTorque = double.IsPositiveInfinity(Yield)
            ? Guard.NotNegative(Si.NewtonMeters(resistance), "Swing-back torque", "N·m", nameof(resistance))
            : Guard.Within(Si.NewtonMeters(resistance), 0, Yield, "Swing-back torque", "N·m", nameof(resistance)),
    };

    /// <summary>The same obstacle as a shaft sees it that turns 1/ratio times as fast.</summary>
    internal Obstacle Referred(double ratio) => new(Start, Stiffness * ratio * ratio, Damping * ratio * ratio, Yield * ratio, HoldsBothWays)
    {
        Through = Through / ratio,
        SwingAngle = SwingAngle / ratio,
        SwingTorque = SwingTorque * ratio,
    };

    /// <summary>A rigid stop that also holds the rotor from turning back; anything else, and blades that swing back, as they are.</summary>
    internal Obstacle Holding() => IsRigid && SwingAngle == 0 ? new Obstacle(Start, Stiffness, Damping, Yield, true) : this;

    /// <summary>What gives way without end, ending at an angle since contact, but not before it gives way.</summary>
    internal Obstacle Ending(double rad) => IsEndless
        ? new Obstacle(Start, Stiffness, Damping, Yield, HoldsBothWays)
        {
            Through = Math.Max(rad, Yield / Stiffness),
            SwingAngle = SwingAngle,
            SwingTorque = SwingTorque,
        }
        : this;

    internal void WriteTo(Mechanism m, int link, double ratio)
    {
        m.Start[link] = Start;
        m.Stiffness[link] = double.IsPositiveInfinity(Stiffness) ? Stiffness : Stiffness * ratio * ratio;
        m.Damping[link] = Damping * ratio * ratio;
        m.Breakaway[link] = m.Running[link] = double.IsPositiveInfinity(Yield) ? Yield : Yield * ratio;
        m.ReverseBreakaway[link] = m.ReverseRunning[link] = HoldsBothWays ? double.PositiveInfinity : 0;
        m.HasGap[link] = !HoldsBothWays;
        m.Backlash[link] = double.PositiveInfinity;
        m.SwingAngle[link] = SwingAngle / ratio;
        m.SwingTorque[link] = SwingTorque * ratio;
        m.EndSlip[link] = (SwingAngle + Math.Max(0, Through - (double.IsPositiveInfinity(Yield) ? 0 : Yield / Stiffness))) / ratio;
    }

    private static double Time(Duration at) => Guard.NotNegative(Si.Seconds(at), "Time of the obstacle", "s", nameof(at));
}
