using Driveline.Chains;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Sheets;

/// <summary>
/// A calculation to be checked by hand: for each device what it begins with and from where, its sum in order, each end apart; then the two
/// comparisons, where the numbers come from, and a place to sign.
/// </summary>
internal static class WorkedSheet
{
    private static readonly Dictionary<string, BandBasis> NoBases = [];

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

            AddSums(device.Sheet(), device.SheetBases(), phrase, blocks);
            if (device.Running is { } running)
            {
                blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("sheet.result").With("band", BandWords.Of(running, phrase)))));
                bases.AddRange([running.Basis.Low, running.Basis.Expected, running.Basis.High]);
            }

            if (device is SlipClutchDevice clutch && clutch.SlipTorque.SpringSheet() is { Count: > 0 } springs)
            {
                blocks.Add(ReportBlock.Heading(phrase.Of("sheet.springs.beside")));
                AddSums(springs, device.SheetBases(), phrase, blocks);
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
        AddSums(lines, NoBases, phrase, blocks);
        Close(bases, phrase, blocks);
        return blocks;
    }

    /// <summary>The table of what a sum begins with, and the sum, each end under its head.</summary>
    public static void AddSums(
        IReadOnlyList<CalculationLine> lines, IReadOnlyDictionary<string, BandBasis> bases, Phrase phrase, List<ReportBlock> blocks)
    {
        if (lines.Count == 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("sheet.none")));
            return;
        }

        blocks.AddRange(SheetInputs.Table(lines, bases, NoNames, phrase));
        foreach (IGrouping<SheetEnd, CalculationLine> end in lines.GroupBy(l => l.End).OrderBy(g => g.Key))
        {
            if (end.Key != SheetEnd.Whole)
            {
                blocks.Add(ReportBlock.Heading(phrase.Of(SheetInputs.HeadOf(end.Key))));
            }

            AddSum(end, phrase, blocks);
        }
    }

    /// <summary>Where the numbers come from, the caution, and the place to sign.</summary>
    public static void Close(IEnumerable<Basis> bases, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("sheet.bases")));
        string[] said = [.. BasisWords.Each([], bases, phrase)];
        blocks.Add(said.Length > 0 ? ReportBlock.Bullets(said) : ReportBlock.Paragraph(phrase.Of("report.basis.none")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("caution.licensedPractice")));
        blocks.Add(ReportBlock.Sign([phrase.Of("sheet.sign.made"), phrase.Of("sheet.sign.checked")]));
    }

    private static Dictionary<string, string> NoNames => [];

    // What stands in the table is put in where it is used and not said again.
    private static void AddSum(IEnumerable<CalculationLine> lines, Phrase phrase, List<ReportBlock> blocks)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal) { ["π"] = "π" };
        foreach (CalculationLine line in lines)
        {
            if (!line.Formula.IsInput)
            {
                blocks.Add(ReportBlock.Step(WorkedStep.Of(line, values, phrase)));
            }

            values[line.Formula.Symbol] = SheetUnits.Of(line, phrase);
        }
    }

    private static void AddComparisons(ProtectionVerdict verdict, List<Basis> bases, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Sheet(phrase.Of("sheet.comparisons")));
        if (CriticalChecks.Part(verdict) is { Part.Limit: { } limit } part && part.Sheet() is { Count: > 0 } guard)
        {
            var from = new Dictionary<string, BandBasis> { [guard[0].Formula.Code] = BandBasis.Of(limit.DamagedAt.Basis.Low) };
            if (part.ActsAt is { } acts)
            {
                from[guard[1].Formula.Code] = BandBasis.Of(acts.Basis.High);
                bases.Add(acts.Basis.High);
            }

            Compare(guard, from, PartNames.Of(part.Part, verdict, phrase), phrase.Name(part.GuardedBy?.Name), phrase, blocks);
            bases.Add(limit.DamagedAt.Basis.Low);
            blocks.Add(ReportBlock.Paragraph(AnswerSentences.Guards(verdict, phrase)));
        }
        else
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("report.guards") + " " + AnswerSentences.Guards(verdict, phrase)));
        }

        if (CriticalChecks.Device(verdict) is { Device.Running: { } running } device && device.Sheet() is { Count: > 0 } work)
        {
            var from = new Dictionary<string, BandBasis> { [work[0].Formula.Code] = BandBasis.Of(running.Basis.Low) };
            if (verdict.WorkPeak is { } peaks)
            {
                from[work[1].Formula.Code] = BandBasis.Of(peaks.Basis.High);
                bases.Add(peaks.Basis.High);
            }

            if (verdict.Question.Work is { } peak && peak.Sheet() is { Count: > 0 } sum)
            {
                blocks.Add(ReportBlock.Heading(phrase.Of("rung.Work")));
                AddSums(sum, peak.SheetBases(), phrase, blocks);
                blocks.Add(ReportBlock.Heading(phrase.Of("report.quiet")));
            }

            Compare(work, from, phrase.Name(device.Device.Name), phrase.Of("rung.Work"), phrase, blocks);
            blocks.Add(ReportBlock.Paragraph(AnswerSentences.Quiet(verdict, phrase)));
        }
        else
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("report.quiet") + " " + AnswerSentences.Quiet(verdict, phrase)));
        }
    }

    private static void Compare(
        IReadOnlyList<CalculationLine> lines, Dictionary<string, BandBasis> bases, string first, string second, Phrase phrase,
        List<ReportBlock> blocks)
    {
        var names = new Dictionary<string, string> { [lines[0].Formula.Code] = first, [lines[1].Formula.Code] = second };
        blocks.AddRange(SheetInputs.Table(lines, bases, names, phrase));
        AddSum(lines, phrase, blocks);
    }
}
