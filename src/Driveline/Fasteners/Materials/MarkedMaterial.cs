using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Judges what is stated of a bolt's material against the marks on its head.</summary>
/// <remarks>
/// Agreeing marks change nothing. Without a stated material the marks leave all they may mean: the lowest low, the highest high, unbounded
/// when one of them is. Marks that mean something else leave both, and the bolt not identified: neither the box nor the head is believed.
/// </remarks>
internal static class MarkedMaterial
{
    public static FastenerMaterial Of(HeadMark mark, ScrewThread thread)
    {
        IReadOnlyList<HeadMarkCandidate> candidates = HeadMarks.Identify(mark, thread).Candidates;
        if (mark.IsNone)
        {
            return thread.System == ThreadSystem.Inch ? FastenerMaterial.UnmarkedInchBolt : FastenerMaterial.UnmarkedMetricBolt;
        }

        if (candidates.Count == 0 || candidates.Any(c => c.Tensile is null))
        {
            return FastenerMaterial.NotKnown;
        }

        BoltGrade? grade = candidates.Count == 1 ? candidates[0].Grade : null;
        StressBand all = Union(candidates.Select(c => c.Tensile!), candidates.Select(c => c.Basis));
        return FastenerMaterial.OfMarks(
            grade?.Designation ?? mark.ToString(),
            Common(candidates.Select(c => c.Grade?.Family ?? MaterialFamily.NotKnown), MaterialFamily.NotKnown),
            Common(candidates.Select(c => c.Grade?.ShearClass ?? ShearClass.NotKnown), ShearClass.NotKnown),
            all,
            grade,
            null);
    }

    public static FastenerMaterial Judge(FastenerMaterial stated, HeadMark mark, ScrewThread thread)
    {
        if (stated.MarkConflict is not null)
        {
            return stated;
        }

        bool saysNothing = stated.Tensile is null && !stated.IsIdentified;
        if (saysNothing || Agrees(stated, mark, thread))
        {
            return saysNothing ? Of(mark, thread) : stated;
        }

        IReadOnlyList<HeadMarkCandidate> candidates = HeadMarks.Identify(mark, thread).Candidates;
        bool anyUnknown = candidates.Count == 0 || stated.Tensile is null || candidates.Any(c => c.Tensile is null);
        StressBand? both = anyUnknown ? null
            : Union([stated.Tensile!, .. candidates.Select(c => c.Tensile!)], candidates.Select(c => c.Basis));
        return FastenerMaterial.OfMarks(
            stated.Name, MaterialFamily.NotKnown, ShearClass.NotKnown, both, null, new HeadMarkConflict(stated.Name, mark, candidates));
    }

    private static bool Agrees(FastenerMaterial stated, HeadMark mark, ScrewThread thread)
    {
        IReadOnlyList<HeadMarkCandidate> candidates = HeadMarks.Identify(mark, thread).Candidates;
        if (stated.Grade is { } grade)
        {
            return candidates.Any(c => grade.Equals(c.Grade))
                || (mark.IsNone && grade.HeadMark.StartsWith("no ", StringComparison.Ordinal));
        }

        if (!stated.IsIdentified)
        {
            return mark.IsNone;
        }

        // A rod has no mark of its own; a measured hardness agrees with every mark whose strength it may be, and with one nobody knows.
        return stated.RodMaterial is { } rod
            ? mark.IsNone || candidates.Any(c => c.Name == rod.Designation)
            : candidates.Count == 0 || candidates.Any(c => c.Tensile is not { } tensile || Overlap(tensile.SiBand, stated.Tensile!.SiBand));
    }

    private static bool Overlap(Band a, Band b) => a.Low <= b.High && b.Low <= a.High;

    /// <summary>The lowest low, the expected value of the first, which is the likeliest, and the highest high.</summary>
    private static StressBand Union(IEnumerable<StressBand> bands, IEnumerable<Basis> marks)
    {
        StressBand[] all = [.. bands];
        double high = all.Max(b => b.SiBand.High);
        Basis mark = Basis.Weakest(marks);
        BandBasis basis = all.Select(b => b.Basis).Aggregate(BandBasis.Combine).With(mark);
        return StressBand.OfSi(new Band(all.Min(b => b.SiBand.Low), Math.Min(all[0].SiBand.Expected, high), high), basis);
    }

    private static T Common<T>(IEnumerable<T> values, T otherwise)
    {
        T[] different = [.. values.Distinct()];
        return different.Length == 1 ? different[0] : otherwise;
    }
}
