using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>What drives a simulated driveline, and what the machine takes from it; all at the PTO.</summary>
/// <remarks>
/// Engine and flywheel as one inertia, a torque–speed line that acts on it, the PTO clutch behind it. Without an inertia the
/// engine is held at its speed, which errs towards higher torques. Without a line the engine gives the steady torque, as if its
/// governor were too slow for the blow. Immutable.
/// </remarks>
public sealed class SimulationDrive
{
    private SimulationDrive(double radPerS) => SpeedRadPerS = radPerS;

    private SimulationDrive(SimulationDrive other)
    {
        SpeedRadPerS = other.SpeedRadPerS;
        EngineInertia = other.EngineInertia;
        EngineLine = other.EngineLine;
        Engagement = other.Engagement;
        Rise = other.Rise;
        Load = other.Load;
    }

    /// <summary>PTO speed: at work for a strike, as the engine turns when the PTO clutch is engaged for an engagement.</summary>
    public RotationalSpeed Speed => RotationalSpeed.FromRadiansPerSecond(SpeedRadPerS);

    /// <summary>Inertia of engine and flywheel, J_pto = J_engine · (n_engine / n_pto)²; null when not known.</summary>
    public InertiaBand? EngineInertia { get; private init; }

    /// <summary>Torque of the engine over PTO speed; null when not known.</summary>
    public TorqueSpeedLine? EngineLine { get; private init; }

    /// <summary>Kind and capacity of the PTO clutch, and how it is engaged.</summary>
    public Engagement Engagement { get; private init; } = Engagement.NotKnown;

    /// <summary>Time in which the PTO clutch rises from nothing to its capacity; null when not known.</summary>
    public TimeBand? Rise { get; private init; }

    /// <summary>Torque the machine takes: carried when a strike comes, or while it is run up; null when not known.</summary>
    public TorqueBand? Load { get; private init; }

    internal double SpeedRadPerS { get; }

    /// <summary>
    /// True when the engine slows: its inertia is known, and for an engagement also its torque. Else it is held at its speed.
    /// </summary>
    internal bool IsEngineFree(bool isStrike) => EngineInertia is { HasExpected: true } && (isStrike || EngineLine is not null);

    internal double LoadNm(BandPoint point) => Load is null ? 0 : Bounded(Load.SiBand, point);

    internal double RiseS(BandPoint point) => Rise is null ? 0 : Bounded(Rise.SiBand, point);

    /// <summary>A drive at a PTO speed of which nothing else is known yet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static SimulationDrive At(RotationalSpeed ptoSpeed) =>
        new(Guard.Positive(Si.RadiansPerSecond(ptoSpeed), "PTO speed", "rad/s", nameof(ptoSpeed)));

    /// <summary>The same with the inertia of engine and flywheel, at the PTO.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The inertia is not above 0.</exception>
    public SimulationDrive WithEngineInertia(InertiaBand atPto) => Guard.NotNull(atPto, nameof(atPto)).SiBand.Low > 0
        ? new SimulationDrive(this) { EngineInertia = atPto }
        : throw Guard.OutOfRange("Engine inertia", "above 0 kg·m²", atPto.SiBand.Low, "kg·m²", nameof(atPto));

    /// <summary>The same with the torque of the engine over PTO speed.</summary>
    public SimulationDrive WithEngineLine(TorqueSpeedLine atPto) => new(this) { EngineLine = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with the PTO clutch.</summary>
    public SimulationDrive WithEngagement(Engagement engagement) =>
        new(this) { Engagement = Guard.NotNull(engagement, nameof(engagement)) };

    /// <summary>The same with the time in which the PTO clutch is engaged.</summary>
    public SimulationDrive WithRise(TimeBand rise) => new(this) { Rise = Guard.NotNull(rise, nameof(rise)) };

    /// <summary>The same with the torque the machine takes.</summary>
    public SimulationDrive WithLoad(TorqueBand load) => new(this) { Load = Guard.NotNull(load, nameof(load)) };

    /// <summary>The speed of the PTO.</summary>
    public override string ToString() => FormattableString.Invariant($"{Speed.RevolutionsPerMinute:0.#} 1/min");

    // A value without a bound is reported; the run takes the largest that is stated.
    private static double Bounded(Band band, BandPoint point) => Guard.IsFinite(band.At(point)) ? band.At(point)
        : band.HasExpected ? band.Expected
        : band.Low;
}
