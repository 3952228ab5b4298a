using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using UnitsNet;

namespace Driveline.Reports.Clutches;

/// <summary>The content of a clutch's report, once for every form it is printed in. The cautions always come last.</summary>
internal static class ClutchReport
{
    public static IReadOnlyList<ReportBlock> Checked(
        ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options) => Of(
            review ?? throw new ArgumentNullException(nameof(review)),
            procedures ?? throw new ArgumentNullException(nameof(procedures)),
            options ?? throw new ArgumentNullException(nameof(options)));

    private static List<ReportBlock> Of(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock> { ReportBlock.Title(CleanText.Title(options.Title ?? phrase.Capital(review.Device.Name))) };
        blocks.Add(ReportBlock.Lead(
            phrase.Of(Phrase.Code(LeadOf(review)).With("name", phrase.Capital(review.Device.Name))), ToneOf(review)));
        if (review.Setting is { } setting)
        {
            AddSetting(review, setting, phrase, blocks);
        }

        blocks.Add(ReportBlock.Heading(phrase.Of(
            review.Setting is { IsReached: true } ? "clutchReport.torque.set" : "clutchReport.torque")));
        blocks.Add(ReportBlock.Bullets(Torques(review, phrase)));
        blocks.AddRange(ReportBlock.PictureIf(f => ClutchPicture.SettingDrawing(review.Torque, null, null, options, f)));
        if (review.Torque.Clutch is { } pack)
        {
            blocks.AddRange(ReportBlock.PictureIf(f => ClutchPicture.SectionDrawing(pack, options, f)));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("clutchReport.heat")));
        blocks.Add(ReportBlock.Bullets(Heat(review, phrase)));
        blocks.AddRange(ReportBlock.PictureIf(f => ClutchPicture.TemperatureDrawing(review, options, f)));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
        IReadOnlyList<Finding> findings = review.Findings;
        blocks.Add(findings.Count > 0
            ? ReportBlock.Bullets(findings.Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
        foreach (ServiceProcedure procedure in procedures)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of(procedure.Code)));
            blocks.Add(ReportBlock.Steps(procedure.Steps.Select(s => phrase.Of(s.Words))));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("report.basis")));
        blocks.Add(ReportBlock.Paragraph(review.WeakestBasis is { } basis
            ? phrase.Of(Phrase.Code("report.basis.weakest").With("kind", phrase.Of("basis." + basis.Kind)).With("document", basis.Document))
            : phrase.Of("report.basis.none")));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(review.Cautions.Select(c => phrase.Of(c.Code))));
        return blocks;
    }

    private static LeadTone ToneOf(ClutchReview review) => review.Setting is not null ? LeadTone.Neutral
        : review.Device.IsStuck ? LeadTone.Bad
        : !review.IsKnown || !review.Torque.MayBeTrustedToSlip ? LeadTone.Careful
        : LeadTone.Good;

    private static bool Has(ClutchReview review, string code) =>
        review.Findings.Concat(review.Device.Findings).Any(f => f.Code == code);

    private static string LeadOf(ClutchReview review) => review.Setting is not null ? "clutchReport.lead.setting"
        : review.Device.IsStuck ? "clutchReport.lead.stuck"
        : Has(review, ClutchFindings.SpringsSolid) || Has(review, ClutchFindings.ShorterThanSolid) ? "clutchReport.lead.solid"
        : Has(review, DeviceFindings.SlipsTooHot) ? "clutchReport.lead.hot"
        : Has(review, ClutchFindings.Oiled) ? "clutchReport.lead.oiled"
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

        (string Code, double? Seconds)[] times =
        [
            ("clutchReport.heat.limit", review.TimeToLimit?.Seconds), ("clutchReport.heat.smoke", review.TimeToSmoke?.Seconds),
            ("clutchReport.heat.maximum", review.TimeToMaximum?.Seconds),
        ];
        foreach ((string code, double? seconds) in times.OrderBy(t => t.Seconds ?? double.PositiveInfinity))
        {
            if (seconds is not null || code != "clutchReport.heat.smoke")
            {
                yield return Line(code, seconds, QuantityKind.Time, phrase);
            }
        }
    }

    private static double? Meters(Length? length) => length?.Meters;

    private static string Line(string code, double? si, QuantityKind kind, Phrase phrase) => phrase.Of(Phrase.Code(code).With(
        "value", si is { } value ? phrase.Quantity(value, kind) : phrase.Of("band.notKnown")));
}
