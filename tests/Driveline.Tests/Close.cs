namespace Driveline.Tests;

/// <summary>Comparison with a stated tolerance and the source of the expectation in the message.</summary>
internal static class Close
{
    [ThreadStatic]
    private static List<(double Deviation, string Source)>? record;

    [ThreadStatic]
    private static string? cited;

    /// <summary>Names the document that a row is held against, where neither the row nor a comparison does.</summary>
    public static void Cite(string source) => cited ??= source;

    public static void Absolute(double expected, double actual, double tolerance, string source)
    {
        Record(expected, actual, source);
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            FormattableString.Invariant($"expected {expected:G9} ± {tolerance:G3}, got {actual:G9}; {source}"));
    }

    public static void Relative(double expected, double actual, double tolerance, string source) =>
        Absolute(expected, actual, tolerance * Math.Abs(expected), source);

    /// <summary>Within a tolerance; the row names the source.</summary>
    public static void Within(double expected, double actual, double tolerance)
    {
        Record(expected, actual, string.Empty);
        Assert.Equal(expected, actual, tolerance);
    }

    /// <summary>Equal when rounded to so many decimals; the row names the source.</summary>
    public static void Digits(double expected, double actual, int decimals)
    {
        Record(expected, actual, string.Empty);
        Assert.Equal(expected, actual, decimals);
    }

    /// <summary>
    /// Every comparison of some work: how far off, as a share of what was expected, and against which source; and what was cited.
    /// </summary>
    public static (IReadOnlyList<(double Deviation, string Source)> Compared, string? Cited) Recorded(Action work)
    {
        record = [];
        cited = null;
        try
        {
            work();
            return (record, cited);
        }
        finally
        {
            record = null;
            cited = null;
        }
    }

    private static void Record(double expected, double actual, string source) =>
        record?.Add((expected == 0 ? Math.Abs(actual) : Math.Abs((actual / expected) - 1), source));
}
