using System.Text.Json;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>Reads, writes and describes one quantity within its range, alone or as the end of a band.</summary>
internal sealed class QuantityValue
{
    private readonly bool takesNumber;

    public QuantityValue(ValueRange range)
        : this(range, range.Dimension == Dimension.Number)
    {
    }

    private QuantityValue(ValueRange range, bool takesNumber)
    {
        Range = range;
        this.takesNumber = takesNumber;
    }

    /// <summary>A quantity that may be a text with its unit or a number in SI.</summary>
    public static QuantityValue OrSiNumber(ValueRange range) => new(range, true);

    public ValueRange Range { get; }

    /// <summary>The dimension without its article, e.g. "torque".</summary>
    public string Words
    {
        get
        {
            string words = WrittenUnits.Words(Range.Dimension);
            words = words.Substring(words.IndexOf(' ') + 1);
            return words + (takesNumber && !IsNumber ? ", or number in " + SiUnit : string.Empty);
        }
    }

    private bool IsNumber => Range.Dimension == Dimension.Number;

    private string SiUnit => WrittenUnits.Of(Range.Dimension)[0].Symbol;

    private string Wanted => IsNumber ? "a number or a percentage"
        : (takesNumber ? "a number in " + SiUnit + ", or " : string.Empty) + WrittenUnits.Words(Range.Dimension)
            + " as a text with its unit (" + QuantityText.AcceptedUnits(Range.Dimension) + ")";

    /// <summary>The quantity in SI; null after an error.</summary>
    public double? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        double si;
        if (reader.TokenType == JsonTokenType.String && !reader.ValueIsEscaped
            && QuantityText.TryReadPlain(reader.ValueSpan, Range.Dimension, out si))
        {
            // As most quantities are written.
        }
        else if (takesNumber && reader.TokenType == JsonTokenType.Number)
        {
            if (!reader.TryGetDouble(out si))
            {
                si = double.PositiveInfinity;
            }
        }
        else
        {
            if (reader.TokenType != JsonTokenType.String)
            {
                walk.WrongKind(ref reader, Wanted);
                return null;
            }

            if (walk.TextOf(ref reader, string.Empty) is not { } text)
            {
                return null;
            }

            if (!QuantityText.TryParse(text, Range.Dimension, out si, out string? problem))
            {
                walk.Error(CaseErrorKind.NotReadable, offset, problem, Range.Words, walk.Received(ref reader), null);
                return null;
            }
        }

        if (!Range.Contains(si))
        {
            string received = walk.Received(ref reader);
            walk.Error(CaseErrorKind.OutOfRange, offset, "This must be " + Range.Words + "; got " + received + ".", Range.Words, received,
                null);
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
        if (takesNumber)
        {
            writer.WriteStartArray("type");
            writer.WriteStringValue("number");
            writer.WriteStringValue("string");
            writer.WriteEndArray();
            writer.WriteNumber(Range.IncludesLow ? "minimum" : "exclusiveMinimum", Range.Low);
            writer.WriteNumber(Range.IncludesHigh ? "maximum" : "exclusiveMaximum", Range.High);
        }
        else
        {
            writer.WriteString("type", "string");
        }

        if (IsNumber)
        {
            return;
        }

        writer.WriteString("pattern", (orText.Length > 0 ? "^" + orText + "$|" : string.Empty) + "[0-9½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒].*[^0-9., ]");
        writer.WriteNumber("maxLength", QuantityText.LongestText);
    }
}
