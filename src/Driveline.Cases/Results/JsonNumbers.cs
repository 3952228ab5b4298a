using System.Text.Json;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>Writes numbers and bands of a result: full precision, invariant; what is unbounded or not known is null.</summary>
internal static class JsonNumbers
{
    public static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && Guard.IsFinite(number))
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A margin; null when it is not known, and that is every 0 too: the other side has no bound then.</summary>
    public static void Margin(Utf8JsonWriter json, string name, double? margin) => Number(json, name, margin > 0 ? margin : null);

    /// <summary>A band as {low, expected, high}; null when not known.</summary>
    public static void Band(Utf8JsonWriter json, string name, QuantityBand? band)
    {
        if (band is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        Number(json, "low", band.SiBand.Low);
        Number(json, "expected", band.SiBand.Expected);
        Number(json, "high", band.SiBand.High);
        json.WriteEndObject();
    }

    /// <summary>A probability, never below 0.001 or above 0.999: there the shape of the tails decides, and nobody knows it.</summary>
    public static void Probability(Utf8JsonWriter json, string name, Probability? probability) => Number(
        json, name, probability is null ? null
            : Math.Min(1 - Protection.Probability.Floor, Math.Max(Protection.Probability.Floor, probability.Value)));

    /// <summary>Yes or no; null when not known.</summary>
    public static void Flag(Utf8JsonWriter json, string name, bool? value)
    {
        if (value is { } known)
        {
            json.WriteBoolean(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    public static void Text(Utf8JsonWriter json, string name, string? value)
    {
        if (value is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, value);
        }
    }
}
