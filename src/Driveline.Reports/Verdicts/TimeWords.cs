using Driveline.Findings;

namespace Driveline.Reports.Verdicts;

/// <summary>A time in words: in milliseconds below a tenth of a second, with two digits.</summary>
internal static class TimeWords
{
    public static string Of(double seconds, Phrase phrase)
    {
        double ms = seconds * 1000;
        return ms >= 100 ? phrase.Quantity(seconds, QuantityKind.Time)
            : phrase.Number(ms, ms >= 10 ? "0" : ms >= 1 ? "0.#" : ms >= 0.1 ? "0.##" : "0.####") + " ms";
    }
}
