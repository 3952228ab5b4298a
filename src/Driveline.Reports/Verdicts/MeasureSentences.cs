using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Reports.Verdicts;

/// <summary>What to measure or look up, with what it is about and what it takes.</summary>
internal static class MeasureSentences
{
    public static string Of(Measurement measurement, Phrase phrase)
    {
        string text = phrase.Of(measurement.Code);
        text = measurement.Subjects.Count == 0 ? text
            : phrase.Of(Phrase.Code("report.measure.subject").With("text", text)
                .With("subject", string.Join(", ", measurement.Subjects.Select(s => phrase.Name(s)))));
        return measurement.Minutes is { } minutes
            ? phrase.Of(Phrase.Code("report.measure.effort").With("text", text).With("minutes", QuantityKind.Count, minutes)
                .With("place", phrase.Of("measurePlace." + measurement.Place)))
            : phrase.Of(Phrase.Code("report.measure.maker").With("text", text));
    }
}
