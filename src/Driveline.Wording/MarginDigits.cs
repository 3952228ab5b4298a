using System.Globalization;

namespace Driveline.Wording;

/// <summary>The one way a margin is rounded: cut to two decimals, from 2 on to one, from 20 on to none.</summary>
/// <remarks>Cut and not rounded, so that a margin never looks larger than it is.</remarks>
internal static class MarginDigits
{
    // Absorbs the rounding of binary fractions, so that 1.15 is shown as 1.15 and not as 1.14.
    private const double Slack = 1e-9;

    /// <summary>The margin as it is shown, e.g. 1.03 of 1.0358 and 2.3 of 2.38.</summary>
    public static double Shown(double margin)
    {
        double per = Math.Pow(10, Places(margin));
        return Math.Floor((margin * per) + Slack) / per;
    }

    /// <summary>Its digits.</summary>
    public static string Of(double margin) => Shown(margin).ToString("F" + Places(margin), CultureInfo.InvariantCulture);

    private static int Places(double margin) => margin < 2 ? 2 : margin < 20 ? 1 : 0;
}
