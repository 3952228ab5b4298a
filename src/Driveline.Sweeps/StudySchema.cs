using Driveline.Cases;
using Driveline.Sweeps.Reading;

namespace Driveline.Sweeps;

/// <summary>The JSON Schema (draft 2020-12) of a study file, made from the same rows as the reader.</summary>
/// <remarks>
/// A case within the study has the schema of its own, <see cref="CaseSchema"/>. Whether a path leads to a fact, and what may stand there,
/// only <see cref="StudyReader"/> knows.
/// </remarks>
public static class StudySchema
{
    /// <summary>The schema as JSON text, indented.</summary>
    public static string Json() => CaseSchema.Json("Driveline study", StudyTables.Own);
}
