using Driveline.Chains;
using Driveline.Quantities;
using Driveline.Torsion;

namespace Driveline.Loads;

/// <summary>What a strike puts against an element of the driveline, at that element's own speed. Immutable.</summary>
/// <remarks>
/// A blade may turn back from what stopped it; a place before the rotor that stops dead stays stopped both ways. A blow on the deck
/// passes the driveline by; one on the pan mostly does, and is simulated as if the pan wedged. Referred to the PTO behind a speed
/// ratio i: torque T · i, stiffness k · i², angle θ / i.
/// </remarks>
public sealed class SimulatedStrike
{
    /// <summary>Angle after which what gives way is through in an expected run when nobody stated it: 180 mm at 0.9 m.</summary>
    internal const double ThroughRad = 0.2;

    private SimulatedStrike(Element at, StrikePlace place, Obstacle? obstacle)
    {
        At = Guard.NotNull(at, nameof(at));
        Place = place;
        Obstacle = obstacle;
    }

    /// <summary>The element that is stopped.</summary>
    public Element At { get; }

    /// <summary>What was hit.</summary>
    public StrikePlace Place { get; }

    /// <summary>What it meets, at its own speed; null for a blow that passes the driveline by.</summary>
    public Obstacle? Obstacle { get; }

    /// <summary>True when nothing gives way.</summary>
    public bool IsRigid => Obstacle is { IsRigid: true };

    /// <summary>True when the blow goes into the deck and passes the driveline by.</summary>
    public bool MissesDriveline => Obstacle is null;

    /// <summary>False for what gives way when nobody stated its end: an expected run ends it, a severe one never.</summary>
    public bool IsEndKnown => Obstacle is not { IsEndless: true };

    internal double StartS => Obstacle?.Start ?? 0;

    /// <summary>An obstacle in the way of an element.</summary>
    /// <param name="at">The element that is stopped.</param>
    /// <param name="place">What was hit; not the deck.</param>
    /// <param name="obstacle">What it meets, at the element's own speed; its time counts from the start of the run.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is the deck.</exception>
    public static SimulatedStrike By(Element at, StrikePlace place, Obstacle obstacle) => place != StrikePlace.Deck
        ? new SimulatedStrike(at, place, Guard.NotNull(obstacle, nameof(obstacle)))
        : throw new ArgumentOutOfRangeException(nameof(place), "A blow on the deck puts no obstacle in the way of the driveline.");

    /// <summary>A blow on the deck, which passes the driveline by.</summary>
    public static SimulatedStrike Beside(Element at) => new(at, StrikePlace.Deck, null);

    /// <summary>The obstacle at the PTO's speed, behind a speed ratio, in a mild, expected or severe run.</summary>
    internal Obstacle AtPto(double ratio, BandPoint severity)
    {
        bool staysStopped = !(At is Part { StoresEnergy: true } && Place != StrikePlace.Driveline);
        Obstacle referred = (staysStopped ? Obstacle!.Holding() : Obstacle!).Referred(ratio);
        return severity == BandPoint.High ? referred : referred.Ending(ThroughRad / ratio);
    }
}
