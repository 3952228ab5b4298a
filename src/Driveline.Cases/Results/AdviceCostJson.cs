using System.Text.Json;
using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>
/// Writes what the owner's options cost, cheapest expected first, with the breaks a year at which another becomes cheaper.
/// </summary>
internal static class AdviceCostJson
{
    public static void Write(Utf8JsonWriter json, string name, IReadOnlyList<OwnershipCost> costs)
    {
        if (costs.Count == 0)
        {
            json.WriteNull(name);
            return;
        }

        OwnershipTerms terms = costs[0].Terms;
        json.WriteStartObject(name);
        json.WriteString("currency", terms.Currency);
        json.WriteNumber("years", terms.Years);
        JsonNumbers.Number(json, "discountRate", terms.DiscountRate);
        json.WriteStartArray("options");
        foreach (OwnershipCost cost in costs)
        {
            json.WriteStartObject();
            json.WriteString("name", cost.Option.Name);
            json.WriteString("kind", cost.Option.Kind.ToString());
            json.WriteStartObject("total");
            JsonNumbers.Number(json, "low", cost.Total.Low);
            JsonNumbers.Number(json, "expected", cost.Total.Expected);
            JsonNumbers.Number(json, "high", cost.Total.High);
            json.WriteEndObject();
            JsonNumbers.Number(json, "stuckInLastYear", cost.StuckInLastYear?.Value);
            json.WriteStartArray("breakEven");
            foreach (OwnershipCost other in costs.Where(c => c != cost && cost.Option.BreaksPerYear.SiBand.High > 0))
            {
                json.WriteStartObject();
                json.WriteString("against", other.Option.Name);
                JsonNumbers.Number(json, "breaksPerYear", cost.BreakEvenBreaksPerYear(other));
                JsonNumbers.Number(json, "fewestBreaksPerYear", cost.FewestBreakEvenBreaksPerYear(other));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("weakestBasis", cost.Total.Basis.Kind.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
