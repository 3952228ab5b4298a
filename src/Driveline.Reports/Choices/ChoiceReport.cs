using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Choices;

/// <summary>The blocks of a report on a choice of bolts and of clutch settings.</summary>
internal static class ChoiceReport
{
    // Work for the machine's maker: numbers for other programs, no advice to an owner with a drill.
    private static readonly string[] ForTheMaker =
    [
        ChoosingFindings.ChangePositionBefore, ChoosingFindings.ChangePositionBehind, ChoosingFindings.ChangeRadius,
            ChoosingFindings.SmallerBetterBounded,
    ];

    public static IReadOnlyList<ReportBlock> Checked(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options) => Of(
        choice ?? throw new ArgumentNullException(nameof(choice)),
        settings ?? throw new ArgumentNullException(nameof(settings)),
        options ?? throw new ArgumentNullException(nameof(options)));

    private static List<ReportBlock> Of(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        // Of a driveline without a bolt the clutch alone is told of.
        bool isClutchAlone = settings.Count > 0 && choice.Findings.Any(f => f.Code == ChoosingFindings.NoBolt);
        blocks.Add(isClutchAlone ? ReportBlock.Lead(SettingWords.Lead(settings[0], phrase), ChoiceTones.Of(settings[0]))
            : ReportBlock.Lead(Lead(choice, phrase), ChoiceTones.Of(choice)));
        if (!isClutchAlone)
        {
            AddManuals(choice, phrase, blocks);
            AddBolts(choice, phrase, blocks);
            AddLeftOut(choice, phrase, blocks);
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
            if (setting is { Window: { } window, Place: Chains.SlipClutchDevice device })
            {
                blocks.AddRange(ReportBlock.PictureIf(
                    f => ClutchPicture.SettingDrawing(device.SlipTorque, window, setting.ManualsTorque, options, f)));
            }

            AddFindings(setting.Findings, phrase, blocks);
        }

        AddStronger(choice, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(
            choice.Cautions.Concat(settings.SelectMany(s => s.Cautions)).Distinct().Select(c => phrase.Of(c.Code))));
        return blocks;
    }

    private static void AddFindings(IReadOnlyList<Finding> all, Phrase phrase, List<ReportBlock> blocks)
    {
        Finding[] findings = [.. all.Where(f => !ForTheMaker.Contains(f.Code))];
        blocks.Add(ReportBlock.Heading(phrase.Of("choice.findings")));
        blocks.Add(findings.Length > 0
            ? ReportBlock.Bullets(findings.Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
    }

    // The manual's bolt is told of first; a stronger one never.
    private static string Lead(BoltChoice choice, Phrase phrase)
    {
        string? manuals = choice.Manuals?.Item.Name;
        if (choice.Manuals is { LeavesRoom: true, IsLoose: false, NeedsRedrilling: false } named)
        {
            string code = named.Verdict.Guards != Answer.Yes || named.Verdict.Quiet != Answer.Yes ? "choice.manuals.barred"
                : named.IsFitted ? "choice.keep"
                : "choice.fit";
            return phrase.Of(Phrase.Code(code).With("bolt", named.Item.Name));
        }

        if (choice.Best is { } best)
        {
            bool isPlain = best.Verdict.Guards == Answer.Yes && best.Verdict.Quiet == Answer.Yes;
            return phrase.Of(Phrase.Code(isPlain ? "choice.best" : "choice.best.barred")
                .With("bolt", best.Item.Name)
                .With("manuals", manuals ?? phrase.Name(choice.Specified?.Name)));
        }

        if (choice.Choices.Count == 0)
        {
            return manuals is null ? phrase.Of("choice.none") : phrase.Of(Phrase.Code("choice.none.manuals").With("bolt", manuals));
        }

        if (choice.Specified is not null)
        {
            return manuals is null ? phrase.Of("choice.nothingFits")
                : phrase.Of(Phrase.Code("choice.nothingFits.manuals").With("bolt", manuals));
        }

        return choice.Choices.FirstOrDefault(
            c => c is { IsFitted: true, LeavesRoom: true, Verdict: { Guards: Answer.Yes, Quiet: Answer.Yes } }) is { } fitted
            ? phrase.Of(Phrase.Code("choice.notStated.fitted").With("bolt", fitted.Item.Name))
            : phrase.Of(choice.Choices.Any(c => c.LeavesRoom) ? "choice.notStated" : "choice.nothingFits");
    }

    private static void AddManuals(BoltChoice choice, Phrase phrase, List<ReportBlock> blocks)
    {
        if (choice.Place is null)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("choice.manuals")));
        var lines = new List<string>();
        if (choice.Manuals is { } manuals)
        {
            lines.Add(BoltWords.Verdict(manuals, phrase));
            lines.Add(phrase.Of(manuals.IsFitted ? "choice.manuals.fitted" : "choice.manuals.notFitted"));
            if (choice.IsManualsInStock == false)
            {
                lines.Add(phrase.Of(Phrase.Code(ChoosingFindings.ManualsNotInStock).With("bolt", manuals.Item.Name)));
            }
        }
        else
        {
            lines.Add(choice.Specified is { } other
                ? phrase.Of(Phrase.Code("choice.manuals.other").With("name", phrase.Name(other.ToString())))
                : phrase.Of(ChoosingFindings.ManualsNotStated));
        }

        blocks.Add(ReportBlock.Bullets(lines));
    }

