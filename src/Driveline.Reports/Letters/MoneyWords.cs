using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>An amount of money as people read it: whole from 100 on, two places below.</summary>
internal static class MoneyWords
{
    private const double Whole = 99.995;

    public static string Of(double amount, Phrase phrase) => double.IsInfinity(amount) ? phrase.Of("report.ladder.open")
        : Math.Abs(amount) < Whole ? phrase.Number(amount, "0.##") : phrase.Number(amount, "F0");
}
