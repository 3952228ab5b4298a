using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>An answer to one of the questions, e.g. ("hubTurns", "freely"). Immutable; equal when both codes are.</summary>
public sealed class Fact : IEquatable<Fact>
{
    /// <summary>The answer of somebody who was asked and does not know; it changes nothing.</summary>
    public const string NotKnown = "notKnown";

    private Fact(string question, string answer)
    {
        Question = question;
        Answer = answer;
    }

    /// <summary>Code of the question.</summary>
    public string Question { get; }

    /// <summary>Code of the answer.</summary>
    public string Answer { get; }

    /// <summary>Code of its text, e.g. "fact.hubTurns.freely".</summary>
    public string Code => "fact." + Question + "." + Answer;

    /// <summary>An answer to a question of the catalogue.</summary>
    /// <exception cref="ArgumentException">The question or the answer is not in the catalogue; the message lists what is.</exception>
    public static Fact Of(string question, string answer)
    {
        FactQuestion known = FactQuestion.Get(question);
        Guard.NotNull(answer, nameof(answer));
        return answer == NotKnown || known.Answers.Contains(answer)
            ? new Fact(question, answer)
            : throw new ArgumentException(
                "'" + answer + "' is not an answer to '" + question + "'; answers: " + string.Join(", ", known.Answers) + ", " + NotKnown
                    + ".", nameof(answer));
    }

    /// <inheritdoc/>
    public bool Equals(Fact? other) => other is not null && Question == other.Question && Answer == other.Answer;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Fact);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Code);

    /// <inheritdoc/>
    public override string ToString() => Question + " = " + Answer;
}
