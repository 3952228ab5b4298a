using Driveline.Advice;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>The likely causes in words, each with its chance and what speaks for and against it.</summary>
internal static class CauseSentences
{
    private const int Most = 4;
    private const int MostReasons = 5;
    private const double WorthNaming = 0.05;
    private const double Certain = 0.85;
    private const double Better = 0.5;
    private const double Possible = 0.1;
    private const double Strong = 1.5;
    private const int MostOthers = 2;
    private const string DeviceFact = "fact.device.";

    /// <summary>The likeliest cause with its chance, in a sentence of that code.</summary>
    public static string Likely(string code, Diagnosis diagnosis, Phrase phrase) => phrase.Of(Phrase.Code(code)
        .With("probability", QuantityKind.Probability, diagnosis.Causes[0].Probability.Value)
        .With("text", phrase.Of(AdviceCodes.Of(diagnosis.Causes[0].Cause))));

    /// <summary>A fault that somebody has seen, whether or not it is the cause of the trouble.</summary>
    public static string Seen(LikelyCause seen, Phrase phrase) =>
        phrase.Of(Phrase.Code("letter.think.seen").With("cause", phrase.Of("cause." + AdviceCodes.InBrief(seen.Cause))));

    /// <summary>The likeliest cause, how sure that is, and what else it may be; all in words.</summary>
    public static string InWords(Diagnosis diagnosis, Phrase phrase)
    {
        LikelyCause first = diagnosis.Causes[0];
        if (first.Cause == Cause.NotKnown)
        {
            return phrase.Of("letter.think.nothing");
        }

        string sure = !diagnosis.IsEnoughKnown ? "letter.think.open"
            : first.IsSeen ? "letter.think.seen"
            : first.Probability.Value >= Certain ? "letter.think.sure"
            : first.Probability.Value >= Better ? "letter.think.likely"
            : "letter.think.perhaps";
        var sentences =
            new List<string> { phrase.Of(Phrase.Code(sure).With("cause", phrase.Of("cause." + AdviceCodes.InBrief(first.Cause)))) };
        string[] others = [.. Others(diagnosis).Select(c => phrase.Of("cause." + AdviceCodes.InBrief(c.Cause)))];
        if (others.Length > 0)
        {
            sentences.Add(phrase.Of(Phrase.Code(others.Length == 1 ? "letter.think.or" : "letter.think.orTwo")
                .With("first", others[0]).With("second", others[others.Length - 1])));
        }

        bool isPooled = diagnosis.IsEnoughKnown && others.Length > 0 && first.Probability.Value < Better
            && diagnosis.Pooled.Contains(diagnosis.Causes.First(c => c != first && c.Cause != Cause.NotKnown).Cause);
        return string.Join(" ", isPooled ? [.. sentences, phrase.Of("letter.think.pool")] : sentences);
    }

    /// <summary>True unless a seen fault stands alone: which of several is the cause stays a guess.</summary>
    public static bool HoldAGuess(Diagnosis diagnosis) =>
        !diagnosis.IsEnoughKnown || !diagnosis.Causes[0].IsSeen || Others(diagnosis).Any();

    /// <summary>
    /// The facts that speak most for the likeliest cause; none that does so weakly, or that only says what is fitted.
    /// </summary>
    public static IEnumerable<string> MainReasons(Diagnosis diagnosis, Phrase phrase) =>
        !diagnosis.IsEnoughKnown || diagnosis.Causes[0].IsSeen ? []
        : diagnosis.Causes[0].Because
            .Where(r => r.Factor >= Strong && !r.Finding.Code.StartsWith(DeviceFact, StringComparison.Ordinal))
            .OrderByDescending(r => r.Factor).Take(1)
            .Select(r => phrase.Of(Phrase.Code("letter.think.because").With("text", phrase.Of(r.Finding))));

    /// <summary>The causes with their odds; of a machine that has no trouble the seen faults alone.</summary>
    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        Diagnosis diagnosis = advice.Diagnosis;
        bool isNothingTold = LetterRemedies.IsNothingTold(advice);
        LikelyCause[] named = [.. diagnosis.Causes.Where((c, k) => c.Cause != Cause.NotKnown
            && (c.IsSeen || (!isNothingTold && k < Most && c.Probability.Value >= WorthNaming)))];
        if (isNothingTold && named.Length == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of(isNothingTold ? "letter.causes.seen" : "letter.causes")));
        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (LikelyCause cause in named)
        {
            string text = phrase.Of(AdviceCodes.Of(cause.Cause));
            text = isNothingTold ? text : phrase.Of(Phrase.Code("letter.cause")
                .With("text", text).With("probability", QuantityKind.Probability, cause.Probability.Value));
            blocks.Add(ReportBlock.Paragraph(cause.IsSeen ? text + " " + phrase.Of("letter.cause.seen") : text));
            string[] reasons = isNothingTold ? [] :
            [
                .. Reasons("letter.because", cause.Because, said, phrase), .. Reasons("letter.against", cause.Against, said, phrase),
            ];
            if (reasons.Length > 0)
            {
                blocks.Add(ReportBlock.Bullets(reasons));
            }
        }

        if (isNothingTold)
        {
            return;
        }

        double rest = 1 - named.Sum(c => c.Probability.Value);
        blocks.Add(ReportBlock.Paragraph(
            phrase.Of(Phrase.Code("letter.rest").With("probability", QuantityKind.Probability, Math.Max(0, rest)))));
    }

    private static IEnumerable<LikelyCause> Others(Diagnosis diagnosis) => diagnosis.Causes.Skip(1)
        .Where(c => c.Cause != Cause.NotKnown && (c.IsSeen || c.Probability.Value >= Possible)).Take(MostOthers);

    // What the numbers say is said in full once.
    private static IEnumerable<string> Reasons(string code, IReadOnlyList<Reason> reasons, HashSet<string> said, Phrase phrase) => reasons
        .Where(r => r.Factor is >= Strong or <= 1 / Strong).Take(MostReasons)
        .Select(r => phrase.Of(Phrase.Code(code)
            .With("text", said.Add(r.Finding.Code) || r.Finding.Parameters.Count == 0 ? phrase.Of(r.Finding) : phrase.Of("letter.asAbove"))
            .With("factor", Factor(r.Factor, phrase))));

    // Two digits are more than the table knows.
    private static string Factor(double factor, Phrase phrase)
    {
        double times = factor >= 1 ? factor : 1 / factor;
        return phrase.Of(Phrase.Code(factor >= 1 ? "advice.reasonFactor" : "advice.reasonFactorLess")
            .With("factor", phrase.Number(times, times < 9.5 ? "0.#" : "F0")));
    }
}
