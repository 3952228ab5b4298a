using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>A permitted range of one quantity, each end included or not, written as an interval: "(0 kW; 1000 kW]".</summary>
internal sealed class ValueRange
{
    private ValueRange(Dimension dimension, double low, bool includesLow, double high, bool includesHigh, string words)
    {
        Dimension = dimension;
        Low = low;
        IncludesLow = includesLow;
        High = high;
        IncludesHigh = includesHigh;
        Words = words;
    }

    public Dimension Dimension { get; }

    public double Low { get; }

    public bool IncludesLow { get; }

    public double High { get; }

    public bool IncludesHigh { get; }

    /// <summary>The range as people say it, e.g. "above 0 kW, up to 1000 kW".</summary>
    public string Words { get; }

    /// <summary>Reads an interval: square bracket = the end is permitted, round = it is not.</summary>
    public static ValueRange Of(Dimension dimension, string interval)
    {
        bool includesLow = interval[0] == '[';
        bool includesHigh = interval[interval.Length - 1] == ']';
        string[] ends = interval.Substring(1, interval.Length - 2).Split(';');
        string low = ends[0].Trim();
        string high = ends[1].Trim();
        string words = includesLow && includesHigh ? "from " + low + " to " + high
            : (includesLow ? "from " : "above ") + low + (includesHigh ? ", up to " : ", below ") + high;
        return new ValueRange(dimension, Parse(low, dimension), includesLow, Parse(high, dimension), includesHigh, words);
    }

    public bool Contains(double si) =>
        (IncludesLow ? si >= Low : si > Low) && (IncludesHigh ? si <= High : si < High);

    private static double Parse(string text, Dimension dimension) =>
        QuantityText.TryParse(text, dimension, out double si, out string? problem) ? si : throw new FormatException(problem);
}
