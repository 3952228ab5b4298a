using System.Text.Json;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>Writes numbers of a result: full precision, invariant; what is not known is null.</summary>
internal static class JsonNumbers
{
    /// <summary>What stands for a value without an end.</summary>
    public const string Unbounded = "unbounded";

    // Beyond it a number is written with an exponent.
    private const double MostWhole = 1e15;

    private static readonly ResultWord UnboundedWord = ResultWord.Text(Unbounded);

    /// <summary>Writes a value: null when it is not known, "unbounded" when it has no end.</summary>
    public static void Value(ResultWriter json, double? value)
    {
        if (value is not { } number || double.IsNaN(number))
        {
            json.Null();
        }
        else if (double.IsPositiveInfinity(number))
        {
            json.Word(UnboundedWord);
        }
        else if (Math.Abs(number) < MostWhole && number.Equals((long)number) && (number != 0 || 1 / number > 0))
        {
            json.Whole((long)number);
        }
        else
        {
            json.Number(number);
        }
    }

    /// <summary>A probability as it is written: never nearer to impossible or certain than anybody knows.</summary>
    public static double Clipped(Protection.Probability probability) =>
        Math.Min(1 - Protection.Probability.Floor, Math.Max(Protection.Probability.Floor, probability.Value));

    /// <summary>A member of a line; null when it is not known.</summary>
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
}
