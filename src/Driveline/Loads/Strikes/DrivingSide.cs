using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>What drives a place that is stopped: engine, PTO clutch and the line up to it, all at the PTO.</summary>
/// <remarks>
/// Three lumps: engine and flywheel before the PTO clutch, the line behind the clutch up to the stopped point, and the twist
/// between the line and the stop. Every fact may be missing; what follows then has no bound. Immutable.
/// </remarks>
internal sealed class DrivingSide
{
    private DrivingSide(DrivingSide? from, double omega, TorqueBand steady)
    {
        SpeedRadPerS = omega;
        Steady = steady;
        ClutchCapacity = from?.ClutchCapacity;
        EngineInertia = from?.EngineInertia;
        LineInertia = from?.LineInertia;
        Stiffness = from?.Stiffness;
    }

    /// <summary>PTO speed.</summary>
    public RotationalSpeed Speed => RotationalSpeed.FromRadiansPerSecond(SpeedRadPerS);

    /// <summary>Torque carried when the strike comes, T₀.</summary>
    public TorqueBand Steady { get; }

    /// <summary>Torque the PTO clutch can pass, T_c; null when not known.</summary>
    public TorqueBand? ClutchCapacity { get; private set; }

    /// <summary>Inertia of engine and flywheel; null when not known.</summary>
    public InertiaBand? EngineInertia { get; private set; }

    /// <summary>Inertia between PTO clutch and stopped point; null when not known.</summary>
    public InertiaBand? LineInertia { get; private set; }

    /// <summary>Stiffness from the line's inertia to the stopped point; null when not known.</summary>
    public StiffnessBand? Stiffness { get; private set; }

    internal double SpeedRadPerS { get; }

    /// <summary>A line that turns at a PTO speed and carries a steady torque.</summary>
    /// <param name="speed">PTO speed; above 0.</param>
    /// <param name="steady">Steady torque T₀ at the PTO.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static DrivingSide At(RotationalSpeed speed, TorqueBand steady) => new(
        null, Guard.Positive(Si.RadiansPerSecond(speed), "PTO speed", "rad/s", nameof(speed)), Guard.NotNull(steady, nameof(steady)));

    /// <summary>The same with the torque the PTO clutch can pass.</summary>
    public DrivingSide WithClutchCapacity(TorqueBand capacity) =>
        new(this, SpeedRadPerS, Steady) { ClutchCapacity = Guard.NotNull(capacity, nameof(capacity)) };

    /// <summary>The same with the inertia of engine and flywheel, at the PTO.</summary>
    public DrivingSide WithEngineInertia(InertiaBand atPto) =>
        new(this, SpeedRadPerS, Steady) { EngineInertia = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with the inertia between PTO clutch and stopped point, at the PTO.</summary>
    public DrivingSide WithLineInertia(InertiaBand atPto) =>
        new(this, SpeedRadPerS, Steady) { LineInertia = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with the stiffness from that inertia to the stopped point, at the PTO.</summary>
    public DrivingSide WithStiffness(StiffnessBand atPto) =>
        new(this, SpeedRadPerS, Steady) { Stiffness = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with a computed stiffness.</summary>
    public DrivingSide WithStiffness(LineStiffness stiffness) => WithStiffness(Guard.NotNull(stiffness, nameof(stiffness)).Stiffness);

    /// <summary>The same with another steady torque.</summary>
    public DrivingSide WithSteady(TorqueBand steady) => new(this, SpeedRadPerS, Guard.NotNull(steady, nameof(steady)));

    /// <summary>The same at another PTO speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public DrivingSide WithSpeed(RotationalSpeed speed) =>
        new(this, Guard.Positive(Si.RadiansPerSecond(speed), "PTO speed", "rad/s", nameof(speed)), Steady);
}
