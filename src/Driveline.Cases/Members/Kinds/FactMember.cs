using System.Text.Json;
using Driveline.Advice;

namespace Driveline.Cases.Members;

/// <summary>The answer to a question of the advice's catalogue; "notKnown" says that the owner was asked and does not know.</summary>
internal sealed class FactMember : ReferenceMember<Fact>
{
    private readonly ChoiceNames answers;

    public FactMember(FactQuestion question, string doc)
        : base(question.Code, doc) => answers = AnswersTo(question);

    public override string ValueWords => "choice";

    public override string? PermittedWords => answers.PermittedWords;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => answers.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue(answers.NameOf(value));

    public override void WriteSchema(Utf8JsonWriter writer) => answers.WriteSchema(writer);

    internal static ChoiceNames AnswersTo(FactQuestion question) =>
        new(question.Answers.Append(Fact.NotKnown).Select(a => new KeyValuePair<string, object>(a, Fact.Of(question.Code, a))));
}
