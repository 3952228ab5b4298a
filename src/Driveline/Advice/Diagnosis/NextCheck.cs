using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>What to find out next: the most information for the least effort, danger counted.</summary>
public sealed class NextCheck
{
    internal NextCheck(FactQuestion question, double bits, double effort, Cause[] tellsApart)
    {
        Question = question;
        Bits = bits;
        Effort = effort;
        TellsApart = Array.AsReadOnly(tellsApart);
    }

    /// <summary>The question with its possible answers, its place and its cautions.</summary>
    public FactQuestion Question { get; }

    /// <summary>Expected information about the cause, in bits.</summary>
    public double Bits { get; }

    /// <summary>Minutes, with five for asking at all, times 1 at the desk, 1.5 at standstill, 4 from the seat.</summary>
    public double Effort { get; }

    /// <summary>The causes whose chances the answer is expected to move most, most first.</summary>
    public IReadOnlyList<Cause> TellsApart { get; }

    /// <summary>Why it comes first: the causes it tells apart, by their short names.</summary>
    public Finding Why => Finding.Of(AdviceCodes.Why, Severity.Note)
        .With("first", AdviceCodes.InBrief(TellsApart[0]))
        .With("second", AdviceCodes.InBrief(TellsApart[1]))
        .With("third", AdviceCodes.InBrief(TellsApart[2]));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Question.Code}: {Bits:G3} bit, effort {Effort:G3}");
}
