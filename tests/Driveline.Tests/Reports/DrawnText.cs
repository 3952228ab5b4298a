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
        string place = text.Attribute("transform")!.Value;
        string[] at = place[(place.IndexOf('(', StringComparison.Ordinal) + 1)..place.IndexOf(')', StringComparison.Ordinal)].Split(',');
        return new DrawnText(
            text.Value, double.Parse(at[0], CultureInfo.InvariantCulture), double.Parse(at[1], CultureInfo.InvariantCulture),
            text.Attribute("text-anchor")!.Value, double.Parse(text.Attribute("font-size")!.Value, CultureInfo.InvariantCulture));
    }
}
