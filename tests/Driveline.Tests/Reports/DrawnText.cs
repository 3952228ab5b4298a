using System.Globalization;
using System.Xml.Linq;

namespace Driveline.Tests.Reports;

/// <summary>A text of a picture and where it stands.</summary>
internal sealed record DrawnText(string Words, double X, double Y, string Anchor, double Size)
{
    /// <summary>The number it is, in any language; null when it is none.</summary>
    public double? Number => double.TryParse(Words.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
        ? value : null;

    public static DrawnText Of(XElement text)
    {
        double size = Of(text, "font-size");
        return new DrawnText(
            text.Value, Of(text, "x"), Of(text, "y") - (0.35 * size), text.Attribute("text-anchor")?.Value ?? "start", size);
    }

    private static double Of(XElement text, string name) => double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
