using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>For each device: how wide the band of its torque is, what makes how much of it, and what would narrow it most.</summary>
internal static class DoubtTables
{
    public static void Add(ProtectionVerdict verdict, Phrase phrase, List<ReportBlock> blocks)
    {
        if (verdict.Question.Chain.Devices.Count == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.doubt")));
        foreach (ProtectiveDevice device in verdict.Question.Chain.Devices)
        {
            IReadOnlyList<TorqueDoubt> doubts = device.Doubts();
            blocks.Add(ReportBlock.Paragraph(Band(device, phrase)));
            if (doubts.Count > 0)
            {
                AddTable(doubts, phrase, blocks);
            }
        }
    }

    private static string Band(ProtectiveDevice device, Phrase phrase)
    {
        string name = phrase.Capital(device.Name);
        if (device.Breakaway is not { } first || device.Running is not { } running)
        {
            return phrase.Of(Phrase.Code("report.doubt.device.notKnown").With("device", name));
        }

        double low = running.Low.NewtonMeters;
        double high = first.High?.NewtonMeters ?? double.PositiveInfinity;
        string end = low <= 0 ? "report.doubt.device.noLow"
            : double.IsPositiveInfinity(high) ? "report.doubt.device.open"
            : high / low < 1 + 1e-9 ? "report.doubt.device.exact"
            : "report.doubt.device";
        return phrase.Of(Phrase.Code(low <= 0 && double.IsPositiveInfinity(high) ? "report.doubt.device.notKnown" : end)
            .With("device", name)
            .With("low", QuantityKind.Torque, low)
            .With("high", QuantityKind.Torque, high)
            .With("times", low > 0 && !double.IsPositiveInfinity(high) ? phrase.Number(high / low, "0.00") : string.Empty));
    }

    private static void AddTable(IReadOnlyList<TorqueDoubt> doubts, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Table(doubts.Select(d => Row(d, phrase)).Prepend(
        [
            phrase.Of("report.doubt.source"), phrase.Of("report.doubt.times"), phrase.Of("report.doubt.share"),
            phrase.Of("report.doubt.basis"),
        ])));
        TorqueDoubt widest = doubts[0];
        string[] shares = [.. doubts.Where(d => !d.IsOpen).GroupBy(Kind).OrderByDescending(g => g.Sum(d => d.Share!.Value))
            .Select(g => phrase.Of("doubtBasis." + g.Key) + " " + Percent(g.Sum(d => d.Share!.Value), phrase))];
        if (shares.Length > 0)
        {
            blocks.Add(ReportBlock.Paragraph(
                phrase.Of(Phrase.Code("report.doubt.byBasis").With("shares", string.Join(", ", shares)))));
        }

        string code = widest.IsOpen ? "report.doubt.missing" : widest.SettledBy is null ? "report.doubt.most.alone" : "report.doubt.most";
        blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code(code)
            .With("source", phrase.Of(widest.Code))
            .With("how", widest.SettledBy is { } how ? phrase.Of(how) : string.Empty)).TrimEnd()));
    }

    private static string[] Row(TorqueDoubt doubt, Phrase phrase) =>
    [
        phrase.Of(doubt.Code),
        doubt.Times is { } times ? phrase.Number(times, "0.00") : phrase.Of("report.doubt.open"),
        doubt.Share is { } share ? Percent(share, phrase) : string.Empty,
        phrase.Of("doubtBasis." + Kind(doubt)),
    ];

    private static string Kind(TorqueDoubt doubt) => doubt.Basis is { } basis ? basis.Kind.ToString() : "None";

    private static string Percent(double share, Phrase phrase) =>
        phrase.Of(Phrase.Code("report.doubt.percent").With("percent", phrase.Number(100 * share, "0")));
}
