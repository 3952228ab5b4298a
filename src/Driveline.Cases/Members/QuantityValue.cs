using System.Text.Json;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>Reads, writes and describes one quantity within its range, alone or as the end of a band.</summary>
internal sealed class QuantityValue
{
    public QuantityValue(ValueRange range) => Range = range;

    public ValueRange Range { get; }

    /// <summary>The dimension without its article, e.g. "torque".</summary>
    public string Words
    {
        get
        {
            string words = WrittenUnits.Words(Range.Dimension);
            return words.Substring(words.IndexOf(' ') + 1);
        }
    }

    private bool IsNumber => Range.Dimension == Dimension.Number;

    private string Wanted => IsNumber
        ? "a number or a percentage"
        : WrittenUnits.Words(Range.Dimension) + " as a text with its unit (" + QuantityText.AcceptedUnits(Range.Dimension) + ")";

    public object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        string received = walk.Received(ref reader);
        double si;
        if (IsNumber && reader.TokenType == JsonTokenType.Number)
        {
            if (!reader.TryGetDouble(out si))
            {
                si = double.PositiveInfinity;
            }
        }
        else
        {
            string? text = walk.Text(ref reader, Wanted);
            if (text is null)
            {
                return null;
            }

            if (!QuantityText.TryParse(text, Range.Dimension, out si, out string? problem))
            {
                walk.Error(CaseErrorKind.NotReadable, offset, problem!, Range.Words, received, null);
                return null;
            }
        }

        if (!Range.Contains(si))
        {
            walk.Error(CaseErrorKind.OutOfRange, offset, "This must be " + Range.Words + "; got " + received + ".", Range.Words, received, null);
            return null;
        }

        return si;
    }

    public void Write(Utf8JsonWriter writer, double si)
    {
        if (IsNumber)
        {
            writer.WriteNumberValue(si);
        }
        else
        {
            writer.WriteStringValue(QuantityText.Format(si, Range.Dimension));
        }
    }

    /// <summary>A text with a number and a unit in it; its range stands in words, since a schema cannot convert units.</summary>
    public void WriteSchema(Utf8JsonWriter writer) => WriteSchema(writer, string.Empty);

    /// <summary>The same, with another text that may stand for the quantity.</summary>
    public void WriteSchema(Utf8JsonWriter writer, string orText)
    {
        if (IsNumber)
        {
            writer.WriteStartArray("type");
            writer.WriteStringValue("number");
            writer.WriteStringValue("string");
            writer.WriteEndArray();
            writer.WriteNumber(Range.IncludesLow ? "minimum" : "exclusiveMinimum", Range.Low);
            writer.WriteNumber(Range.IncludesHigh ? "maximum" : "exclusiveMaximum", Range.High);
            return;
        }

        writer.WriteString("type", "string");
        writer.WriteString("pattern", (orText.Length > 0 ? "^" + orText + "$|" : string.Empty) + "[0-9½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒].*[^0-9., ]");
        writer.WriteNumber("maxLength", QuantityText.LongestText);
    }
}
