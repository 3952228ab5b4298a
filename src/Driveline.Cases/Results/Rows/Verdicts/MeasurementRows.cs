using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>What to measure or look up next.</summary>
internal static class MeasurementRows
{
    public static readonly ShapeOf<Measurement> Shape = new ShapeOf<Measurement>("measurement", "What to measure or look up next.")
        .Text("code", m => m.Code, "Stable code.")
        .Words("text", (m, texts, units) => texts.Of(m.Code, units), "It in words.")
        .MaybeText("subject", m => m.Subject, "The part or device it is about; null when it is about none.")
        .Texts("subjects", m => m.Subjects, "All parts and devices it is about.")
        .Text("reason", m => m.Reason, "Code of the finding that asks for it.")
        .Number("minutes", m => m.Minutes, "Minutes it takes.")
        .Choice("where", m => m.Place, "Where it is done.")
        .Texts("changes", Changes, "The answers it may change: guards, quiet, asSpecified.");

    private static IReadOnlyList<string> Changes(Measurement measurement)
    {
        var changes = new List<string>();
        changes.AddRange(measurement.Changes.HasFlag(Bars.Guards) ? ["guards"] : []);
        changes.AddRange(measurement.Changes.HasFlag(Bars.Quiet) ? ["quiet"] : []);
        changes.AddRange(measurement.ChangesAsSpecified ? ["asSpecified"] : []);
        return changes;
    }
}
