using Driveline.Advice;

namespace Driveline.Cases.Members;

/// <summary>The answer to a question of the advice's catalogue; "notKnown" says that the owner was asked and does not know.</summary>
internal sealed class FactMember : NamesMember<Fact>
{
    public FactMember(FactQuestion question, string doc)
        : base(question.Code, Choices(question), doc)
    {
    }

    internal static IEnumerable<KeyValuePair<string, Fact>> Choices(FactQuestion question) =>
        question.Answers.Append(Fact.NotKnown).Select(a => new KeyValuePair<string, Fact>(a, Fact.Of(question.Code, a)));
}
