using Driveline.Cases.Members;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>How a cutter's deck stands, measured on level ground with the PTO off, the key out and everything at rest.</summary>
public sealed class DeckFacts : CaseFacts
{
    internal DeckFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static DeckFacts Empty { get; } = new(DeckMembers.Table.NoValues());

    /// <summary>Height of the blade tip that points forward. Permitted: [0 m; 1 m]. Null when not known.</summary>
    public Length? FrontTip => Si(DeckMembers.FrontTip) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="FrontTip"/>.</summary>
    public DeckFacts WithFrontTip(Length? value) => new(Set(DeckMembers.FrontTip, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Height of the blade tip that points rearward. Permitted: [0 m; 1 m]. Null when not known.</summary>
    public Length? RearTip => Si(DeckMembers.RearTip) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="RearTip"/>.</summary>
    public DeckFacts WithRearTip(Length? value) => new(Set(DeckMembers.RearTip, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Diameter of the circle the blade tips run on. Permitted: [0.3 m; 5 m]. Null when not known.</summary>
    public Length? BladeSpan => Si(DeckMembers.BladeSpan) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="BladeSpan"/>.</summary>
    public DeckFacts WithBladeSpan(Length? value) => new(Set(DeckMembers.BladeSpan, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Height of the deck at the lower hitch pins. Permitted: [0 m; 2 m]. Null when not known.</summary>
    public Length? HitchHeight => Si(DeckMembers.HitchHeight) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="HitchHeight"/>.</summary>
    public DeckFacts WithHitchHeight(Length? value) => new(Set(DeckMembers.HitchHeight, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Height of the deck at the tail wheel. Permitted: [0 m; 2 m]. Null when not known.</summary>
    public Length? TailHeight => Si(DeckMembers.TailHeight) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="TailHeight"/>.</summary>
    public DeckFacts WithTailHeight(Length? value) => new(Set(DeckMembers.TailHeight, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Distance along the deck from the lower hitch pins to the tail wheel. Permitted: (0 m; 10 m]. Null when not known.</summary>
    public Length? HitchToTail => Si(DeckMembers.HitchToTail) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="HitchToTail"/>.</summary>
    public DeckFacts WithHitchToTail(Length? value) => new(Set(DeckMembers.HitchToTail, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Distance along the deck from the lower hitch pins to the rotor's axis. Permitted: (0 m; 10 m]. Null when not known.</summary>
    public Length? HitchToRotor => Si(DeckMembers.HitchToRotor) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="HitchToRotor"/>.</summary>
    public DeckFacts WithHitchToRotor(Length? value) => new(Set(DeckMembers.HitchToRotor, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>How far the blades lie below the line through those two points. Permitted: [0 m; 2 m]. Null when not known.</summary>
    public Length? BladesBelow => Si(DeckMembers.BladesBelow) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="BladesBelow"/>.</summary>
    public DeckFacts WithBladesBelow(Length? value) => new(Set(DeckMembers.BladesBelow, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>How high bumps of the ground rise above the line its wheels follow. Permitted: [0 m; 1 m]. Null when not known.</summary>
    public LengthBand? Bumps => Reference<LengthBand>(DeckMembers.Bumps);

    /// <summary>The same with another <see cref="Bumps"/>.</summary>
    public DeckFacts WithBumps(LengthBand? value) => new(Set(DeckMembers.Bumps, value));

    /// <summary>How much lower than the rear tip the manual wants the front one; negative for a higher front. Permitted: [-300 mm; 300 mm]. Null when not known.</summary>
    public Length? ManualFrontBelowRear => Si(DeckMembers.ManualFrontBelowRear) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="ManualFrontBelowRear"/>.</summary>
    public DeckFacts WithManualFrontBelowRear(Length? value) => new(Set(DeckMembers.ManualFrontBelowRear, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>The implement's upper pin above its lower hitch pins. Permitted: [0.2 m; 1.5 m]. Null when not known.</summary>
    public Length? MastHeight => Si(DeckMembers.MastHeight) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="MastHeight"/>.</summary>
    public DeckFacts WithMastHeight(Length? value) => new(Set(DeckMembers.MastHeight, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Length of the top link between its pins now. Permitted: [0.2 m; 2 m]. Null when not known.</summary>
    public Length? TopLinkLength => Si(DeckMembers.TopLinkLength) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="TopLinkLength"/>.</summary>
    public DeckFacts WithTopLinkLength(Length? value) => new(Set(DeckMembers.TopLinkLength, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>The tractor's top-link pin above the lower hitch pins. Permitted: [-500 mm; 1.5 m]. Null when not known.</summary>
    public Length? TopLinkPinHeight => Si(DeckMembers.TopLinkPinHeight) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="TopLinkPinHeight"/>.</summary>
    public DeckFacts WithTopLinkPinHeight(Length? value) => new(Set(DeckMembers.TopLinkPinHeight, value is { } v ? Quantities.Si.Meters(v) : null));

    internal override MemberTable Table => DeckMembers.Table;
}
