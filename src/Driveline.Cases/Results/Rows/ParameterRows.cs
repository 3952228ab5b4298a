using Driveline.Findings;

namespace Driveline.Cases.Results;

/// <summary>A typed value of a finding.</summary>
internal static class ParameterRows
{
    public static readonly ShapeOf<FindingParameter> Shape = new ShapeOf<FindingParameter>("parameter", "A typed value of a finding.")
        .Text("name", p => p.Name, "Name, stable as the code is.")
        .Choice("kind", p => p.Kind, "What the value is; a number is in SI: N·m, m, Pa, N, W, rad/s, rad, kg·m², J, s, K.")
        .Add("value", ResultType.Any, "The value.", (json, p, _) =>
        {
            if (p.Text is { } text)
            {
                json.Text(text);
            }
            else
            {
                JsonNumbers.Value(json, p.Value);
            }
        });
}
