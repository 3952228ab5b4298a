using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>
/// The next grades in the same hole. A stronger bolt is shown with its price, never without the sentence that it changes the machine.
/// </summary>
internal static class GradeSentences
{
    public static void Add(ProtectionVerdict verdict, Phrase phrase, List<ReportBlock> blocks)
    {
        IReadOnlyList<NeighbourGrade> neighbours = verdict.NeighbourGrades;
        if (neighbours.Count == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.grades")));
        var rows = new List<string[]>
        {
            new[] { phrase.Of("report.grades.grade"), phrase.Of("report.guards"), phrase.Of("report.quiet"),
                phrase.Of("report.grades.guardMargin"), phrase.Of("report.grades.workMargin") },
            Row(phrase.Of("report.grades.fitted"), verdict, phrase),
        };
        rows.AddRange(neighbours.Select(n => Row(n.Grade + " (" + phrase.Of(Mark(n)) + ")", n.Verdict, phrase)));
        blocks.Add(ReportBlock.Table(rows));
        blocks.Add(ReportBlock.Bullets(neighbours.Select(n => Comparison(n, phrase))));
        AddFlags(neighbours, phrase, blocks);
    }

    /// <summary>
    /// The comparison alone, for an answer that shows no table. A bolt stronger than the manual's is left out where the machine is not
    /// protected as it is.
    /// </summary>
    public static void AddComparison(ProtectionVerdict verdict, Phrase phrase, List<ReportBlock> blocks)
    {
        NeighbourGrade[] neighbours =
            [.. verdict.NeighbourGrades.Where(n => verdict.Guards == Answer.Yes || n.IsSpecified || !n.IsStronger)];
        if (neighbours.Length == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.grades")));
        blocks.Add(ReportBlock.Bullets(neighbours.Select(n => Comparison(n, phrase))));
        if (neighbours.Any(n => n.IsStronger))
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("report.grades.change") + " " + phrase.Of("report.grades.before")));
        }
    }

    private static void AddFlags(IReadOnlyList<NeighbourGrade> neighbours, Phrase phrase, List<ReportBlock> blocks)
    {
        if (neighbours.Any(n => n.IsStronger))
        {
            blocks.Add(ReportBlock.Paragraph(string.Join(
                " ", phrase.Of("report.grades.room"), phrase.Of("report.grades.change"), phrase.Of("report.grades.before"))));
        }
    }

    private static string Comparison(NeighbourGrade neighbour, Phrase phrase)
    {
        string text = neighbour.Ratio.Expected is { } expected
            ? phrase.Of(Phrase.Code(expected >= 1 ? "report.grades.holdsMore" : "report.grades.holdsLess")
                .With("bolt", neighbour.Bolt)
                .With("expected", Ratio(expected, phrase)))
            : phrase.Of(Phrase.Code("report.grades.holds").With("bolt", neighbour.Bolt));
        string[] ends =
        [
            .. End("report.grades.weakest", neighbour.Ratio.Low, phrase),
            .. End("report.grades.strongest", neighbour.Ratio.High, phrase),
        ];
        string[] parts =
        [
            .. neighbour.Parts.Where(p => p.MustStand is not null)
                .GroupBy(p => phrase.Quantity(p.MustStand!.Value.NewtonMeters, QuantityKind.Torque), p => phrase.Name(p.Name))
                .Select(g => phrase.Of(Phrase.Code("report.grades.part").With("names", string.Join(", ", g)).With("torque", g.Key))),
        ];
        return text + (ends.Length > 0 ? " (" + string.Join("; ", ends) + ")" : string.Empty) + "."
            + (parts.Length == 0 ? string.Empty
                : " " + phrase.Of(Phrase.Code("report.grades.must").With("parts", string.Join("; ", parts))));
    }

    private static string[] End(string code, double? ratio, Phrase phrase) =>
        ratio is { } known ? [phrase.Of(Phrase.Code(code).With("ratio", Ratio(known, phrase)))] : [];

    // A third digit is more than grades keep.
    private static string Ratio(double ratio, Phrase phrase) => phrase.Number(ratio, ratio < 10 ? "0.##" : "F0");

    private static string[] Row(string name, ProtectionVerdict verdict, Phrase phrase) =>
    [
        name, phrase.Of("answer." + verdict.Guards), phrase.Of("answer." + verdict.Quiet), MarginNumber(verdict.GuardMargin, phrase),
            MarginNumber(verdict.WorkMargin, phrase),
    ];

    private static string Mark(NeighbourGrade grade) =>
        grade.IsSpecified ? "report.grades.manuals" : grade.IsStronger ? "report.grades.stronger" : "report.grades.weaker";

    private static string MarginNumber(double? margin, Phrase phrase) => margin is > 0 and { } value
        ? phrase.Quantity(value, QuantityKind.Margin)
        : phrase.Of("report.grades.margin.notKnown");
}
