using System.Text.Json;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>Writes what the next grades in the same hole would do.</summary>
internal static class GradeStepJson
{
    public static void WriteAll(Utf8JsonWriter json, IReadOnlyList<NeighbourGrade> neighbours)
    {
        json.WriteStartArray("gradeSteps");
        foreach (NeighbourGrade neighbour in neighbours)
        {
            Write(json, neighbour);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, NeighbourGrade neighbour)
    {
        json.WriteStartObject();
        json.WriteString("grade", neighbour.Grade);
        json.WriteBoolean("isStronger", neighbour.IsStronger);
        json.WriteBoolean("isSpecified", neighbour.IsSpecified);
        JsonNumbers.Band(json, "tripTorqueNm", neighbour.Trip);
        JsonNumbers.Margin(json, "workMargin", neighbour.Verdict.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", neighbour.Verdict.GuardMargin);
        json.WriteString("guards", neighbour.Verdict.Guards.ToString());
        json.WriteString("quiet", neighbour.Verdict.Quiet.ToString());
        json.WriteEndObject();
    }
}
