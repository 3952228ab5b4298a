using Driveline.Findings;

namespace Driveline.Reports.Verdicts;

/// <summary>Findings in words; one fact about several parts is said once, with all their names.</summary>
internal static class FindingSentences
{
    private const string NameParameter = "name";
    private const string Several = ".several";

    public static IReadOnlyList<string> Of(IReadOnlyList<Finding> findings, Phrase phrase)
    {
        var sentences = new List<string>(findings.Count);
        foreach (IGrouping<string, Finding> same in findings.Select((f, k) => (f, k)).GroupBy(
            p => IsNamed(p.f) && phrase.Has(p.f.Code + Several) ? p.f.Code : "#" + p.k, p => p.f, StringComparer.Ordinal))
        {
            Finding first = same.First();
            string words = same.Skip(1).Any()
                ? phrase.Of(Phrase.Code(first.Code + Several).With(
                    NameParameter, string.Join(", ", same.Select(f => phrase.Name(f.Parameter(NameParameter)!.Text)))))
                : phrase.Of(first);
            sentences.Add(phrase.Of("severity." + same.Min(f => f.Severity)) + ": " + words);
        }

        return sentences;
    }

    private static bool IsNamed(Finding finding) => finding.Parameters.Count == 1 && finding.Parameters[0].Name == NameParameter;
}
