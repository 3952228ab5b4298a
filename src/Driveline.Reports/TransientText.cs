using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Torsion;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>What a torsional run found, as plain text.</summary>
public static class TransientText
{
    private const int MostEvents = 200;

    /// <summary>The English text in metric units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(TransientResult result, string title) => Of(result, title, DisplayUnits.Metric, Language.English);

    /// <summary>The text in units and language of choice.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public static string Of(TransientResult result, string title, DisplayUnits units, Language language) => Of(
        result,
        ReportOptions.Default.WithUnits(units).WithLanguage(language).WithTitle(title ?? throw new ArgumentNullException(nameof(title))));

    /// <summary>The text with options: title, units, words, and the width of the window.</summary>
    /// <exception cref="ArgumentNullException">The result or the options are missing.</exception>
    public static string Of(TransientResult result, ReportOptions options)
    {
        TorsionModel model = (result ?? throw new ArgumentNullException(nameof(result))).Model;
        var phrase = new Phrase((options ?? throw new ArgumentNullException(nameof(options))).Texts, options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        blocks.AddRange(result.Findings.Select(f => ReportBlock.Paragraph(phrase.Of(f))));
        blocks.Add(ReportBlock.Heading(phrase.Of("transient.events")));
        blocks.Add(result.EventCount == 0
            ? ReportBlock.Paragraph(phrase.Of("transient.noEvents"))
            : ReportBlock.Table([Heads(phrase, "transient.time", "transient.event", "transient.element"), .. Events(result, phrase)]));
        if (result.EventCount > MostEvents)
        {
            blocks.Add(ReportBlock.Paragraph(
                phrase.Of(Phrase.Code("transient.moreEvents").With("events", QuantityKind.Count, result.EventCount - MostEvents))));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("transient.peaks")));
        blocks.Add(ReportBlock.Table(
        [
            Heads(phrase, "transient.element", "transient.forward", "transient.time", "transient.reverse", "transient.time"),
            .. model.Elements.Select(e => Peak(result, e, phrase)),
        ]));
        blocks.Add(ReportBlock.Heading(phrase.Of(Phrase.Code("transient.atEnd").With("time", QuantityKind.Time, result.Time.Seconds))));
        blocks.Add(ReportBlock.Table(
        [
            Heads(phrase, "transient.rotor", "transient.speed", "transient.turned"),
            .. model.Rotors.Select(r => new[]
            {
                CleanText.Name(r),
                phrase.Quantity(result.Speed(r).RadiansPerSecond, QuantityKind.RotationalSpeed),
                phrase.Quantity(result.Turned(r).Radians, QuantityKind.Angle),
            }),
        ]));
        return TextRendering.Of(blocks, options.TextWidth);
    }

    private static string[] Heads(Phrase phrase, params string[] codes) => Array.ConvertAll(codes, phrase.Of);

    private static IEnumerable<string[]> Events(TransientResult result, Phrase phrase) =>
        Enumerable.Range(0, Math.Min(result.EventCount, MostEvents)).Select(i => result.Event(i)).Select(e => new[]
        {
            phrase.Quantity(e.Time.Seconds, QuantityKind.Time),
            phrase.Of("transient.event." + e.Kind),
            CleanText.Name(e.Part),
        });

    private static string[] Peak(TransientResult result, string element, Phrase phrase)
    {
        TorquePeak forward = result.Peak(element);
        TorquePeak reverse = result.ReversePeak(element);
        return
        [
            CleanText.Name(element),
            forward.Own is { } most ? phrase.Quantity(most.NewtonMeters, QuantityKind.Torque) : phrase.Of("report.ladder.open"),
            phrase.Quantity(forward.Time.Seconds, QuantityKind.Time),
            reverse.Own is { } least ? phrase.Quantity(least.NewtonMeters, QuantityKind.Torque) : phrase.Of("report.ladder.open"),
            phrase.Quantity(reverse.Time.Seconds, QuantityKind.Time),
        ];
    }
}
