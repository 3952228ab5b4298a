using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>A deck as measured, against what its manual asks for and over the ground it cuts, with what mends it.</summary>
/// <remarks>The manual's figure decides; without it "about level" is taken, which is practice and no more. Immutable.</remarks>
public sealed class DeckReading
{
    private IReadOnlyList<Finding>? findings;

    private DeckReading(DeckAttitude attitude) => Attitude = attitude;

    private DeckReading(DeckReading other)
        : this(other.Attitude)
    {
        Bumps = other.Bumps;
        Manual = other.Manual;
        Link = other.Link;
        HitchToTail = other.HitchToTail;
    }

    /// <summary>How the deck stands.</summary>
    internal DeckAttitude Attitude { get; }

    /// <summary>How high bumps rise above the line the wheels follow; null when not known.</summary>
    internal LengthBand? Bumps { get; private init; }

    /// <summary>How much lower the manual wants the front tip than the rear one; null when not known.</summary>
    internal Length? Manual { get; private init; }

    /// <summary>The top link as it stands; null when not measured.</summary>
    internal TopLink? Link { get; private init; }

    /// <summary>Distance from the hitch pins to the tail wheel; null when not known.</summary>
    internal Length? HitchToTail { get; private init; }

    /// <summary>Do the blades reach into the ground? Not known without the bumps.</summary>
    public Answer ReachesGround => Bumps is null ? Answer.NotKnown : Attitude.ReachesGround(Bumps);

    /// <summary>How far the pitch lies above the wanted one; negative is nose-down.</summary>
    internal Angle AboveWanted => Angle.FromRadians(AboveWantedRad);

    /// <summary>
    /// The change of the top link's length that mends the pitch, positive is longer; null when the link is not measured or nothing wants
    /// mending.
    /// </summary>
    public Length? TopLinkChange => Link is null || IsAboutRight ? null : Link.ChangeFor(Attitude, Manual ?? Length.Zero);

    /// <summary>
    /// How far the tail-wheel point sinks when the pitch is mended; null when the distance is not known or nothing wants mending.
    /// </summary>
    public Length? TailWheelDrop => HitchToTail is not { } distance || IsAboutRight ? null
        : Attitude.TailWheelDropFor(Manual ?? Length.Zero, distance);

    /// <summary>What a caller must notice, and what mends it.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= [.. DeckFindings.OfReading(this)];

    /// <summary>The change of the top link that it asks for, mm.</summary>
    public override string ToString() => TopLinkChange is { } change
        ? FormattableString.Invariant($"top link {change.Millimeters:+0.#;-0.#;0} mm")
        : "no change read";

    /// <summary>The fact the advice reasons with: noseDown, level or noseUp.</summary>
    internal Fact AttitudeFact => IsAboutRight ? OwnerFacts.DeckAttitude.Level
        : AboveWantedRad < 0 ? OwnerFacts.DeckAttitude.NoseDown
        : OwnerFacts.DeckAttitude.NoseUp;

    /// <summary>The fact of the cutting height, by the lower blade tip.</summary>
    internal Fact HeightFact =>
        Attitude.LowestM < 0.075 ? OwnerFacts.CuttingHeight.Under75mm
        : Attitude.LowestM <= 0.150 ? OwnerFacts.CuttingHeight.From75to150mm
        : OwnerFacts.CuttingHeight.Over150mm;

    internal double AboveWantedRad => Attitude.PitchRad - Attitude.PitchForRad(Manual ?? Length.Zero);

    internal bool IsAboutRight => Math.Abs(AboveWantedRad) <= DeckPractice.AboutLevel.Value * Si.Degree;

    /// <summary>A deck of which the attitude alone is known.</summary>
    internal static DeckReading Of(DeckAttitude attitude) => new(Guard.NotNull(attitude, nameof(attitude)));

    /// <summary>The same deck over ground of a roughness.</summary>
    internal DeckReading WithBumps(LengthBand bumps) => new(this) { Bumps = Guard.NotNull(bumps, nameof(bumps)) };

    /// <summary>The same deck with what the manual asks for.</summary>
    /// <param name="frontBelowRear">How much lower the front tip shall be than the rear one; negative for a higher front.</param>
    /// <exception cref="ArgumentOutOfRangeException">The difference exceeds the blade span.</exception>
    internal DeckReading WithManual(Length frontBelowRear)
    {
        Attitude.PitchForRad(frontBelowRear);
        return new DeckReading(this) { Manual = frontBelowRear };
    }

    /// <summary>The same deck with its top link.</summary>
    /// <exception cref="ArgumentException">The lengths cannot form a hitch at the measured pitch.</exception>
    internal DeckReading WithTopLink(TopLink link)
    {
        Guard.NotNull(link, nameof(link)).ChangeFor(Attitude, Manual ?? Length.Zero);
        return new DeckReading(this) { Link = link };
    }

    /// <summary>The same deck with the distance from the lower hitch pins to the tail wheel.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not above 0.</exception>
    internal DeckReading WithHitchToTail(Length distance)
    {
        Guard.Positive(Si.Meters(distance), "Distance from hitch to tail wheel", "m", nameof(distance));
        return new DeckReading(this) { HitchToTail = distance };
    }
}
