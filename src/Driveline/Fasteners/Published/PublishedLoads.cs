using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Printed proof and tensile loads, by grade and thread.</summary>
internal static class PublishedLoads
{
    private static readonly Dictionary<string, PublishedLoad> Inch = Index(PublishedLoadsInch.All);

    private static readonly Dictionary<string, PublishedLoad> Metric = Index(PublishedLoadsMetric.All);

    public static Sourced? Tensile(BoltGrade grade, ScrewThread thread) => Find(grade, thread) is { } load
        ? new Sourced(load.Tensile, UnitOf(thread), load.TensileBasis)
        : null;

    public static Sourced? Proof(BoltGrade grade, ScrewThread thread) => Find(grade, thread) is { } load
        ? new Sourced(load.Proof, UnitOf(thread), load.ProofBasis)
        : null;

    private static PublishedLoad? Find(BoltGrade grade, ScrewThread thread) =>
        (thread.System == ThreadSystem.Inch ? Inch : Metric)
            .TryGetValue(Key(grade.Designation, thread.Designation), out PublishedLoad? load) ? load : null;

    private static string UnitOf(ScrewThread thread) =>
        thread.System == ThreadSystem.Inch ? PublishedLoadsInch.Unit : PublishedLoadsMetric.Unit;

    private static Dictionary<string, PublishedLoad> Index(PublishedLoad[] loads) =>
        loads.ToDictionary(l => Key(l.Grade, l.Thread), StringComparer.Ordinal);

    private static string Key(string grade, string thread) => grade + "|" + thread;
}
