using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Reports.Letters;

/// <summary>Lengths as far as an owner sets them: to a sixteenth of an inch, or to a millimeter.</summary>
internal static class CoarseLengths
{
    private const double Sixteenth = 0.0254 / 16;
    private const double Millimeter = 1e-3;

    /// <summary>The finding with every length rounded; one that would round to nothing is left as it is.</summary>
    public static Finding Of(Finding finding, DisplayUnits units)
    {
        double step = units == DisplayUnits.UsCustomary ? Sixteenth : Millimeter;
        return finding.Parameters.Aggregate(
            Finding.Of(finding.Code, finding.Severity),
            (rounded, p) => p.Text is { } text ? rounded.With(p.Name, text)
                : rounded.With(p.Name, p.Kind, p.Kind == QuantityKind.Length ? Rounded(p.Value, step) : p.Value));
    }

    private static double Rounded(double si, double step)
    {
        double rounded = Math.Round(si / step) * step;
        return rounded == 0 ? si : rounded;
    }
}
