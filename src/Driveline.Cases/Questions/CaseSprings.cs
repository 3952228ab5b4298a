using Driveline.Clutches;
using Driveline.Provenance;

namespace Driveline.Cases.Questions;

/// <summary>The springs of a clutch as a case states them; null while a measure that they need is not known.</summary>
internal static class CaseSprings
{
    private static readonly Basis Stated = Basis.Given("the case");

    public static SpringPack? Of(ClutchSpringsFacts? facts) =>
        facts?.Coil is { } coil ? Coils(coil) : facts?.Disc is { } disc ? Discs(disc) : null;

    private static CoilPack? Coils(CoilSpringsFacts facts)
    {
        if (facts.Count is not { } count || facts.FreeLength is not { } free)
        {
            return null;
        }

        if (facts.Wire is { } wire && facts.MeanDiameter is { } diameter && facts.Coils is { } coils)
        {
            CoilSpring wound = CoilSpring.OfWire(wire, diameter, coils, facts.Ends, free);
            wound = facts.SolidLength is { } measured ? wound.WithSolidLength(measured) : wound;
            return CoilPack.Of(facts.Rate is { } rate ? wound.WithMeasuredRate(rate, rate, rate) : wound, count);
        }

        return facts.Rate is { } known && facts.SolidLength is { } solid
            ? CoilPack.Of(CoilSpring.OfRate(known, free, solid, Stated), count)
            : null;
    }

    private static DiscPack? Discs(DiscSpringsFacts facts) =>
        Disc(facts) is { } disc && facts.Parallel is { } parallel && facts.Sets is { } sets && facts.Stacks is { } stacks
            ? DiscPack.Of(disc, parallel, sets, stacks)
            : null;

    private static DiscSpring? Disc(DiscSpringsFacts facts)
    {
        if (facts.OuterDiameter is not { } outer)
        {
            return null;
        }

        if (Members.ClutchTexts.Series(facts.Series) is { } series)
        {
            return Din2093.Find(series, outer).Spring;
        }

        if (facts.InnerDiameter is not { } inner || facts.Thickness is not { } thickness || facts.FreeHeight is not { } height)
        {
            return null;
        }

        DiscSpring disc = DiscSpring.Of(outer, inner, thickness, height);
        return facts.ReducedThickness is { } reduced ? disc.WithReducedThickness(reduced) : disc;
    }
}
