using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>A hardness reading. Immutable; equal when scale and value are equal.</summary>
public sealed class Hardness : IEquatable<Hardness>
{
    private static readonly char[] Marks = ['H', 'h'];

    // Made when a text may be a reading: a starting program reads grades, and none of them has an H.
    private static Regex Reading => field ??= new(
        @"^\s*(?:(?<s>HV|HBW|HBS|HB|BHN|HRB|HRBW|HRC)\s*:?\s*(?<v>[0-9]+(?:[.,][0-9]+)?)"
            + @"|(?<v>[0-9]+(?:[.,][0-9]+)?)\s*(?<s>HV|HBW|HBS|HB|BHN|HRB|HRBW|HRC)(?:\s*[0-9]+)?)\s*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    private const double Least = 1;

    private Hardness(HardnessScale scale, double value)
    {
        Scale = scale;
        Value = value;
    }

    /// <summary>The scale.</summary>
    public HardnessScale Scale { get; }

    /// <summary>The reading on that scale.</summary>
    public double Value { get; }

    /// <summary>A reading.</summary>
    /// <param name="scale">The scale; not <see cref="HardnessScale.NotKnown"/>.</param>
    /// <param name="value">The reading: HV or HBW 1 to 1000, HRB 1 to 105.5, HRC 1 to 70.</param>
    /// <exception cref="ArgumentException">The scale is not known or the value is off the scale.</exception>
    public static Hardness Of(HardnessScale scale, double value)
    {
        double most = Most(scale) ?? throw new ArgumentException("A hardness needs its scale: HV, HBW, HRB or HRC.", nameof(scale));
        return new Hardness(scale, Guard.Within(value, Least, most, "Hardness", Symbol(scale), nameof(value)));
    }

    /// <summary>A reading as people write it: "HRC 28", "28 HRC", "HV 300", "HBW 241", "300 HV10".</summary>
    /// <exception cref="ArgumentException">The text is not a hardness reading.</exception>
    public static Hardness Parse(string text) => TryParse(text, out Hardness? hardness, out string? problem)
        ? hardness!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The reading in a text, or what is wrong with the text.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Hardness? hardness, [NotNullWhen(false)] out string? problem)
    {
        hardness = null;
        problem = null;
        Match? match = text is { Length: <= 32 } && text.IndexOfAny(Marks) >= 0 ? Reading.Match(text) : null;
        if (match is not { Success: true })
        {
            problem = "A hardness is a scale and a number, such as HRC 28, HV 300, HBW 241 or HRB 85; got \"" + text?.Trim() + "\".";
            return false;
        }

        HardnessScale scale = match.Groups["s"].Value.ToUpperInvariant() switch
        {
            "HV" => HardnessScale.Vickers,
            "HRB" or "HRBW" => HardnessScale.RockwellB,
            "HRC" => HardnessScale.RockwellC,
            _ => HardnessScale.Brinell,
        };
        double value = double.Parse(match.Groups["v"].Value.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture);
        double most = Most(scale)!.Value;
        bool isOnScale = value >= Least && value <= most;
        hardness = isOnScale ? new Hardness(scale, value) : null;
        problem = isOnScale ? null : Guard.RangeText(
            "Hardness", FormattableString.Invariant($"from {Least:G6} to {most:G6} {Symbol(scale)}"), value, Symbol(scale));
        return isOnScale;
    }

    /// <summary>Tensile strength of a steel of this hardness, through the conversion tables.</summary>
    /// <remarks>
    /// Expected: the preferred table of the scale, interpolated. Low and high: the lowest and highest of all tables held, and at
    /// least 5 % to each side, since public tables differ by about that much. Both ends are 95 % intervals. For steel only.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The tables do not reach the reading; the message gives their range.</exception>
    /// <example>HRB 100: expected 800 MPa.</example>
    public StressBand ToTensile() => TryToTensile(out StressBand? tensile)
        ? tensile
        : throw HardnessTables.OffTheTables(this, "hardness");

    /// <summary>Tensile strength of a steel of this hardness; false when no table reaches the reading.</summary>
    public bool TryToTensile([NotNullWhen(true)] out StressBand? tensile) => HardnessTables.TryTensile(this, out tensile);

    /// <inheritdoc/>
    public bool Equals(Hardness? other) => other is not null && Scale == other.Scale && Value.Equals(other.Value);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Hardness);

    /// <inheritdoc/>
    public override int GetHashCode() => ((int)Scale * 397) ^ Value.GetHashCode();

    /// <summary>The reading, e.g. "HRC 28".</summary>
    public override string ToString() => Symbol(Scale) + " " + Value.ToString("0.##", CultureInfo.InvariantCulture);

    internal static string Symbol(HardnessScale scale) => scale switch
    {
        HardnessScale.Vickers => "HV",
        HardnessScale.Brinell => "HBW",
        HardnessScale.RockwellB => "HRB",
        HardnessScale.RockwellC => "HRC",
        _ => "hardness",
    };

    private static double? Most(HardnessScale scale) => scale switch
    {
        HardnessScale.Vickers or HardnessScale.Brinell => 1000,
        HardnessScale.RockwellB => 105.5,
        HardnessScale.RockwellC => 70,
        _ => null,
    };
}
