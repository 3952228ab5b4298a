namespace Driveline.Reports.Verdicts;

/// <summary>A ratio of at least 1 in words: "5 % more than", "2.3 times as much as".</summary>
internal static class MarginWords
{
    // Absorbs the rounding of binary fractions, so that 1.05 reads as 5 % and not as 4.9 %.
    private const double Slack = 1e-9;

    /// <summary>How much room a margin above 1 leaves; rounded down, so that it never looks larger than it is.</summary>
    public static string Room(double margin, Phrase phrase) => Words(margin, Math.Floor, phrase);

    /// <summary>
    /// How far two bands overlap, for a margin below 1 and above 0; rounded up, so that it never looks smaller than it is.
    /// </summary>
    public static string Overlap(double margin, Phrase phrase) => Words(1 / margin, Math.Ceiling, phrase);

    private static string Words(double ratio, Func<double, double> round, Phrase phrase)
    {
        if (ratio >= 2)
        {
            return phrase.Of(Phrase.Code("margin.times").With("times", Digits(round, ratio, ratio < 20 ? 10 : 1, phrase)));
        }

        double percent = (ratio - 1) * 100;
        return phrase.Of(Phrase.Code("margin.percent").With("percent", Digits(round, percent, percent < 10 ? 10 : 1, phrase)));
    }

    private static string Digits(Func<double, double> round, double value, double per, Phrase phrase)
    {
        double nearest = Math.Round(value * per);
        double rounded = Math.Abs((value * per) - nearest) < Slack * per * 100 ? nearest : round(value * per);
        return phrase.Number(rounded / per, "0.#");
    }
}
