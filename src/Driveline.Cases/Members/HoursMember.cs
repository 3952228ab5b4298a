using System.Text.Json;
using Driveline.Advice;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>Hours between breaks: a number where somebody counted, else an answer of the catalogue.</summary>
internal sealed class HoursMember : NamesMember<Fact>
{
    private readonly QuantityValue hours = new(ValueRange.Of(Dimension.Number, "(0; 100000]"));

    public HoursMember(FactQuestion question, string doc)
        : base(question.Code, FactMember.Choices(question), doc)
    {
    }

    public override string ValueWords => "number or choice";

    public override string? PermittedWords => hours.Range.Words + " hours, or " + base.PermittedWords;

    /// <summary>The answer that a number of hours amounts to: under 1, to 10, to 50, or more.</summary>
    public static Fact FactOf(double hours) => Fact.Of(
        "hoursBetweenBreaks", hours < 1 ? "under1h" : hours <= 10 ? "from1to10h" : hours <= 50 ? "from10to50h" : "over50h");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) =>
        reader.TokenType == JsonTokenType.Number || IsNumberText(CaseWalk.TextOrNull(ref reader)) ? hours.Read(ref reader, walk) : base.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value)
    {
        if (value is double counted)
        {
            hours.Write(writer, counted);
        }
        else
        {
            base.Write(writer, value);
        }
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteStartArray("anyOf");
        writer.WriteStartObject();
        writer.WriteString("type", "number");
        writer.WriteNumber("exclusiveMinimum", hours.Range.Low);
        writer.WriteNumber("maximum", hours.Range.High);
        writer.WriteEndObject();
        writer.WriteStartObject();
        base.WriteSchema(writer);
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    public override void Check(object value)
    {
        if (value is not double counted)
        {
            base.Check(value);
        }
        else if (!hours.Range.Contains(counted))
        {
            throw NotPermitted(counted.ToString("G6", System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    private static bool IsNumberText(string? text) => text is { Length: > 0 } && (char.IsDigit(text[0]) || text[0] is '-' or '+' or '.');
}
