using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Simulations;

/// <summary>The content of a span's report: what usual values give, which they are, and that they decide nothing.</summary>
internal static class SpanReport
{
    private static readonly string[] Columns = ["with", "without", "damagedAt"];

    public static IReadOnlyList<ReportBlock> Of(SimulationSpan span, SimulationCheck check, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        List<ReportBlock> blocks = SimulationReport.Begin(span.Simulation.Event, options, phrase);
        blocks.Add(ReportBlock.Lead(Lead(span, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("simulate.span.table")));
        blocks.Add(ReportBlock.Table([Heads(phrase), .. span.Loads.Select(load => Row(load, phrase))]));
        blocks.Add(ReportBlock.Heading(phrase.Of("simulate.span.supposed")));
        blocks.Add(ReportBlock.Bullets(span.Supposed.Select(f => phrase.Of(f.Finding))));
        blocks.Add(ReportBlock.Bullets(BasisWords.Each([], span.Supposed.Select(f => f.Basis), phrase)));
        SimulationReport.Close(blocks, span.Simulation.Assumed, check.Cautions, phrase);
        return blocks;
    }

    private static string Lead(SimulationSpan span, Phrase phrase)
    {
        SpannedLoad? at = span.Loads.FirstOrDefault(l => l.Element is ProtectiveDevice)
            ?? (span.Loads.Count > 0 ? span.Loads[0] : null);
        string said = at?.WithoutProtection is { } torque
            ? phrase.Of(Torque("simulate.lead.span", torque).With("name", at.Element.Name)) : phrase.Of("simulate.lead.spanAlone");
        return span.RunsThatTrip is { } acts
            ? said + " " + phrase.Of(Phrase.Code(acts == 0 ? "simulate.lead.spanNeverTrips"
                : acts == span.Runs ? "simulate.lead.spanAlwaysTrips" : "simulate.lead.spanTrips")
                .With("acts", QuantityKind.Count, acts).With("runs", QuantityKind.Count, span.Runs))
            : said;
    }

    private static Finding Torque(string code, TorqueBand torque) => Phrase.Code(code)
        .With("low", QuantityKind.Torque, torque.Low.NewtonMeters)
        .With("expected", QuantityKind.Torque, torque.Expected!.Value.NewtonMeters)
        .With("high", QuantityKind.Torque, torque.High!.Value.NewtonMeters);

    private static string[] Heads(Phrase phrase) =>
    [
        phrase.Of("simulate.table.part"),
        .. Columns.Select(head => phrase.Of(Phrase.Code("simulate.table." + head).With("unit", phrase.TorqueUnit))),
    ];

    private static string[] Row(SpannedLoad load, Phrase phrase) =>
    [
        phrase.Name(load.Element.Name), Range(load.WithProtection, phrase), Range(load.WithoutProtection, phrase),
        load.DamagedAt is null ? string.Empty : SimulationReport.Damaged(load.DamagedAt, phrase),
    ];

    private static string Range(TorqueBand? torque, Phrase phrase) =>
        torque is null ? phrase.Of("band.notKnown") : SimulationReport.Damaged(torque, phrase);
}
