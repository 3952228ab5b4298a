using Driveline.Fasteners;
using static Driveline.Tests.Provenance.DataPage;
using static Driveline.Tests.Provenance.DataRow;

namespace Driveline.Tests.Provenance;

/// <summary>Threads, grades, hardness, head marks, printed loads.</summary>
internal static class FastenerPages
{
    private static readonly ScrewThread[] Threads = [.. UnifiedThread.All, .. MetricThread.All];

    public static DataPage OfThreads() => DataPage.Of(
            "Threads",
            "Stress areas, thicknesses of the plain shank and clearance holes by thread. The area in use is the printed one; of fine "
                + "metric threads it is that of the formula, and the printed one stands beside it.")
        .Table("Inch threads", string.Empty, "thread | diameter, in | threads an inch | stress area, in²", UnifiedThread.All.Select(t =>
            DataRow.Of(t.AreaBasis, t.Designation, Number(t.DiameterInch), Number(t.ThreadsPerInch), Number(t.PublishedStressArea!.Value))))
        .Table(
            "Metric threads", string.Empty, "thread | pitch, mm | printed stress area, mm² | area in use, mm²",
            MetricThread.All.Select(t => DataRow.Of(
                [("printed", t.PublishedStressArea!.Basis), ("in use", t.AreaBasis)],
                t.Designation, Number(t.PitchMm), Number(t.PublishedStressArea!.Value), Number(t.StressAreaM2 * 1e6))))
        .Table(
            "Shanks", "Least and greatest diameter of the unthreaded shank, low / expected / high.", "thread | kind of bolt | diameter, mm",
            from style in Enum.GetValues<BodyStyle>()
            from thread in Threads
            where !thread.IsSeriesAssumed && thread.BodyDiameterOf(style) is not null
            select DataRow.Of(
                thread.BodyDiameterOf(style)!.Basis, thread.Designation, style.ToString(), Band(thread.BodyDiameterOf(style), 1e-3)))
        .Table("Clearance holes", string.Empty, "thread | normal, mm | loose, mm", Threads.Select(t => DataRow.Of(
            [("normal", ClearanceHoles.NormalBasis(t)), ("loose", ClearanceHoles.LooseBasis(t))],
            t.Designation, Number(ClearanceHoles.NormalM(t) * 1e3), Number(ClearanceHoles.LooseM(t) * 1e3))));

    public static DataPage OfGrades() => DataPage.Of(
            "Bolt grades",
            "What the standards print, in their own units, and the tensile strength of real bolts that follows: low is the printed "
                + "minimum, high the printed maximum or the strength at the greatest hardness permitted, expected the middle of the "
                + "hardness. *Unbounded* means that nothing assures a maximum.")
        .Table(
            "Grades", string.Empty,
            "grade | sizes | head mark | least tensile | proof | yield | hardness | tensile strength, MPa: low / expected / high",
            from grade in BoltGrades.All
            from row in grade.Ranges
            select DataRow.Of(
                [("printed", row.Basis), ("expected", row.Strength.Tensile.Basis.Expected), ("high", row.Strength.Tensile.Basis.High)],
                grade.Designation, row.Sizes.Text, grade.HeadMark, Printed(row.Strength.MinimumTensile),
                Printed(row.Strength.PublishedProofStress), Printed(row.Strength.PublishedYieldStrength),
                row.Strength.CoreHardness?.ToString() ?? string.Empty, Band(row.Strength.Tensile, 1e6)))
        .Table(
            "Where sources disagree", "The reading in use, and the one that is not.", "grade | number | in use | elsewhere",
            from grade in BoltGrades.All
            from c in grade.Conflicts
            select DataRow.Of(
                [("in use", c.Used.Basis), ("elsewhere", c.Other.Basis)], grade.Designation, c.Subject, Printed(c.Used), Printed(c.Other)));

    public static DataPage OfHardness()
    {
        DataPage page = DataPage.Of(
            "Hardness to tensile strength",
            "The conversion tables as printed. Between two lines the strength is interpolated. DIN 50150 is preferred for HV and HBW, "
                + "ASTM A370 for HRB, the Brinell-based table for HRC where it reaches.");
        foreach (HardnessTable table in HardnessTables.All)
        {
            page.Table(table.Name, string.Empty, "HV | HB | HRB | HRC | tensile strength, " + table.Unit, table.Rows.Select(r => DataRow.Of(
                r.Basis,
                Number(r.On(HardnessScale.Vickers)), Number(r.On(HardnessScale.Brinell)), Number(r.On(HardnessScale.RockwellB)),
                Number(r.On(HardnessScale.RockwellC)), Number(r.Tensile))));
        }

        return page;
    }

    public static DataPage OfHeadMarks() => DataPage.Of(
            "Head marks", "What a mark may stand for, likeliest first. A mark narrows a grade down and never proves it.")
        .Table("Radial lines on inch bolts", "Whatever their spacing.", "lines | may be | with the mark", Lines())
        .Table("Letters and numbers", string.Empty, "on the head | may be", HeadMarkData.Texts.Select(
            r => DataRow.Of(r.Basis, r.Text, r.Grade.Designation)))
        .Table(
            "No mark", string.Empty, "bolt | may be",
            HeadMarkData.UnmarkedInch.Select(r => DataRow.Of(r.Basis, "inch", r.Grade.Designation))
                .Concat(HeadMarkData.UnmarkedMetric.Select(r => DataRow.Of(r.Basis, "metric", r.Grade.Designation))));

    public static DataPage OfPrintedLoads() => DataPage.Of(
            "Printed loads of bolts", "Tensile and proof loads as the standards print them. No answer uses them: they check the strengths.")
        .Table("Inch bolts", "In lbf.", "grade | thread | tensile load | proof load", PublishedLoadsInch.All.Select(Load))
        .Table("Metric bolts", "In N.", "class | thread | tensile load | proof load", PublishedLoadsMetric.All.Select(Load));

    private static IEnumerable<DataRow> Lines() =>
        from lines in new[] { 3, 5, 6 }
        from candidate in HeadMark.RadialLines(lines).Identify(ScrewThread.Parse("1/2-13 UNC")).Candidates
        select DataRow.Of(candidate.Basis, Number(lines), candidate.Name, candidate.HeadMark);

    private static DataRow Load(PublishedLoad load) => DataRow.Of(
        [("tensile", load.TensileBasis), ("proof", load.ProofBasis)], load.Grade, load.Thread, Number(load.Tensile), Number(load.Proof));
}
