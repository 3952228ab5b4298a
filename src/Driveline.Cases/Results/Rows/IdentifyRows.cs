using Driveline.Fasteners;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>What a head mark may mean.</summary>
internal static class IdentifyRows
{
    private static readonly ShapeOf<StressBand> Tensile = new ShapeOf<StressBand>("tensile", "Tensile strength, MPa.")
        .Number("low", t => t.SiBand.Low * 1e-6, "Lowest.")
        .Number("high", t => t.SiBand.High * 1e-6, "Highest.")
        .Object("basis", t => t.WeakestBasis, BasisRows.Shape, "Where it comes from.");

    private static readonly ShapeOf<HeadMarkCandidate> Candidate = new ShapeOf<HeadMarkCandidate>("candidate", "A grade with that mark.")
        .Text("grade", c => c.Name, "The grade.")
        .Text("headMark", c => c.HeadMark, "Its mark.")
        .Maybe("tensileMPa", c => c.Tensile, Tensile, "Its tensile strength, MPa; null when it promises none.")
        .Object("basis", c => c.Basis, BasisRows.Shape, "Where the mark comes from.");

    public static readonly ShapeOf<HeadMarkIdentification> Shape = new ShapeOf<HeadMarkIdentification>(
            "identify", "What a head mark on a bolt of a size may mean.")
        .Text("mark", i => i.Mark.ToString(), "The mark.")
        .Text("thread", i => i.Thread.Designation, "The thread.")
        .List("candidates", i => i.Candidates, Candidate, "The grades with that mark.")
        .Words("advice", (i, texts, units) => string.Join(" ", i.Findings.Select(f => texts.Of(f, units))), "What to do, in words.")
        .List("findings", i => i.Findings, FindingRows.Shape, "Everything to notice, worst first.");
}
