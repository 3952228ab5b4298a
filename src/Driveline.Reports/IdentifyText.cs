using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;
using UnitsNet;
using DisplayUnits = Driveline.Wording.DisplayUnits;

namespace Driveline.Reports;

/// <summary>What a bolt head mark can mean, as plain text.</summary>
public static class IdentifyText
{
    /// <summary>The English text in metric units.</summary>
    public static string Of(HeadMarkIdentification identification) => Of(identification, DisplayUnits.Metric);

    /// <summary>The English text in units of choice.</summary>
    /// <exception cref="ArgumentNullException">The identification is missing.</exception>
    public static string Of(HeadMarkIdentification identification, DisplayUnits units) => Of(identification, units, Language.English);

    /// <summary>The text in units and language of choice.</summary>
    /// <exception cref="ArgumentNullException">The identification is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public static string Of(HeadMarkIdentification identification, DisplayUnits units, Language language) =>
        Of(identification, ReportOptions.Default.WithUnits(units).WithLanguage(language));

    /// <summary>The text with options: units, words, and the width of the window. Its title is the mark.</summary>
    /// <exception cref="ArgumentNullException">The identification or the options are missing.</exception>
    public static string Of(HeadMarkIdentification identification, ReportOptions options)
    {
        HeadMarkIdentification seen = identification ?? throw new ArgumentNullException(nameof(identification));
        var phrase = new Phrase((options ?? throw new ArgumentNullException(nameof(options))).Texts, options.Units);
        var blocks =
            new List<ReportBlock> { ReportBlock.Title(CleanText.Name(seen.Thread.Designation + ", " + phrase.Name(seen.Mark.ToString()))) };
        if (seen.Candidates.Count == 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("identify.none")));
        }
        else
        {
            blocks.Add(ReportBlock.Table(
            [
                [phrase.Of("identify.candidate"), phrase.Of("report.ladder.low"), phrase.Of("report.ladder.high")],
                .. seen.Candidates.Select(c => Row(c, phrase)),
            ]));
        }

        blocks.Add(ReportBlock.Bullets(
            seen.Findings.OrderBy(f => f.Severity).Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f))));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("identify.neverProves")));
        return TextRendering.Of(blocks, options.TextWidth);
    }

    private static string[] Row(HeadMarkCandidate candidate, Phrase phrase) =>
    [
        phrase.Name(candidate.Name) + " (" + phrase.Name(candidate.HeadMark) + ")",
        candidate.Tensile is { } tensile ? Words(tensile.Low, phrase) : phrase.Of("band.notKnown"),
        candidate.Tensile?.High is { } high ? Words(high, phrase) : phrase.Of("report.ladder.open"),
    ];

    private static string Words(Pressure stress, Phrase phrase) => phrase.Quantity(stress.Pascals, QuantityKind.Stress);
}
