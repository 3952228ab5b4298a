namespace Driveline.Tests;

/// <summary>Comparison with a stated tolerance and the source of the expectation in the message.</summary>
internal static class Close
{
    public static void Absolute(double expected, double actual, double tolerance, string source) =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            FormattableString.Invariant($"expected {expected:G9} ± {tolerance:G3}, got {actual:G9}; {source}"));

    public static void Relative(double expected, double actual, double tolerance, string source) =>
        Absolute(expected, actual, tolerance * Math.Abs(expected), source);
}
