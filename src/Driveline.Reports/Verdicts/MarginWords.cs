using Driveline.Wording;

namespace Driveline.Reports.Verdicts;

/// <summary>A ratio of at least 1 in words: "5% more than", "2.3 times as much as".</summary>
/// <remarks>Room is said of the margin as <see cref="MarginDigits"/> shows it, so that "3% more" and "1.03" are one number.</remarks>
internal static class MarginWords
{
    // Absorbs the rounding of binary fractions.
    private const double Slack = 1e-9;

    /// <summary>How much room a margin above 1 leaves; it never looks larger than it is.</summary>
    public static string Room(double margin, Phrase phrase) => Words(MarginDigits.Shown(margin), false, phrase);

    /// <summary>How far two bands overlap, for a margin below 1 and above 0; it never looks smaller than it is.</summary>
    public static string Overlap(double margin, Phrase phrase) => Words(1 / margin, true, phrase);

    private static string Words(double ratio, bool isUp, Phrase phrase)
    {
        if (ratio >= 2)
        {
            double per = ratio < 20 ? 10 : 1;
            return phrase.Of(Phrase.Code("margin.times").With("times", phrase.Number(Whole(ratio * per, isUp) / per, "0.#")));
        }

        double percent = Whole((ratio - 1) * 100, isUp);
        return percent < 1 ? phrase.Of("margin.least")
            : phrase.Of(Phrase.Code("margin.percent").With("percent", phrase.Number(percent, "0")));
    }

    private static double Whole(double value, bool isUp) => isUp ? Math.Ceiling(value - Slack) : Math.Floor(value + Slack);
}
