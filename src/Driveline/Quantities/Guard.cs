using System.Globalization;

namespace Driveline.Quantities;

/// <summary>Checks at the public door: each message names the quantity, the permitted range, and what was received with its unit.</summary>
internal static class Guard
{
    /// <summary>True when the value is neither NaN nor infinite.</summary>
    public static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);

    /// <summary>A finite value above zero.</summary>
    public static double Positive(double si, string quantity, string unit, string parameter) =>
        si > 0 && IsFinite(si) ? si : throw OutOfRange(quantity, "a finite value above 0 " + unit, si, unit, parameter);

    /// <summary>A finite value of zero or more.</summary>
    public static double NotNegative(double si, string quantity, string unit, string parameter) =>
        si >= 0 && IsFinite(si) ? si : throw OutOfRange(quantity, "a finite value of 0 " + unit + " or more", si, unit, parameter);

    /// <summary>A finite value within [low, high].</summary>
    public static double Within(double si, double low, double high, string quantity, string unit, string parameter) =>
        si >= low && si <= high
            ? si
            : throw OutOfRange(quantity, FormattableString.Invariant($"from {low:G6} to {high:G6} {unit}"), si, unit, parameter);

    /// <summary>A whole number within [low, high].</summary>
    public static int Within(int value, int low, int high, string quantity, string parameter) =>
        value >= low && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(
                parameter, FormattableString.Invariant($"{quantity} must be from {low} to {high}; got {value}."));

    /// <summary>A whole number of zero or more.</summary>
    public static long NotNegative(long value, string quantity, string parameter) => value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(parameter, FormattableString.Invariant($"{quantity} must be 0 or more; got {value}."));

    /// <summary>An argument that is not null.</summary>
    public static T NotNull<T>(T? value, string parameter)
        where T : class => value ?? throw new ArgumentNullException(parameter);

    /// <summary>A text that is not empty.</summary>
    public static string NotBlank(string? value, string quantity, string parameter) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException(quantity + " must be a text that is not empty; got none.", parameter)
            : value!;

    /// <summary>The exception for a value out of its range.</summary>
    public static ArgumentOutOfRangeException OutOfRange(string quantity, string range, double si, string unit, string parameter) =>
        new(parameter, RangeText(quantity, range, si, unit));

    /// <summary>What a value outside its range is told.</summary>
    public static string RangeText(string quantity, string range, double si, string unit) =>
        string.Format(CultureInfo.InvariantCulture, "{0} must be {1}; got {2:G6}{3}{4}.", quantity, range, si, unit.Length > 0 ? " "
            : string.Empty, unit);
}
