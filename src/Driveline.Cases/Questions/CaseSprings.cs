using Driveline.Cases.Members;
using Driveline.Clutches;
using Driveline.Provenance;

namespace Driveline.Cases.Questions;

/// <summary>The springs of a clutch as a case states them; null while a measure that they need is not known.</summary>
internal static class CaseSprings
{
    private static readonly Basis Stated = Basis.Given("the case");

    public static SpringPack? Of(CaseObject? facts) =>
        facts?.Get(ClutchSpringsMembers.Coil) is { } coil ? Coils(coil) : facts?.Get(ClutchSpringsMembers.Disc) is { } disc ? Discs(disc)
            : null;

    private static CoilPack? Coils(CaseObject facts)
    {
        if (facts.Get(CoilSpringsMembers.Count) is not { } count || facts.Get(CoilSpringsMembers.FreeLength) is not { } free)
        {
            return null;
        }

        if (facts.Get(CoilSpringsMembers.Wire) is { } wire && facts.Get(CoilSpringsMembers.MeanDiameter) is { } diameter
            && facts.Get(CoilSpringsMembers.Coils) is { } coils)
        {
            CoilSpring wound = CoilSpring.OfWire(wire, diameter, coils, facts.Get(CoilSpringsMembers.Ends), free);
            wound = facts.Get(CoilSpringsMembers.SolidLength) is { } measured ? wound.WithSolidLength(measured) : wound;
            return CoilPack.Of(facts.Get(CoilSpringsMembers.Rate) is { } rate ? wound.WithMeasuredRate(rate, rate, rate) : wound, count);
        }

        return facts.Get(CoilSpringsMembers.Rate) is { } known && facts.Get(CoilSpringsMembers.SolidLength) is { } solid
            ? CoilPack.Of(CoilSpring.OfRate(known, free, solid, Stated), count)
            : null;
    }

    private static DiscPack? Discs(CaseObject facts) =>
        Disc(facts) is { } disc && facts.Get(DiscSpringsMembers.Parallel) is { } parallel && facts.Get(DiscSpringsMembers.Sets) is { } sets
            && facts.Get(DiscSpringsMembers.Stacks) is { } stacks
            ? DiscPack.Of(disc, parallel, sets, stacks)
            : null;

    private static DiscSpring? Disc(CaseObject facts)
    {
        if (facts.Get(DiscSpringsMembers.OuterDiameter) is not { } outer)
        {
            return null;
        }

        if (facts.Get(DiscSpringsMembers.Series) is { } series)
        {
            return Din2093.Find(series[0], outer).Spring;
        }

        if (facts.Get(DiscSpringsMembers.InnerDiameter) is not { } inner || facts.Get(DiscSpringsMembers.Thickness) is not { } thickness
            || facts.Get(DiscSpringsMembers.FreeHeight) is not { } height)
        {
            return null;
        }

        DiscSpring disc = DiscSpring.Of(outer, inner, thickness, height);
        return facts.Get(DiscSpringsMembers.ReducedThickness) is { } reduced ? disc.WithReducedThickness(reduced) : disc;
    }
}
