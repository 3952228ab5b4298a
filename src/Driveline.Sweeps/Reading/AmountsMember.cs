using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Quantities;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Reading;

/// <summary>
/// Two or three quantities of the kind that the varied fact has, within its range; of a spread the second is a difference.
/// </summary>
internal sealed class AmountsMember(string name, CaseTarget? target, int count, bool isSpread, string doc) : ReadMember(name, doc)
{
    /// <summary>True for mean and standard deviation.</summary>
    public bool IsSpread => isSpread;

    public override string ValueWords => FormattableString.Invariant($"list of {count} quantities");

    public override string PermittedWords => FormattableString.Invariant($"a list of {count} quantities");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (target is null)
        {
            reader.Skip();
            return null;
        }

        if (target.Member.Quantity is not { } quantity)
        {
            walk.Error(CaseErrorKind.WrongKind, reader.TokenStartIndex,
                "\"" + target.Member.Name + "\" is no quantity; it takes values: { \"values\": [ … ] }.", "values", Name, "values");
            reader.Skip();
            return null;
        }

        List<object>? amounts = ListOf.Read<object>(ref reader, walk, PermittedWords, count, count,
            (ref Utf8JsonReader at, CaseWalk w, int index) => isSpread && index == 1 ? (object?)Spread(ref at, w, quantity.Range.Dimension)
                : quantity.Read(ref at, w));
        return amounts?.Select(a => (double)a).ToArray();
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteNumber("minItems", count);
        writer.WriteNumber("maxItems", count);
        writer.WriteStartObject("items");
        writer.WriteStartArray("type");
        writer.WriteStringValue("string");
        writer.WriteStringValue("number");
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static double? Spread(ref Utf8JsonReader reader, CaseWalk walk, Dimension dimension)
    {
        const string Wanted = "a standard deviation above 0";
        long offset = reader.TokenStartIndex;
        string received = walk.Received(ref reader);
        double si = double.NaN;
        string? problem = null;
        bool isRead = reader.TokenType == JsonTokenType.Number
            ? dimension == Dimension.Number && reader.TryGetDouble(out si)
            : reader.TokenType == JsonTokenType.String
                && QuantityText.TryParse(CaseWalk.TextOrNull(ref reader), dimension, out si, out problem);
        if (dimension == Dimension.Temperature)
        {
            problem = "A temperature has no standard deviation here; state it as uniform, triangular or pert.";
            isRead = false;
        }

        if (isRead && si > 0 && double.IsFinite(si))
        {
            return si;
        }

        walk.Error(isRead ? CaseErrorKind.OutOfRange : CaseErrorKind.NotReadable, offset,
            problem ?? "Here " + Wanted + " is wanted, with its unit; got " + received + ".", Wanted, received, null);
        reader.Skip();
        return null;
    }
}
