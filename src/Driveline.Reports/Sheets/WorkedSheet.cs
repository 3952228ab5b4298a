using Driveline.Chains;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Sheets;

/// <summary>
/// A calculation to be checked by hand: for each device its steps in order, each end apart, then the two comparisons, where the numbers
/// come from, and a place to sign.
/// </summary>
internal static class WorkedSheet
{
    private static readonly CalculationStep WorkMargin = new(
        "workMargin", "M_work", "T_low / T_peak", "1", "weakest device over highest work peak");

    private static readonly CalculationStep GuardMargin = new(
        "guardMargin", "M_guard", "T_part / T_high", "1", "weakest part over strongest device, at the part");

    public static IReadOnlyList<ReportBlock> Of(ProtectionVerdict verdict, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        var bases = new List<Basis>();
        foreach (ProtectiveDevice device in verdict.Question.Chain.Devices)
        {
            blocks.Add(ReportBlock.Sheet(phrase.Capital(device.Name)));
            if (device is ShearBoltDevice bolt)
            {
                blocks.AddRange(ReportBlock.PictureIf(f => BoltPicture.PlanesDrawing(bolt, options, f)));
            }

            AddSteps(device.Sheet(), phrase, blocks);
            if (device.Running is { } running)
            {
                blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("sheet.result").With("band", BandWords.Of(running, phrase)))));
                bases.AddRange([running.Basis.Low, running.Basis.Expected, running.Basis.High]);
            }
        }

        AddComparisons(verdict, bases, phrase, blocks);
        Close(bases, phrase, blocks);
        return blocks;
    }

    public static IReadOnlyList<ReportBlock> Of(
        string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock> { ReportBlock.Title(CleanText.Title(title)) };
        AddSteps(lines, phrase, blocks);
        Close(bases, phrase, blocks);
        return blocks;
    }

    private static void Close(IEnumerable<Basis> bases, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("sheet.bases")));
        string[] said = [.. BasisWords.Each([], bases, phrase)];
        blocks.Add(said.Length > 0 ? ReportBlock.Bullets(said) : ReportBlock.Paragraph(phrase.Of("report.basis.none")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("caution.licensedPractice")));
        blocks.Add(ReportBlock.Sign([phrase.Of("sheet.sign.made"), phrase.Of("sheet.sign.checked")]));
    }

    // A first step that comes again begins the sum of the next end: lowest, most likely, highest.
    private static void AddSteps(IReadOnlyList<CalculationLine> lines, Phrase phrase, List<ReportBlock> blocks)
    {
        if (lines.Count == 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("sheet.none")));
            return;
        }

        var parts = new List<List<CalculationLine>>();
        foreach (CalculationLine line in lines)
        {
            if (parts.Count == 0 || line.Formula.Code == lines[0].Formula.Code)
            {
                parts.Add([]);
            }

            parts[parts.Count - 1].Add(line);
        }

        for (int k = 0; k < parts.Count; k++)
        {
            if (parts.Count > 1)
            {
                blocks.Add(ReportBlock.Heading(phrase.Of(
                    k == 0 ? "report.ladder.low" : k == 1 ? "report.ladder.expected" : "report.ladder.high")));
            }

            AddSum(parts[k], phrase, blocks);
        }
    }

    private static void AddSum(IEnumerable<CalculationLine> lines, Phrase phrase, List<ReportBlock> blocks)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal) { ["π"] = "π" };
        foreach (CalculationLine line in lines)
        {
            blocks.Add(ReportBlock.Step(WorkedStep.Of(line, values, phrase)));
            values[line.Formula.Symbol] = SheetUnits.Of(line.Value, line.Formula.Unit, phrase);
        }
    }

    private static void AddComparisons(ProtectionVerdict verdict, List<Basis> bases, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("sheet.comparisons")));
        if (CriticalChecks.Part(verdict) is { ActsAt.High: { } high, Part.Limit: not null, DamagedAtPto: { } damaged, Margin: > 0 } part
            && part.Margin is { } guard)
        {
            double atPart = guard * high.NewtonMeters;
            AddSum(
                [
                    Torque("T_part", atPart, PartNames.Of(part.Part, verdict, phrase)),
                    Torque("T_high", high.NewtonMeters, phrase.Name(part.GuardedBy?.Name)), new CalculationLine(GuardMargin, guard),
                ], phrase, blocks);
            blocks.Add(ReportBlock.Paragraph(AnswerSentences.Guards(verdict, phrase)));
            bases.AddRange([damaged.Basis.Low, part.ActsAt.Basis.High]);
        }
        else
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("report.guards") + " " + AnswerSentences.Guards(verdict, phrase)));
        }

        if (CriticalChecks.Device(verdict) is { Margin: > 0 } device && device.Margin is { } work
            && CriticalChecks.RunningAtPto(verdict, device) is { } running && verdict.WorkPeak is { High: { } peak } peaks)
        {
            AddSum(
                [
                    Torque("T_low", running.Low.NewtonMeters, phrase.Name(device.Device.Name)),
                    Torque("T_peak", peak.NewtonMeters, phrase.Of("rung.Work")), new CalculationLine(WorkMargin, work),
                ], phrase, blocks);
            blocks.Add(ReportBlock.Paragraph(AnswerSentences.Quiet(verdict, phrase)));
            bases.Add(peaks.Basis.High);
        }
        else
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("report.quiet") + " " + AnswerSentences.Quiet(verdict, phrase)));
        }
    }

    private static CalculationLine Torque(string symbol, double nm, string what) =>
        new(new CalculationStep(symbol, symbol, what + ".", "N·m", string.Empty), nm);
}
