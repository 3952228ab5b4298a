using System.Globalization;
using Driveline.Provenance;

namespace Driveline.Advice;

/// <summary>A cost over the years, discounted to now, in the caller's currency; negative when more comes back than goes out.</summary>
/// <remarks>Low and high take every input at its good and at its bad end at once: wider than 95 of 100 outcomes.</remarks>
public sealed class CostEstimate
{
    internal CostEstimate(double low, double expected, double high, Basis basis)
    {
        Low = low;
        Expected = double.IsPositiveInfinity(expected) ? null : expected;
        High = double.IsPositiveInfinity(high) ? null : high;
        Basis = basis;
    }

    /// <summary>Every input at its good end.</summary>
    public double Low { get; }

    /// <summary>Every input as expected; null when one is not known.</summary>
    public double? Expected { get; }

    /// <summary>Every input at its bad end; null when one has no bound.</summary>
    public double? High { get; }

    /// <summary>The weakest basis of the inputs.</summary>
    public Basis Basis { get; }

    /// <inheritdoc/>
    public override string ToString() => Words(Low) + " to " + Words(High) + ", expected " + Words(Expected);

    private static string Words(double? amount) => amount?.ToString("F0", CultureInfo.InvariantCulture) ?? "not known";
}