    private static void AddBolts(BoltChoice choice, Phrase phrase, List<ReportBlock> blocks)
    {
        RankedBolt[] bolts = [.. choice.Choices.Where(b => b.IsStrongerThanSpecified != true)];
        if (bolts.Length == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of(Phrase.Code("choice.table").With("device", phrase.Name(choice.Place!.Name)))));
        AddTable(bolts, phrase, blocks);
        blocks.Add(ReportBlock.Paragraph(phrase.Of("choice.margins")));
        blocks.Add(ReportBlock.Heading(phrase.Of("choice.cautions")));
        blocks.Add(ReportBlock.Bullets(bolts.Select(b => BoltWords.Cautions(b, phrase))));
        string[] steps =
            [.. bolts.Where(b => b.GuardMargin > 0 && b.GradeSteps.Any(s => !s.IsStronger)).Select(b => BoltWords.Steps(b, phrase))];
        if (steps.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("choice.steps")));
            blocks.Add(ReportBlock.Bullets(steps));
        }
    }

    private static void AddTable(RankedBolt[] bolts, Phrase phrase, List<ReportBlock> blocks) => blocks.Add(ReportBlock.Table(
    [
        [
            phrase.Of("choice.bolt"), phrase.Of("choice.mark"), phrase.Of(Phrase.Code("choice.breaks").With("unit", phrase.TorqueUnit)),
            phrase.Of("choice.guardMargin"), phrase.Of("choice.workMargin"), phrase.Of("choice.damageFirst"), phrase.Of("choice.peakTrips"),
                phrase.Of("choice.hours"),
        ],
        .. bolts.Select(b => BoltWords.Row(b, phrase)),
    ]));

    // What goes through no hole is told only of the owner's own stock: of the usual one it is most.
    private static void AddLeftOut(BoltChoice choice, Phrase phrase, List<ReportBlock> blocks)
    {
        bool isOwn = !ReferenceEquals(choice.Terms.Stock, StockList.Usual);
        string[] lines =
        [
            .. choice.LeftOut
                .Where(l => l.Reason.Code is ChoosingFindings.LeftOutLoose or ChoosingFindings.LeftOutNoUpperEnd
                    || (isOwn && l.Reason.Code == ChoosingFindings.LeftOutHole))
                .Select(l => phrase.Of(l.Reason)),
        ];
        if (lines.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("choice.leftOut")));
            blocks.Add(ReportBlock.Bullets(lines));
        }
    }

    private static void AddStronger(BoltChoice choice, Phrase phrase, List<ReportBlock> blocks)
    {
        RankedBolt[] bolts = [.. choice.Choices.Where(b => b.IsStrongerThanSpecified == true)];
        if (bolts.Length == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("choice.consent")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("choice.consent.text")));
        AddTable(bolts, phrase, blocks);
        blocks.Add(ReportBlock.Bullets(bolts.Select(b => BoltWords.Cautions(b, phrase))));
    }
}
