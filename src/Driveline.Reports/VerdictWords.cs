using Driveline.Protection;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>A verdict in single sentences, for callers who lay out their own page; the same words as in the reports. Immutable.</summary>
public sealed class VerdictWords
{
    private readonly ProtectionVerdict verdict;
    private readonly Texts texts;
    private readonly Phrase phrase;

    private VerdictWords(ProtectionVerdict verdict, Texts texts, DisplayUnits units)
    {
        this.verdict = verdict;
        this.texts = texts;
        phrase = new Phrase(texts, units);
    }

    /// <summary>The words of a verdict in a language, with metric units.</summary>
    /// <exception cref="ArgumentNullException">The verdict is missing.</exception>
    public static VerdictWords Of(ProtectionVerdict verdict, Language language) => Of(verdict, language, DisplayUnits.Metric);

    /// <summary>The words of a verdict in a language and units.</summary>
    /// <exception cref="ArgumentNullException">The verdict is missing.</exception>
    public static VerdictWords Of(ProtectionVerdict verdict, Language language, DisplayUnits units) =>
        Of(verdict, Texts.In(language), units);

    /// <summary>The words of a verdict by texts, which may be the caller's own.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static VerdictWords Of(ProtectionVerdict verdict, Texts texts, DisplayUnits units) => new(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), texts ?? throw new ArgumentNullException(nameof(texts)), units);

    /// <summary>Whether the machine may be used as it is, and what lifts what forbids it.</summary>
    public string Standing() => StandingSentences.InOne(verdict.Standing, phrase);

    /// <summary>The headline sentence.</summary>
    public string Headline() => AnswerSentences.Headline(verdict, phrase);

    /// <summary>Does the protection act before a part is damaged?</summary>
    public string Guards() => AnswerSentences.Guards(verdict, phrase);

    /// <summary>Does it stay quiet in normal work?</summary>
    public string Quiet() => AnswerSentences.Quiet(verdict, phrase);

    /// <summary>What is fitted against what the manual specifies.</summary>
    public string Fitted() => AnswerSentences.Fitted(verdict.FittedAgainstSpecified, phrase);

    /// <summary>What to measure or look up next, most useful first; empty when nothing is in doubt.</summary>
    public IReadOnlyList<string> MeasureNext() => [.. verdict.MeasureNext.Select(m => MeasureSentences.Of(m, phrase))];

    /// <summary>Everything a caller must notice, worst first.</summary>
    public IReadOnlyList<string> Findings() => [.. verdict.Findings.Select(phrase.Of)];

    /// <summary>The cautions that belong to every answer; show them all.</summary>
    public IReadOnlyList<string> Cautions() => [.. verdict.Cautions.Select(c => texts.Of(c.Code))];
}
