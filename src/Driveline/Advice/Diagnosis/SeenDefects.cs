using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>What the owner's answers show of defects that forbid work.</summary>
internal static class SeenDefects
{
    /// <summary>The defects that the symptom and the answers show, most urgent first.</summary>
    /// <param name="symptom">What the owner complains of.</param>
    /// <param name="facts">The answers; what is not answered shows nothing.</param>
    public static IReadOnlyList<SeenDefect> Of(Symptom symptom, IEnumerable<Fact> facts) =>
        [.. Told(symptom, facts).Select(t => t.Defect).Distinct().OrderBy(d => d)];

    /// <summary>The same, each with the path in a complaint that shows it.</summary>
    public static IEnumerable<(SeenDefect Defect, string Path)> Told(Symptom symptom, IEnumerable<Fact> facts)
    {
        if (symptom == Symptom.ClutchSmokes)
        {
            yield return (SeenDefect.ClutchSmokes, "complaint.symptom");
        }

        foreach (Fact fact in Guard.NotNull(facts, nameof(facts)))
        {
            if (Shown(fact) is { } defect)
            {
                yield return (defect, "complaint." + fact.Question);
            }
        }
    }

    /// <summary>What the state of a hub shows; null when it forbids nothing by itself.</summary>
    /// <param name="hub">Whether it turns with the bolt out.</param>
    /// <param name="isDragMeasured">True when the torque that turns a stiff one is known, and counts with the bolt's.</param>
    public static SeenDefect? OfHub(HubState hub, bool isDragMeasured) => hub switch
    {
        HubState.Seized => SeenDefect.HubSeized,
        HubState.Stiff when !isDragMeasured => SeenDefect.HubStiff,
        _ => null,
    };

    /// <summary>True when springs as set, less the wear of the linings since, are expected to be solid.</summary>
    public static bool IsSolid(LengthBand set, LengthBand? wear, Length solid)
    {
        double expected = Guard.NotNull(set, nameof(set)).SiBand.Expected;
        return expected < Si.Meters(solid) || expected + (wear?.SiBand.Expected ?? 0) <= Si.Meters(solid);
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
