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

    /// <summary>The likeliest cause, or that not enough is known.</summary>
    public static string Lead(Diagnosis diagnosis, Phrase phrase) =>
        diagnosis.IsEnoughKnown ? Likely("letter.likely", diagnosis, phrase) : phrase.Of("advice.checkFirst");

    /// <summary>The likeliest cause with its chance, in a sentence of that code.</summary>
    public static string Likely(string code, Diagnosis diagnosis, Phrase phrase) => phrase.Of(Phrase.Code(code)
        .With("probability", QuantityKind.Probability, diagnosis.Causes[0].Probability.Value)
        .With("text", phrase.Of(AdviceCodes.Of(diagnosis.Causes[0].Cause))));

    public static void Add(Diagnosis diagnosis, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.causes")));
        LikelyCause[] named = [.. diagnosis.Causes
            .Where((c, k) => c.Cause != Cause.NotKnown && (k < Most || c.IsSeen) && (c.Probability.Value >= WorthNaming || c.IsSeen))];
        foreach (LikelyCause cause in named)
        {
            string text = phrase.Of(Phrase.Code("letter.cause")
                .With("text", phrase.Of(AdviceCodes.Of(cause.Cause)))
                .With("probability", QuantityKind.Probability, cause.Probability.Value));
            blocks.Add(ReportBlock.Paragraph(cause.IsSeen ? text + " " + phrase.Of("letter.cause.seen") : text));
            string[] reasons = [.. Reasons("letter.because", cause.Because, phrase), .. Reasons("letter.against", cause.Against, phrase)];
            if (reasons.Length > 0)
            {
                blocks.Add(ReportBlock.Bullets(reasons));
            }
        }

        double rest = 1 - named.Sum(c => c.Probability.Value);
        blocks.Add(ReportBlock.Paragraph(
            phrase.Of(Phrase.Code("letter.rest").With("probability", QuantityKind.Probability, Math.Max(0, rest)))));
    }

    private static IEnumerable<string> Reasons(string code, IReadOnlyList<Reason> reasons, Phrase phrase) => reasons.Take(MostReasons)
        .Select(r => phrase.Of(
        Phrase.Code(code).With("text", phrase.Of(r.Finding)).With("factor", Factor(r.Factor, phrase))));

    // Two digits are more than the table knows.
    private static string Factor(double factor, Phrase phrase)
    {
        double times = factor >= 1 ? factor : 1 / factor;
        return phrase.Of(Phrase.Code(factor >= 1 ? "advice.reasonFactor" : "advice.reasonFactorLess")
            .With("factor", phrase.Number(times, times < 9.5 ? "0.#" : "F0")));
    }
}
