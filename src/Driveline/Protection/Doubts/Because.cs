using Driveline.Chains;

namespace Driveline.Protection;

/// <summary>Paths of the facts of parts and devices on which a doubt rests; a case file uses the same names.</summary>
internal static class Because
{
    public const string Driveline = "driveline";

    private static readonly string[] Limits = ["damagedAt", "yieldStrength", "material", "ratedTorque", "overloadFactor"];
    private static readonly string[] StubLimits = ["stubDamagedAt", "stubYieldStrength", "ptoType"];

    /// <summary>What the limit of a part is told by.</summary>
    public static string[] LimitOf(Part part) => At(part, part.Kind == PartKind.PtoStub ? StubLimits : Limits);

    /// <summary>What a part lacks whose limit is not known.</summary>
    public static string[] NoLimitOf(Part part) => At(part, part.Kind == PartKind.PtoStub ? StubLimits[0] : Limits[0]);

    /// <summary>The efficiencies that nobody has stated.</summary>
    public static string[] Efficiencies(DrivelineChain chain) => [.. chain.Parts
        .Where(p => p.Kind == PartKind.Gearbox && p.Efficiency is null).SelectMany(p => At(p, "efficiency"))];

    /// <summary>The facts of an element, by their names; the element as a whole when none is named.</summary>
    public static string[] At(Element? element, params string[] facts) => element?.Place is { } place ? place.Of(facts) : [];
}
