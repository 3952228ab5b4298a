using Driveline.Findings;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Letters;

/// <summary>Lengths as far as an owner sets them: to a sixteenth of an inch, or to a millimeter.</summary>
internal static class CoarseLengths
{
    private const double Sixteenth = 0.0254 / 16;
    private const double Millimeter = 1e-3;

    /// <summary>The finding with every length rounded; one that would round to nothing is left as it is.</summary>
    public static Finding Of(Finding finding, Phrase phrase) => finding.Parameters.Aggregate(
        Finding.Of(finding.Code, finding.Severity),
        (rounded, p) => p.Text is { } text ? rounded.With(p.Name, text)
            : p.Kind != QuantityKind.Length ? rounded.With(p.Name, p.Kind, p.Value)
            : phrase.Units == DisplayUnits.UsCustomary ? rounded.With(p.Name, p.Kind, Rounded(p.Value))
            : Math.Abs(p.Value) < Millimeter ? rounded.With(p.Name, p.Kind, p.Value)
            : rounded.With(p.Name, phrase.Number(p.Value / Millimeter, "F0") + "\u00A0mm"));

    private static double Rounded(double si)
    {
        double rounded = Math.Round(si / Sixteenth) * Sixteenth;
        return rounded == 0 ? si : rounded;
    }
}
