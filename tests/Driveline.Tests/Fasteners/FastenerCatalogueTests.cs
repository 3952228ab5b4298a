using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

/// <summary>Walks the catalogues: everything has a basis, and what rests on memory is counted, so that a rise shows in the diff.</summary>
public sealed class FastenerCatalogueTests
{
    [Theory]
    [InlineData("inch threads: stress areas", 0, "all seen")]
    [InlineData("metric threads: printed stress areas", 15, "fine pitches")]
    [InlineData("body diameters", 10, "ISO 4014 above M10")]
    [InlineData("grade rows: minimum strengths", 0, "all seen")]
    [InlineData("grade rows: expected strengths", 3, "HRB conversions not seen: A307 A, A307 B, A449 over 1-1/2 in")]
    [InlineData("grade rows: maximum strengths", 3, "A325 hardness, A574 at HRC 45 (two rows)")]
    [InlineData("hardness table lines", 55, "ASTM A370: 24 HRC and 30 HRB lines, HRC 45")]
    [InlineData("printed tensile loads", 167, "127 fine-pitch metric, 40 inch")]
    [InlineData("printed proof loads", 199, "127 fine-pitch and 32 coarse metric above M27, 40 inch")]
    [InlineData("rod materials", 1, "6061-T6")]
    [InlineData("spring pins", 39, "11 large ISO 8752, 14 ISO 8750, 14 ISO 13337")]
    public void Catalogue_NumbersFromMemory_AreExactlyAsCounted(string catalogue, int fromMemory, string which)
    {
        Basis[] bases = [.. BasesOf(catalogue)];
        Assert.NotEmpty(bases);
        int found = bases.Count(b => b.Kind == BasisKind.FromMemory);
        Assert.True(found == fromMemory,
            FormattableString.Invariant($"{catalogue}: {found} numbers rest on memory; expected {fromMemory}: {which}."));
    }

    private static IEnumerable<Basis> BasesOf(string catalogue) => catalogue switch
    {
        "inch threads: stress areas" => UnifiedThread.All.Select(t => t.AreaBasis),
        "metric threads: printed stress areas" => MetricThread.All.Select(t => t.PublishedStressArea!.Basis),
        "body diameters" => UnifiedThread.All.Cast<ScrewThread>().Concat(MetricThread.All.Where(t => t.Series == ThreadSeries.MetricCoarse))
            .Select(t => t.BodyDiameter?.WeakestBasis).OfType<Basis>(),
        "grade rows: minimum strengths" => Rows.Select(r => r.Strength.Tensile.Basis.Low),
        "grade rows: expected strengths" => Rows.Select(r => r.Strength.Tensile.Basis.Expected),
        "grade rows: maximum strengths" => Rows.Select(r => r.Strength.Tensile.Basis.High),
        "hardness table lines" => HardnessTables.All.SelectMany(t => t.Rows).Select(r => r.Basis),
        "printed tensile loads" => Loads.Select(l => l.TensileBasis),
        "printed proof loads" => Loads.Select(l => l.ProofBasis),
        "rod materials" => RodMaterials.All.Select(m => m.PublishedTensile.Basis),
        "spring pins" => SpringPin.All.Select(p => p.PublishedLoad.Basis),
        _ => throw new ArgumentOutOfRangeException(nameof(catalogue)),
    };

    private static IEnumerable<GradeRange> Rows => BoltGrades.All.SelectMany(g => g.Ranges);

    private static IEnumerable<PublishedLoad> Loads => PublishedLoadsInch.All.Concat(PublishedLoadsMetric.All);
}
