using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Reports;

/// <summary>
/// Everything about one slip clutch as plain text: torques, springs, a new setting, heat, findings, service steps; last the cautions.
/// </summary>
public static class ClutchText
{
    /// <summary>The English text in metric units, with the service steps its state calls for.</summary>
    public static string Of(ClutchReview review) =>
        Of(review, (review ?? throw new ArgumentNullException(nameof(review))).Procedures, ReportOptions.Default);

    /// <summary>The text with service procedures of choice.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options)
    {
        ClutchReview seen = review ?? throw new ArgumentNullException(nameof(review));
        ReportOptions chosen = options ?? throw new ArgumentNullException(nameof(options));
        var phrase = new Phrase(Texts.In(chosen.Language), chosen.Units);
        var blocks = new List<ReportBlock> { ReportBlock.Title(CleanText.Title(chosen.Title ?? phrase.Capital(seen.Device.Name))) };
        blocks.Add(ReportBlock.Lead(phrase.Of(Phrase.Code(LeadOf(seen)).With("name", phrase.Capital(seen.Device.Name)))));
        if (seen.Setting is { } setting)
        {
            AddSetting(seen, setting, phrase, blocks);
        }

        blocks.Add(ReportBlock.Heading(phrase.Of(seen.Setting is { IsReached: true } ? "clutchReport.torque.set" : "clutchReport.torque")));
        blocks.Add(ReportBlock.Bullets(Torques(seen, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("clutchReport.heat")));
        blocks.Add(ReportBlock.Bullets(Heat(seen, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
        IReadOnlyList<Finding> findings = seen.Findings;
        blocks.Add(findings.Count > 0
            ? ReportBlock.Bullets(findings.Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
        foreach (ServiceProcedure procedure in procedures ?? throw new ArgumentNullException(nameof(procedures)))
        {
            blocks.Add(ReportBlock.Heading(phrase.Of(procedure.Code)));
            blocks.Add(ReportBlock.Numbered(procedure.Steps.Select(s => phrase.Of(s.Words))));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.basis")));
        blocks.Add(ReportBlock.Paragraph(seen.WeakestBasis is { } basis
            ? phrase.Of(Phrase.Code("report.basis.weakest").With("kind", phrase.Of("basis." + basis.Kind)).With("document", basis.Document))
            : phrase.Of("report.basis.none")));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(seen.Cautions.Select(c => phrase.Of(c.Code))));
        return TextRendering.Of(blocks);
    }

    private static string LeadOf(ClutchReview review) => review.Setting is not null ? "clutchReport.lead.setting"
        : review.Device.IsStuck ? "clutchReport.lead.stuck"
        : !review.IsKnown ? "clutchReport.lead.notKnown"
        : review.Torque.MayBeTrustedToSlip ? "clutchReport.lead.trusted"
        : "clutchReport.lead.untrusted";

    private static IEnumerable<string> Torques(ClutchReview review, Phrase phrase)
    {
        yield return phrase.Of(Phrase.Code("clutchReport.slip").With("band", BandWords.Of(review.Device.Running, phrase)));
        yield return phrase.Of(Phrase.Code("clutchReport.breakaway").With("band", BandWords.Of(review.Device.Breakaway, phrase)));
        yield return phrase.Of("clutchReport.source." + review.Torque.Source);
        if (review.Torque.Source == SlipTorqueSource.Calculated)
        {
            yield return phrase.Of("clutchReport.assumption." + review.Torque.Assumption);
        }

        yield return Line("clutchReport.clamp", review.ClampForce?.Newtons, QuantityKind.Force, phrase);
        yield return Line("clutchReport.length", Meters(review.SpringLength), QuantityKind.Length, phrase);
        yield return Line("clutchReport.travel", Meters(review.TravelToSolid), QuantityKind.Length, phrase);
        yield return Line("clutchReport.pressure", review.FacingPressure?.Pascals, QuantityKind.SurfacePressure, phrase);
    }

    private static void AddSetting(ClutchReview review, ClutchSetting setting, Phrase phrase, List<ReportBlock> blocks)
    {
        string wanted = phrase.Quantity(setting.Wanted.NewtonMeters, QuantityKind.Torque);
        blocks.Add(ReportBlock.Heading(phrase.Of(Phrase.Code("clutchReport.setting").With("wanted", wanted))));
        if (!setting.IsReached)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("clutchReport.setting.notReached")));
            return;
        }

        var lines = new List<string> { Line("clutchReport.setting.length", Meters(setting.SpringLength), QuantityKind.Length, phrase) };
        if (setting.NutTurns is { } turns)
        {
            lines.Add(phrase.Of(Phrase.Code("clutchReport.setting.turns").With("turns", QuantityKind.Number, turns)));
            lines.Add(Line("clutchReport.setting.perTurn", setting.TorquePerTurn?.NewtonMeters, QuantityKind.Torque, phrase));
        }

        lines.Add(Line(
            "clutchReport.setting.perMillimeter", setting.TorqueLostPerMillimeterOfWear?.NewtonMeters, QuantityKind.Torque, phrase));
        lines.Add(Line("clutchReport.travel", Meters(review.TravelToSolid), QuantityKind.Length, phrase));
        blocks.Add(ReportBlock.Bullets(lines));
    }

    private static IEnumerable<string> Heat(ClutchReview review, Phrase phrase)
    {
        if (review.Slip is not { } slip)
        {
            yield return phrase.Of("clutchReport.heat.notKnown");
            yield break;
        }

        yield return Line("clutchReport.heat.power", (double)slip.PeakPower.Watts, QuantityKind.Power, phrase);
        if (review.Heat is null)
        {
            yield return phrase.Of("clutchReport.heat.timesNotKnown");
            yield break;
        }

        yield return Line("clutchReport.heat.limit", review.TimeToLimit?.Seconds, QuantityKind.Time, phrase);
        yield return Line("clutchReport.heat.maximum", review.TimeToMaximum?.Seconds, QuantityKind.Time, phrase);
        if (review.TimeToSmoke is { } smoke)
        {
            yield return Line("clutchReport.heat.smoke", smoke.Seconds, QuantityKind.Time, phrase);
        }
    }

    private static double? Meters(Length? length) => length?.Meters;

    private static string Line(string code, double? si, QuantityKind kind, Phrase phrase) => phrase.Of(Phrase.Code(code).With(
        "value", si is { } value ? phrase.Quantity(value, kind) : phrase.Of("band.notKnown")));
}
