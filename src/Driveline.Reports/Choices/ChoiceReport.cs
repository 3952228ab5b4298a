using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Choices;

/// <summary>The blocks of a report on a choice of bolts and of clutch settings.</summary>
internal static class ChoiceReport
{
    public static IReadOnlyList<ReportBlock> Of(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options)
    {
        var phrase = new Phrase(Texts.In(options.Language), options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        // Of a driveline without a bolt the clutch alone is told of.
        bool isClutchAlone = settings.Count > 0 && choice.Findings.Any(f => f.Code == ChoosingFindings.NoBolt);
        blocks.Add(ReportBlock.Lead(isClutchAlone ? SettingWords.Lead(settings[0], phrase) : Lead(choice, phrase)));
        if (!isClutchAlone)
        {
            AddBolts(choice, phrase, blocks);
            AddFindings(choice.Findings, phrase, blocks);
        }

        foreach (ClutchChoice setting in settings)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of(Phrase.Code("choice.setting").With("device", phrase.Name(setting.Place.Name)))));
            if (!isClutchAlone || setting != settings[0])
            {
                blocks.Add(ReportBlock.Paragraph(SettingWords.Lead(setting, phrase)));
            }

            blocks.Add(ReportBlock.Bullets(SettingWords.Lines(setting, phrase)));
            AddFindings(setting.Findings, phrase, blocks);
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(choice.Cautions.Concat(settings.SelectMany(s => s.Cautions)).Distinct().Select(phrase.Of)));
        return blocks;
    }

    private static void AddFindings(IReadOnlyList<Finding> findings, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("choice.findings")));
        blocks.Add(findings.Count > 0
            ? ReportBlock.Bullets(findings.Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
    }

    // A bolt that is not known to be the manual's own never leads without the sentence on the manual.
    private static string Lead(BoltChoice choice, Phrase phrase)
    {
        if (choice.Best is not { } best)
        {
            return phrase.Of(choice.Choices.Count > 0 ? "choice.nothingFits" : "choice.none");
        }

        string code = best.IsStrongerThanSpecified != false ? "choice.best.notSpecified"
            : best.Verdict.Guards != Answer.Yes || best.Verdict.Quiet != Answer.Yes ? "choice.best.barred"
            : best.IsFitted ? "choice.best.fitted"
            : "choice.best";
        return phrase.Of(Phrase.Code(code).With("bolt", best.Item.Name));
    }

    private static void AddBolts(BoltChoice choice, Phrase phrase, List<ReportBlock> blocks)
    {
        if (choice.Choices.Count == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of(Phrase.Code("choice.table").With("device", phrase.Name(choice.Place!.Name)))));
        blocks.Add(ReportBlock.Table(
        [
            [
                phrase.Of("choice.bolt"), phrase.Of(Phrase.Code("choice.breaks").With("unit", phrase.TorqueUnit)), phrase.Of("choice.guardMargin"),
                phrase.Of("choice.workMargin"), phrase.Of("choice.damageFirst"), phrase.Of("choice.peakTrips"), phrase.Of("choice.hours"),
            ],
            .. choice.Choices.Select(b => BoltWords.Row(b, phrase)),
        ]));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("choice.margins")));
        blocks.Add(ReportBlock.Heading(phrase.Of("choice.cautions")));
        blocks.Add(ReportBlock.Bullets(choice.Choices.Select(b => BoltWords.Cautions(b, phrase))));
        string[] steps = [.. choice.Choices.Where(b => b.GuardMargin > 0 && b.GradeSteps.Count > 0).Select(b => BoltWords.Steps(b, phrase))];
        if (steps.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("choice.steps")));
            blocks.Add(ReportBlock.Bullets(steps));
        }
    }
}
