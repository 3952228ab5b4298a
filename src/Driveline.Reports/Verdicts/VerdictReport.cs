using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>The content of a verdict's report, once for every form it is printed in. The cautions always come last.</summary>
internal static class VerdictReport
{
    public static IReadOnlyList<ReportBlock> Of(ProtectionVerdict verdict, ReportOptions options) => Of(verdict, options, true);

    /// <summary>The report, without the pictures where none can be shown.</summary>
    public static IReadOnlyList<ReportBlock> Of(ProtectionVerdict verdict, ReportOptions options, bool hasPictures)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        StandingSentences.Add(verdict.Standing, phrase, blocks);
        blocks.Add(ReportBlock.Lead(AnswerSentences.Headline(verdict, phrase), LeadTones.Of(verdict)));
        IReadOnlyList<Measurement> measurements = verdict.MeasureNext;
        if (measurements.Count > 0 && measurements[0].Code == Measurements.FreeHub)
        {
            blocks.Add(ReportBlock.Paragraph(
                phrase.Of(Phrase.Code("report.measure.before").With("text", MeasureSentences.Of(measurements[0], phrase)))));
        }
        else if (verdict.Headline is Headline.Doubtful or Headline.NotKnown or Headline.AsSpecified && measurements.Count > 0)
        {
            blocks.Add(ReportBlock.Paragraph(
                phrase.Of(Phrase.Code("report.measure.first").With("text", MeasureSentences.Of(measurements[0], phrase)))));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.questions")));
        blocks.Add(ReportBlock.Bullets(
        [
            phrase.Of("report.guards") + " " + AnswerSentences.Guards(verdict, phrase),
            phrase.Of("report.quiet") + " " + AnswerSentences.Quiet(verdict, phrase),
            phrase.Of("report.asSpecified") + " " + SpecifiedSentences.Of(verdict.AsSpecified, phrase),
        ]));
        AddLadder(verdict, options, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("report.fitted")));
        blocks.Add(verdict.Comparisons.Count < 2
            ? ReportBlock.Paragraph(AnswerSentences.Fitted(verdict.FittedAgainstSpecified, phrase))
            : ReportBlock.Bullets(verdict.Comparisons.Select(c => phrase.Of(Phrase.Code("comparison.device")
                .With("device", phrase.Capital(c.Device!.Name))
                .With("text", AnswerSentences.Fitted(c, phrase))))));
        if (verdict.Parts.Count > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("report.parts")));
            blocks.Add(ReportBlock.Bullets(verdict.Parts.Select(p => PartSentences.Of(p, verdict, phrase))));
        }

        GradeSentences.Add(verdict, phrase, blocks);
        if (hasPictures)
        {
            AddPictures(verdict, options, blocks);
        }

        AddFindings(verdict, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("report.measure")));
        blocks.Add(measurements.Count > 0
            ? ReportBlock.Numbered(measurements.Select(m => MeasureSentences.Of(m, phrase)))
            : ReportBlock.Paragraph(phrase.Of("report.measure.none")));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.basis")));
        blocks.Add(ReportBlock.Paragraph(verdict.WeakestBasis is { } basis
            ? phrase.Of(Phrase.Code("report.basis.weakest").With("kind", phrase.Of("basis." + basis.Kind)).With("document", basis.Document))
            : phrase.Of("report.basis.none")));
        if (options.HasDoubts)
        {
            DoubtTables.Add(verdict, phrase, blocks);
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(verdict.Cautions.Select(c => phrase.Of(c.Code))));
        return blocks;
    }

    private static void AddPictures(ProtectionVerdict verdict, ReportOptions options, List<ReportBlock> blocks)
    {
        blocks.AddRange(ReportBlock.PictureIf(f => BoltPicture.GradesDrawing(verdict, options, f)));
        foreach (Chains.ShearBoltDevice bolt in verdict.Question.Chain.Devices.OfType<Chains.ShearBoltDevice>())
        {
            blocks.AddRange(ReportBlock.PictureIf(f => BoltPicture.PlanesDrawing(bolt, options, f)));
        }
    }

    private static void AddLadder(ProtectionVerdict verdict, ReportOptions options, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("report.ladder")));
        blocks.Add(ReportBlock.Picture(
            phrase.Of("ladder.description"), frame => TorqueLadderPicture.Fragment(verdict, options.WithTitle(null), frame)));
        IReadOnlyList<LadderRung> ladder = verdict.Ladder;
        if (ladder.Count == 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("report.ladder.empty")));
        }
        else
        {
            string unit = phrase.Of(Phrase.Code("report.ladder.unit").With("unit", phrase.TorqueUnit));
            var rows = new List<string[]>
            {
                new[]
                {
                    phrase.Of("report.ladder.what") + " (" + unit + ")", phrase.Of("report.ladder.low"),
                    phrase.Of("report.ladder.expected"), phrase.Of("report.ladder.high"),
                },
            };
            foreach (LadderRung rung in ladder)
            {
                TorqueBand torque = rung.Torque;
                rows.Add(
                [
                    RungName(rung, verdict, phrase),
                    phrase.Number(torque.Low.NewtonMeters),
                    phrase.Number(torque.Expected?.NewtonMeters ?? double.PositiveInfinity),
                    phrase.Number(torque.High?.NewtonMeters ?? double.PositiveInfinity),
                ]);
            }

            blocks.Add(ReportBlock.Table(rows));
        }

        string[] aside = [.. CriticalChecks.WithoutTorque(verdict)
            .Select(e => e is Chains.Part part ? PartNames.Of(part, verdict, phrase) : phrase.Name(e.Name))];
        if (aside.Length > 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("ladder.aside").With("names", string.Join(", ", aside)))));
        }
    }

    private static string RungName(LadderRung rung, ProtectionVerdict verdict, Phrase phrase)
    {
        string kind = rung.Kind == LadderRungKind.Trip ? "ladder.key.device" : "ladder.key.part";
        return LadderWords.Name(rung, verdict, phrase) + (rung.Name is null ? string.Empty : " (" + phrase.Of(kind) + ")");
    }

    private static void AddFindings(ProtectionVerdict verdict, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
        IReadOnlyList<Finding> findings = verdict.Findings;
        blocks.Add(findings.Count > 0
            ? ReportBlock.Bullets(FindingSentences.Of(findings, phrase))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
    }
}
