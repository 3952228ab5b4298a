using Driveline.Chains;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Ladders;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Charts;

/// <summary>The grades that go into the one hole, beside what the work asks and what the part most at risk takes.</summary>
internal static class GradeChart
{
    public static LadderDrawing? Of(ProtectionVerdict verdict, ReportOptions options, PictureFrame frame)
    {
        IReadOnlyList<NeighbourGrade> grades = verdict.NeighbourGrades;
        if (grades.Count == 0 || CriticalChecks.Device(verdict)?.TripAtPto is not { } fitted)
        {
            return null;
        }

        var phrase = new Phrase(options.Texts, options.Units);
        var rows = new List<LadderRow>();
        if (verdict.WorkPeak is { } work)
        {
            rows.Add(Row(LadderRowKind.Work, phrase.Of("rung.Work"), work, phrase));
        }

        rows.AddRange(grades.Where(g => !g.IsStronger && g.Trip is not null).Select(g => Grade(g, phrase)));
        rows.Add(Row(LadderRowKind.Device, Fitted(verdict, phrase), fitted, phrase));
        rows.AddRange(grades.Where(g => g.IsStronger && g.Trip is not null).Select(g => Grade(g, phrase)));
        if (CriticalChecks.Part(verdict) is { DamagedAtPto: { } damaged } part)
        {
            rows.Add(Row(LadderRowKind.Part, PartNames.Capital(part.Part, verdict, phrase), damaged, phrase));
        }

        return LadderDrawing.Of(
            Lead(verdict, phrase), phrase.Of("picture.grade.description"), LeadTones.Of(verdict), rows, options, frame);
    }

    // May another grade go into this hole? What each would do, the stronger never without the one who alone can allow it.
    private static string Lead(ProtectionVerdict verdict, Phrase phrase)
    {
        string? part = CriticalChecks.Part(verdict) is { } check ? PartNames.Of(check.Part, verdict, phrase) : null;
        return string.Join(" ", verdict.NeighbourGrades.Where(g => !g.IsSpecified).Select(g => phrase.Of(Phrase.Code(
                g.IsStronger ? "picture.grade.stronger." + (part is null ? Answer.NotKnown : g.Verdict.Guards)
                    : "picture.grade.weaker." + g.Verdict.Quiet)
            .With("grade", g.Grade).With("part", part ?? string.Empty))).Prepend(phrase.Of("picture.grade.lead")));
    }

    private static string Fitted(ProtectionVerdict verdict, Phrase phrase)
    {
        string words = phrase.Of("picture.grade.fitted");
        return CriticalChecks.Device(verdict)?.Device is ShearBoltDevice { BreakTorque.Joint.Bolt.Grade: { } grade }
            ? grade.Designation + " (" + words + ")" : words;
    }

    private static LadderRow Grade(NeighbourGrade grade, Phrase phrase) => Row(
        LadderRowKind.Device,
        grade.Grade + " (" + phrase.Of(grade.IsSpecified ? "report.grades.manuals" : grade.IsStronger ? "report.grades.stronger"
            : "report.grades.weaker") + ")",
        grade.Trip!, phrase);

    private static LadderRow Row(LadderRowKind kind, string name, TorqueBand torque, Phrase phrase) => LadderRow.Band(
        kind, name, BandWords.Of(torque, phrase), LadderRows.Shown(torque.Low, phrase), LadderRows.Shown(torque.Expected, phrase),
        LadderRows.Shown(torque.High, phrase));
}
