using Driveline.Chains;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>What a strike puts against an element of the driveline, at that element's own speed. Immutable.</summary>
/// <remarks>
/// A blade may turn back from what stopped it; a place before the rotor that stops dead stays stopped both ways. A blow on pan or
/// deck never passes the driveline. Referred to the PTO behind a speed ratio i: torque T · i, stiffness k · i², angle θ / i.
/// </remarks>
public sealed class SimulatedStrike
{
    private SimulatedStrike(Element at, StrikePlace place)
    {
        At = Guard.NotNull(at, nameof(at));
        Place = place;
    }

    private SimulatedStrike(SimulatedStrike other)
    {
        At = other.At;
        Place = other.Place;
        StartS = other.StartS;
        IsRigid = other.IsRigid;
        StiffnessNmPerRad = other.StiffnessNmPerRad;
        DampingNms = other.DampingNms;
        YieldNm = other.YieldNm;
        SwingRad = other.SwingRad;
        SwingNm = other.SwingNm;
    }

    /// <summary>The element that is stopped.</summary>
    public Element At { get; }

    /// <summary>What was hit.</summary>
    public StrikePlace Place { get; }

    /// <summary>True when nothing gives way.</summary>
    public bool IsRigid { get; private init; }

    /// <summary>When it comes, since the start of the run; 0 s unless given.</summary>
    public Duration Start => Duration.FromSeconds(StartS);

    /// <summary>True when the blow goes into deck or pan and never passes the driveline.</summary>
    public bool MissesDriveline => Place is StrikePlace.Pan or StrikePlace.Deck;

    internal double StartS { get; private init; }

    private double StiffnessNmPerRad { get; init; }

    private double DampingNms { get; init; }

    private double YieldNm { get; init; } = double.PositiveInfinity;

    private double SwingRad { get; init; }

    private double SwingNm { get; init; }

    /// <summary>A dead stop: rock, or a driveline that seizes.</summary>
    public static SimulatedStrike Rigid(Element at, StrikePlace place) => new(new SimulatedStrike(at, place)) { IsRigid = true };

    /// <summary>Something that gives way at a torque and stays deformed: a stump that is cut, a branch, soil.</summary>
    /// <param name="at">The element that is stopped.</param>
    /// <param name="place">What was hit.</param>
    /// <param name="stiffness">Stiffness up to that torque; above 0.</param>
    /// <param name="torque">Torque at which it gives way; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static SimulatedStrike Yielding(Element at, StrikePlace place, RotationalStiffness stiffness, Torque torque) =>
        new(new SimulatedStrike(at, place))
        {
            StiffnessNmPerRad = Guard.Positive(
            Si.NewtonMetersPerRadian(stiffness), "Stiffness of what is struck", "N·m/rad", nameof(stiffness)),
            YieldNm = Guard.Positive(Si.NewtonMeters(torque), "Torque at which it gives way", "N·m", nameof(torque)),
        };

    /// <summary>A spring and damper side by side that push back and never pull.</summary>
    /// <param name="at">The element that is stopped.</param>
    /// <param name="place">What was hit.</param>
    /// <param name="stiffness">Stiffness; above 0.</param>
    /// <param name="newtonMeterSecondsPerRadian">Damping; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static SimulatedStrike Springy(Element at, StrikePlace place, RotationalStiffness stiffness,
        double newtonMeterSecondsPerRadian) => new(new SimulatedStrike(at, place))
        {
            StiffnessNmPerRad = Guard.Positive(
            Si.NewtonMetersPerRadian(stiffness), "Stiffness of what is struck", "N·m/rad", nameof(stiffness)),
            DampingNms = Guard.NotNegative(
            newtonMeterSecondsPerRadian, "Damping of what is struck", "N·m·s/rad", nameof(newtonMeterSecondsPerRadian)),
        };

    /// <summary>A blow on pan or deck, which does not pass the driveline.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The place is another one.</exception>
    public static SimulatedStrike Beside(Element at, StrikePlace place) => place is StrikePlace.Pan or StrikePlace.Deck
        ? new SimulatedStrike(at, place)
        : throw new ArgumentOutOfRangeException(nameof(place), "Place must be Pan or Deck; got " + place + ".");

    /// <summary>The same, met by blades that first swing back.</summary>
    /// <param name="travel">Angle the element turns while they swing; above 0.</param>
    /// <param name="resistance">Torque meanwhile; 0 or more, and not above that at which what is struck gives way.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public SimulatedStrike AfterSwingBack(Angle travel, Torque resistance) => new(this)
    {
        SwingRad = Guard.Positive(Si.Radians(travel), "Swing-back travel", "rad", nameof(travel)),
        SwingNm = double.IsPositiveInfinity(YieldNm)
            ? Guard.NotNegative(Si.NewtonMeters(resistance), "Swing-back torque", "N·m", nameof(resistance))
            : Guard.Within(Si.NewtonMeters(resistance), 0, YieldNm, "Swing-back torque", "N·m", nameof(resistance)),
    };

    /// <summary>The same at another time since the start of the run; 0 s or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public SimulatedStrike Starting(Duration at) =>
        new(this) { StartS = Guard.NotNegative(Si.Seconds(at), "Time of the strike", "s", nameof(at)) };

    /// <summary>The obstacle at the PTO's speed, behind a speed ratio.</summary>
    internal Obstacle AtPto(double ratio)
    {
        Duration start = Duration.FromSeconds(StartS);
        RotationalStiffness stiffness = RotationalStiffness.FromNewtonMetersPerRadian(StiffnessNmPerRad * ratio * ratio);
        bool staysStopped = SwingRad == 0 && !(At is Part { StoresEnergy: true } && Place != StrikePlace.Driveline);
        Obstacle obstacle = IsRigid ? (staysStopped ? Obstacle.Jam(start) : Obstacle.RigidStop(start))
            : double.IsPositiveInfinity(YieldNm) ? Obstacle.SpringDamper(start, stiffness, DampingNms * ratio * ratio)
            : Obstacle.Yielding(start, stiffness, Torque.FromNewtonMeters(YieldNm * ratio));
        return SwingRad > 0 ? obstacle.AfterSwingBack(Angle.FromRadians(SwingRad / ratio), Torque.FromNewtonMeters(SwingNm * ratio))
            : obstacle;
    }
}
