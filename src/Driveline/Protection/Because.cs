using Driveline.Chains;

namespace Driveline.Protection;

/// <summary>Paths of the facts on which a finding of the whole driveline rests; a case file uses the same names.</summary>
internal static class Because
{
    public const string Work = "work";
    public const string TripsInNormalWork = "work.tripsInNormalWork";
    public const string PtoClutch = "tractor.ptoClutch";
    public const string Engagement = "work.engagement";
    public const string PartsComplete = "partsComplete";
    public const string Machine = "implement.kind";
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
