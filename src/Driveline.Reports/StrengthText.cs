using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.ShearBolts;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>What a bolt of a grade carries, as plain text.</summary>
public static class StrengthText
{
    /// <summary>The English text in metric units.</summary>
    public static string Of(BoltStrength strength) => Of(strength, DisplayUnits.Metric);

    /// <summary>The English text in units of choice.</summary>
    /// <exception cref="ArgumentNullException">The strength is missing.</exception>
    public static string Of(BoltStrength strength, DisplayUnits units) => Of(strength, units, Language.English);

    /// <summary>The text in units and language of choice.</summary>
    /// <exception cref="ArgumentNullException">The strength is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public static string Of(BoltStrength strength, DisplayUnits units, Language language) =>
        Of(strength, ReportOptions.Default.WithUnits(units).WithLanguage(language));

    /// <summary>The text with options: units, words, and the width of the window. Its title is the bolt.</summary>
    /// <exception cref="ArgumentNullException">The strength or the options are missing.</exception>
    public static string Of(BoltStrength strength, ReportOptions options)
    {
        ScrewThread thread = (strength ?? throw new ArgumentNullException(nameof(strength))).Thread;
        var phrase = new Phrase((options ?? throw new ArgumentNullException(nameof(options))).Texts, options.Units);
        ShearBolt bolt = ShearBolt.Of(thread, strength.Grade);
        ForceBand shank = ShearPlane.Of(bolt.With(PlaneThrough.Shank)).Load;
        ForceBand threaded = ShearPlane.Of(bolt.With(PlaneThrough.Thread)).Load;
        ReportBlock[] blocks =
        [
            ReportBlock.Title(thread.Designation + " " + phrase.Name(strength.Grade.Designation)),
            ReportBlock.Bullets(
            [
                Line("strength.proof", strength.ProofLoad?.Newtons, phrase),
                Line("strength.tensile", strength.MinimumTensileLoad.Newtons, phrase),
            ]),
            ReportBlock.Table(
            [
                [phrase.Of("strength.loads"), phrase.Of("report.ladder.low"), phrase.Of("report.ladder.expected"),
                    phrase.Of("report.ladder.high")],
                Row("strength.tension", strength.TensileLoad, phrase),
                Row("strength.shank", shank, phrase),
                Row("strength.thread", threaded, phrase),
            ]),
            ReportBlock.Heading(phrase.Of("sheet.bases")),
            ReportBlock.Bullets(
                BasisWords.Each([strength.TensileLoad.Basis, shank.Basis, threaded.Basis], [strength.MinimumTensileLoadBasis], phrase)),
            ReportBlock.Paragraph(phrase.Of("caution.licensedPractice")),
        ];
        return TextRendering.Of(blocks, options.TextWidth);
    }

    private static string Line(string code, double? newtons, Phrase phrase) => phrase.Of(Phrase.Code(code).With(
        "load", newtons is { } load ? phrase.Quantity(load, QuantityKind.Force) : phrase.Of("band.notKnown")));

    private static string[] Row(string code, ForceBand load, Phrase phrase) =>
    [
        phrase.Of(code),
        .. new[] { load.Low, load.Expected, load.High }.Select(end => end is { } force
            ? phrase.Quantity(force.Newtons, QuantityKind.Force)
            : phrase.Of("report.ladder.open")),
    ];
}
