using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>The JSON Schema (draft 2020-12) of a model file, made from the same rows as the reader.</summary>
/// <remarks>
/// What must hold between members, and the ranges of quantities with units, only <see cref="TorsionModelReader"/> checks.
/// </remarks>
internal static class TorsionModelSchema
{
    /// <summary>The schema as JSON text, indented.</summary>
    public static string Json() => CaseSchema.Json("Driveline torsional model", MemberTables.From(ModelMembers.Table));
}
