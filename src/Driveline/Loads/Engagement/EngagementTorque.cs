using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>What letting the PTO clutch in puts on the driveline, and the time and heat until rotor and engine turn together.</summary>
/// <remarks>
/// All at the PTO. A slipping clutch passes at most its capacity T_c, whatever the engine speed: a low speed shortens time
/// and heat, not the peak. Only a clutch engaged slowly meets the rotor's speed before it passes all it can: rising evenly over
/// t_r, at T_l + √(2 J ω T_c / t_r). Behind the clutch the line swings: peak T_l + f (T_c − T_l), f = 2 for a sudden bite,
/// 1 + |sin x| / x with x = ω_n t_r / 2 for a ramp (the high end uses 1 + 1 / x), ω_n = √(k / J) as the lowest it can be.
/// Heat of a drive held at its speed is ½ J ω² + T_l φ, free of the clutch torque without load; an engine that slows
/// lowers the low end only. Without a known capacity the peak has no bound: the rigid estimate T_l + ω √(J k) never caps it.
/// Immutable. Source: two inertias and a friction torque, textbooks of machine design; swing: textbooks of vibration.
/// </remarks>
internal sealed partial class EngagementTorque
{
    private const double SuddenFactor = 2;

    private readonly double omega;

    private EngagementTorque(EngagementTorque? from, Engagement engagement, double omega)
    {
        Engagement = engagement;
        this.omega = omega;
        Rotor = from?.Rotor;
        Load = from?.Load;
        Rise = from?.Rise;
        Stiffness = from?.Stiffness;
        EngineInertia = from?.EngineInertia;
    }

    /// <summary>PTO clutch, manner, capacity and stated peak.</summary>
    public Engagement Engagement { get; }

    /// <summary>Speed the PTO would turn at with the engine as it is when the clutch is engaged.</summary>
    public RotationalSpeed PtoSpeed => RotationalSpeed.FromRadiansPerSecond(omega);

    /// <summary>Inertia to run up, at the PTO; null when not known.</summary>
    public InertiaBand? Rotor { get; private set; }

    /// <summary>Torque the machine takes while it is run up, at the PTO; null when not known.</summary>
    public TorqueBand? Load { get; private set; }

    /// <summary>Time in which the clutch is engaged, from nothing to its full capacity; null when not known.</summary>
    public TimeBand? Rise { get; private set; }

    /// <summary>Stiffness of the line to the rotor, at the PTO; null when not known.</summary>
    public StiffnessBand? Stiffness { get; private set; }

    /// <summary>Inertia of engine and flywheel, at the PTO; null when not known: then the drive is held at its speed.</summary>
    public InertiaBand? EngineInertia { get; private set; }

    /// <summary>An engagement at a PTO speed.</summary>
    /// <param name="engagement">PTO clutch, manner and capacity.</param>
    /// <param name="ptoSpeed">Speed of the engaged PTO at that engine speed; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static EngagementTorque Of(Engagement engagement, RotationalSpeed ptoSpeed) => new(
        null, Guard.NotNull(engagement, nameof(engagement)),
            Guard.Positive(Si.RadiansPerSecond(ptoSpeed), "PTO speed", "rad/s", nameof(ptoSpeed)));

    /// <summary>The same with the inertia to run up, at the PTO.</summary>
    public EngagementTorque WithRotor(InertiaBand atPto) => new(this, Engagement, omega) { Rotor = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with the torque the machine takes while it is run up, at the PTO.</summary>
    public EngagementTorque WithLoad(TorqueBand load) => new(this, Engagement, omega) { Load = Guard.NotNull(load, nameof(load)) };

    /// <summary>The same with the time in which the clutch is engaged, from nothing to its full capacity.</summary>
    public EngagementTorque WithRise(TimeBand rise) => new(this, Engagement, omega) { Rise = Guard.NotNull(rise, nameof(rise)) };

    /// <summary>The same with the stiffness of the line to the rotor, at the PTO.</summary>
    public EngagementTorque WithStiffness(StiffnessBand atPto) =>
        new(this, Engagement, omega) { Stiffness = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with the inertia of engine and flywheel, at the PTO.</summary>
    public EngagementTorque WithEngineInertia(InertiaBand atPto) =>
        new(this, Engagement, omega) { EngineInertia = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same at another engine speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public EngagementTorque WithPtoSpeed(RotationalSpeed ptoSpeed) =>
        new(this, Engagement, Guard.Positive(Si.RadiansPerSecond(ptoSpeed), "PTO speed", "rad/s", nameof(ptoSpeed)));

    /// <summary>The engagement with this peak, for a protection check.</summary>
    public Engagement ToEngagement() => Engagement.WithPeak(Peak);

    /// <summary>The lines of the calculation: peak low, expected, high, then time and heat.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        var steps = StepList.New();
        PeakBand(ref steps);
        if (Rotor is not null)
        {
            Times(ref steps);
            Heats(ref steps);
        }

        return steps.Lines;
    }
}
