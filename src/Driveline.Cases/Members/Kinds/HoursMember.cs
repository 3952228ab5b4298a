using System.Text.Json;
using Driveline.Advice;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>Hours between breaks: a number where somebody counted, else an answer of the catalogue.</summary>
internal sealed class HoursMember : ReferenceMember<Fact>
{
    private readonly QuantityValue hours = new(ValueRange.Of(Dimension.Number, "(0; 100000]"));
    private readonly ChoiceNames answers;

    public HoursMember(FactQuestion question, string doc)
        : base(question.Code, doc) => answers = FactMember.AnswersTo(question);

    public override string ValueWords => "number or choice";

    public override string? PermittedWords => hours.Range.Words + " hours, or " + answers.PermittedWords;

    /// <summary>The answer; a number of hours amounts to one: under 1, to 10, to 50, or more.</summary>
    public override Fact FactOf(object value) => value is double counted
        ? Fact.Of(Name, counted < 1 ? "under1h" : counted <= 10 ? "from1to10h" : counted <= 50 ? "from10to50h" : "over50h")
        : (Fact)value;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) =>
        reader.TokenType == JsonTokenType.Number || IsNumberText(CaseWalk.TextOrNull(ref reader)) ? hours.Read(ref reader, walk)
            : answers.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value)
    {
        if (value is double counted)
        {
            hours.Write(writer, counted);
        }
        else
        {
            writer.WriteStringValue(answers.NameOf(value));
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
        answers.WriteSchema(writer);
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    private static bool IsNumberText(string? text) => text is { Length: > 0 } && (char.IsDigit(text[0]) || text[0] is '-' or '+' or '.');
}
