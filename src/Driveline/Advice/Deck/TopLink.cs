using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>How a three-point hitch holds a deck: what change of the top link's length gives it another pitch.</summary>
/// <remarks>
/// The deck turns about the lower hitch pins while the lift arms hold them at their height. Side view, x rearward and z up from
/// the pins: upper pin at (m sin θ, m cos θ), the tractor's top-link pin at (−a, b); L² = (m sin θ + a)² + (m cos θ − b)².
/// a follows from the measured length L at the measured pitch. Lengthening the link raises the nose. Immutable.
/// </remarks>
internal sealed class TopLink
{
    private readonly double mastM;
    private readonly double lengthM;
    private readonly double anchorM;

    private TopLink(double mastM, double lengthM, double anchorM)
    {
        this.mastM = mastM;
        this.lengthM = lengthM;
        this.anchorM = anchorM;
    }

    /// <summary>A top link as it stands now.</summary>
    /// <param name="mastHeight">Upper pin above the lower hitch pins, across the mast of the implement; 0.2 to 1.5 m.</param>
    /// <param name="length">Length of the link between its pins now; 0.2 to 2 m.</param>
    /// <param name="anchorHeight">The tractor's top-link pin above the lower hitch pins; −0.5 to 1.5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static TopLink Of(Length mastHeight, Length length, Length anchorHeight) => new(
        Guard.Within(Si.Meters(mastHeight), 0.2, 1.5, "Mast height", "m", nameof(mastHeight)),
        Guard.Within(Si.Meters(length), 0.2, 2, "Length of the top link", "m", nameof(length)),
        Guard.Within(Si.Meters(anchorHeight), -0.5, 1.5, "Height of the tractor's top-link pin", "m", nameof(anchorHeight)));

    /// <summary>The change of length that brings a deck to another pitch; positive is longer.</summary>
    /// <param name="deck">The deck as it stands now with this link.</param>
    /// <param name="frontBelowRear">How much lower the front tip shall be than the rear one; negative for a higher front.</param>
    /// <example>Mast 0.50 m, link 0.60 m, pin 0.45 m high: from 30 mm nose-down over 1.5 m to level takes 9.97 mm.</example>
    /// <exception cref="ArgumentOutOfRangeException">The wanted difference exceeds the blade span.</exception>
    /// <exception cref="ArgumentException">The lengths cannot form a hitch at the measured pitch.</exception>
    public Length ChangeFor(DeckAttitude deck, Length frontBelowRear)
    {
        Guard.NotNull(deck, nameof(deck));
        double now = deck.PitchRad;
        double wanted = deck.PitchForRad(frontBelowRear);
        if (SpanProblem(deck) is { } problem)
        {
            throw new ArgumentException(problem, nameof(deck));
        }

        return Length.FromMeters(Change(mastM, anchorM, lengthM, now, wanted));
    }

    /// <summary>Why the link cannot reach from the tractor to a deck as it stands; null when it can.</summary>
    internal string? SpanProblem(DeckAttitude deck)
    {
        double rise = (mastM * Math.Cos(deck.PitchRad)) - anchorM;
        double run2 = (lengthM * lengthM) - (rise * rise);
        return run2 > 0 ? null
            : FormattableString.Invariant(
                $"A top link of {lengthM:G4} m cannot span a height difference of {Math.Abs(rise):G4} m; measure both again.");
    }

    internal static double Change(double mastM, double anchorM, double lengthM, double nowRad, double wantedRad)
    {
        var steps = default(NoSteps);
        return Change(mastM, anchorM, lengthM, nowRad, wantedRad, ref steps);
    }

    internal static double Change<S>(double mastM, double anchorM, double lengthM, double nowRad, double wantedRad, ref S log)
        where S : struct, ISteps
    {
        double rise = (mastM * Math.Cos(nowRad)) - anchorM;
        double a = Math.Sqrt((lengthM * lengthM) - (rise * rise)) - (mastM * Math.Sin(nowRad));
        log.Add(DeckSteps.AnchorAhead, a);
        double x = (mastM * Math.Sin(wantedRad)) + a;
        double z = (mastM * Math.Cos(wantedRad)) - anchorM;
        double change = Math.Sqrt((x * x) + (z * z)) - lengthM;
        log.Add(DeckSteps.LinkChange, change);
        return change;
    }
}
