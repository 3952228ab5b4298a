using MathNet.Numerics;

namespace Driveline.Sweeps.Factors;

/// <summary>The standard normal distribution.</summary>
internal static class NormalCurve
{
    private const double RootTwo = 1.4142135623730951;

    /// <summary>Chance of at most z.</summary>
    public static double Chance(double z) => 0.5 * SpecialFunctions.Erfc(-z / RootTwo);

    /// <summary>The value below which a share lies; 0 and 1 give the infinities.</summary>
    public static double Quantile(double share) => -RootTwo * SpecialFunctions.ErfcInv(2 * share);
}
