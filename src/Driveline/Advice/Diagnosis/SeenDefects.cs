using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What the owner's answers show of defects that forbid work.</summary>
internal static class SeenDefects
{
    /// <summary>The defects that the symptom and the answers show, most urgent first.</summary>
    /// <param name="symptom">What the owner complains of.</param>
    /// <param name="facts">The answers; what is not answered shows nothing.</param>
    public static IReadOnlyList<SeenDefect> Of(Symptom symptom, IEnumerable<Fact> facts)
    {
        IEnumerable<SeenDefect?> smoke = symptom == Symptom.ClutchSmokes ? [SeenDefect.ClutchSmokes] : [];
        IEnumerable<SeenDefect?> told = Guard.NotNull(facts, nameof(facts)).Select(Shown);
        return [.. smoke.Concat(told).OfType<SeenDefect>().Distinct().OrderBy(d => d)];
    }

    /// <summary>
    /// True when the answers say that tube and gearbox show no damage and, on a machine that may have blades, that these are even.
    /// </summary>
    /// <param name="facts">The answers.</param>
    /// <param name="machine">The kind of machine.</param>
    public static bool AreRuledOut(IEnumerable<Fact> facts, MachineKind machine)
    {
        HashSet<Fact> said = [.. Guard.NotNull(facts, nameof(facts))];
        return said.Contains(OwnerFacts.DamageSeen.Nothing) && (HasNoBlades(machine) || said.Contains(OwnerFacts.BladeCondition.Even));
    }

    private static bool HasNoBlades(MachineKind machine) =>
        machine is MachineKind.PostHoleAuger or MachineKind.SnowBlower or MachineKind.Spreader or MachineKind.AugerWagon;

    private static SeenDefect? Shown(Fact fact) => (fact.Question + "." + fact.Answer) switch
    {
        "device.none" => SeenDefect.NoDevice,
        "hubTurns.notAtAll" => SeenDefect.HubSeized,
        "hubTurns.stiffly" => SeenDefect.HubStiff,
        "slipTest.doesNotSlip" or "facings.rusted" => SeenDefect.ClutchStuck,
        "springLength.coilsTouch" => SeenDefect.ClutchSolid,
        "damageSeen.tubeTwisted" => SeenDefect.TubeTwisted,
        "damageSeen.gearboxBroken" => SeenDefect.GearboxBroken,
        "bladeCondition.bentOrUnequal" => SeenDefect.BladesBent,
        _ => null,
    };
}
