using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Reports.Verdicts;

/// <summary>Whether what is fitted is what the manual names, with what speaks for it, against it, and what nobody has looked at.</summary>
internal static class SpecifiedSentences
{
    public static string Of(AsSpecified judged, Phrase phrase)
    {
        IEnumerable<string> sentences = new[] { phrase.Of("asSpecified." + judged.Answer) }
            .Concat(judged.Against.Select(f => Sentence(f, phrase)));
        if (judged.Answer is Answer.Yes or Answer.Maybe)
        {
            sentences = sentences.Concat(judged.For.Select(f => Sentence(f, phrase)));
        }

        if (judged.Answer == Answer.Maybe)
        {
            sentences = sentences.Concat(judged.Open.Select(f => Sentence(f, phrase)));
        }

        return string.Join(" ", sentences);
    }

    // A name that the library gives begins small.
    private static string Sentence(Finding finding, Phrase phrase)
    {
        string text = phrase.Of(finding);
        return char.ToUpperInvariant(text[0]) + text.Substring(1);
    }
}
