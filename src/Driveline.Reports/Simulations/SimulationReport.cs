using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Simulations;

/// <summary>The content of a simulation's report. The cautions always come last.</summary>
internal static class SimulationReport
{
    private static readonly string[] Columns = ["with", "without", "damagedAt"];

    public static IReadOnlyList<ReportBlock> Checked(SimulationCheck check, ReportOptions options) =>
        Checked(check, options, CancellationToken.None);

    /// <summary>The same; its picture, which simulates again, until it is stopped.</summary>
    public static IReadOnlyList<ReportBlock> Checked(SimulationCheck check, ReportOptions options, CancellationToken stop) => Of(
        check ?? throw new ArgumentNullException(nameof(check)), options ?? throw new ArgumentNullException(nameof(options)), stop);

    /// <summary>With what usual values in place of missing facts give; null for the check alone.</summary>
    public static IReadOnlyList<ReportBlock> Checked(SimulationCheck check, SimulationSpan? span, ReportOptions options) =>
        Checked(check, span, options, CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    public static IReadOnlyList<ReportBlock> Checked(
        SimulationCheck check, SimulationSpan? span, ReportOptions options, CancellationToken stop) => span is null
        ? Checked(check, options, stop)
        : SpanReport.Of(
            span, check ?? throw new ArgumentNullException(nameof(check)), options ?? throw new ArgumentNullException(nameof(options)));

    private static List<ReportBlock> Of(SimulationCheck check, ReportOptions options, CancellationToken stop)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        List<ReportBlock> blocks = Begin(check.Simulation.Event, options, phrase);
        blocks.Add(ReportBlock.Lead(SimulationLead.Of(check, phrase), SimulationLead.ToneOf(check)));
        if (check.With is not null || check.Without is not null)
        {
            blocks.Add(ReportBlock.Picture(
                phrase.Of("simulate.picture.description"),
                frame => SimulationPicture.Fragment(check, options.WithTitle(null), frame, stop)));
        }

        if (check.Simulation.CanRun && check.Simulation.Assumed.Count > 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("simulate.undecided")));
        }

        if (check.Loads.Any(l => l.WithProtection is not null || l.WithoutProtection is not null))
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("simulate.table")));
            blocks.Add(ReportBlock.Table([Heads(phrase), .. check.Loads.Select(load => Row(load, check, phrase))]));
        }

        if (check.With is null && check.Without is null)
        {
            blocks.Add(ReportBlock.Paragraph(
                phrase.Of(check.Simulation.Strike is { MissesDriveline: true } ? "simulate.noCurve.beside" : "simulate.noCurve")));
        }

        SimulatedSlip[] slips = [.. (check.With?.Slips ?? []).Where(s => s.Heat.Joules > 0)];
        if (slips.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("simulate.slips")));
            blocks.Add(ReportBlock.Bullets(slips.Select(slip => Slip(slip, phrase))));
        }

        Close(blocks, check.Findings, check.Cautions, phrase);
        return blocks;
    }

    public static IReadOnlyList<ReportBlock> OfMissing(
        SimulatedEvent happened, IReadOnlyList<Finding> missing, MachineKind machine, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        List<ReportBlock> blocks = Begin(happened, options, phrase);
        blocks.Add(ReportBlock.Lead(phrase.Of("simulate.lead.notKnown"), LeadTone.Careful));
        Close(blocks, missing, SimulationCheck.CautionsFor(machine), phrase);
        return blocks;
    }

    internal static List<ReportBlock> Begin(SimulatedEvent happened, ReportOptions options, Phrase phrase)
    {
        string what = phrase.Of("simulate.title." + happened);
        return options.Title is { } title ? [ReportBlock.Title(CleanText.Title(title)), ReportBlock.Heading(what)]
            : [ReportBlock.Title(what)];
    }

    internal static void Close(List<ReportBlock> blocks, IReadOnlyList<Finding> findings, IReadOnlyList<Caution> cautions, Phrase phrase)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
        blocks.Add(findings.Count > 0
            ? ReportBlock.Bullets(findings.Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("simulate.howFar")));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(cautions.Select(c => phrase.Of(c.Code))));
    }

    private static string[] Heads(Phrase phrase) =>
    [
        phrase.Of("simulate.table.part"),
        .. Columns.Select(head => phrase.Of(Phrase.Code("simulate.table." + head).With("unit", phrase.TorqueUnit))),
        phrase.Of("simulate.table.damaged"),
    ];

    private static string[] Row(SimulatedLoad load, SimulationCheck check, Phrase phrase) =>
    [
        phrase.Name(load.Element.Name),
        Number(load.WithProtection?.NewtonMeters, phrase),
        Number(load.WithoutProtection?.NewtonMeters, phrase),
        Damaged(load.DamagedAt, phrase),
        phrase.Of(load.Element is ProtectiveDevice device ? DeviceWords.CodeOf(device, load, check)
            : load.DamagedAt is not null && load.DamagedWith != Answer.NotKnown ? "answer." + load.DamagedWith
            : check.IsBlowUnbounded && load.WithProtection < load.DamagedAt?.Low ? "simulate.damaged.notByThis"
            : "simulate.damaged.notKnown"),
    ];

    internal static string Damaged(TorqueBand? at, Phrase phrase) => at is null ? string.Empty
        : at.Low.NewtonMeters.Equals(at.High?.NewtonMeters) ? phrase.Number(at.Low.NewtonMeters)
        : phrase.Number(at.Low.NewtonMeters) + " … " + phrase.Number(at.High?.NewtonMeters ?? double.PositiveInfinity);

    private static string Number(double? nm, Phrase phrase) => nm is { } value ? phrase.Number(value) : phrase.Of("band.notKnown");

    private static string Slip(SimulatedSlip slip, Phrase phrase) => phrase.Of(Phrase.Code("simulate.slip")
        .With("clutch", phrase.Capital(slip.Clutch))
        .With("angle", QuantityKind.Angle, slip.Slip.Radians)
        .With("energy", QuantityKind.Energy, slip.Heat.Joules));
}
