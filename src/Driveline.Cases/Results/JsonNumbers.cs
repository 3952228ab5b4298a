using System.Text.Json;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>Writes numbers and bands of a result: full precision, invariant; what is not known is null.</summary>
internal static class JsonNumbers
{
    /// <summary>What stands for a value without an end.</summary>
    public const string Unbounded = "unbounded";

    // Beyond it a number is written with an exponent.
    private const double MostWhole = 1e15;

    private static readonly JsonEncodedText UnboundedText = JsonEncodedText.Encode(Unbounded);

    /// <summary>Writes a value: null when it is not known, "unbounded" when it has no end.</summary>
    public static void Value(Utf8JsonWriter json, double? value)
    {
        if (value is not { } number || double.IsNaN(number))
        {
            json.WriteNullValue();
        }
        else if (double.IsPositiveInfinity(number))
        {
            json.WriteStringValue(UnboundedText);
        }
        else if (Math.Abs(number) < MostWhole && number.Equals((long)number) && (number != 0 || 1 / number > 0))
        {
            json.WriteNumberValue((long)number);
        }
        else
        {
            WrittenNumbers.Write(json, number);
        }
    }

    /// <summary>A probability as it is written: never nearer to impossible or certain than anybody knows.</summary>
    public static double Clipped(Probability probability) =>
        Math.Min(1 - Protection.Probability.Floor, Math.Max(Protection.Probability.Floor, probability.Value));

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

    /// <summary>A band as {low, expected, high}; null when not known.</summary>
    public static void Band(Utf8JsonWriter json, string name, QuantityBand? band)
    {
        if (band is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WritePropertyName(name);
        BandRows.Shape.Write(json, band, ResultOptions.Default);
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
