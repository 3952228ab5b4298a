using Driveline.Protection;

namespace Driveline.Reports.Verdicts;

/// <summary>What to measure or look up, with the part that it is about.</summary>
internal static class MeasureSentences
{
    public static string Of(Measurement measurement, Phrase phrase)
    {
        string text = phrase.Of(measurement.Code);
        return measurement.Subject is null ? text
            : phrase.Of(Phrase.Code("report.measure.subject").With("text", text).With("subject", phrase.Name(measurement.Subject)));
    }
}
