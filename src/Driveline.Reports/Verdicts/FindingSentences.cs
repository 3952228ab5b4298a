using Driveline.Findings;

namespace Driveline.Reports.Verdicts;

/// <summary>Findings in words; one fact about several parts is said once, with all their names.</summary>
internal static class FindingSentences
{
    private const string NameParameter = "name";
    private const string KindParameter = "kind";
    private const string Several = ".several";

    public static IReadOnlyList<string> Of(IReadOnlyList<Finding> findings, Phrase phrase)
    {
        var sentences = new List<string>(findings.Count);
        foreach (IGrouping<string, Finding> same in findings.Select((f, k) => (f, k)).GroupBy(
            p => IsOfOne(p.f) && phrase.Has(p.f.Code + Several) ? p.f.Code : "#" + p.k, p => p.f, StringComparer.Ordinal))
        {
            Finding first = same.First();
            string words = same.Skip(1).Any()
                ? phrase.Of(Phrase.Code(first.Code + Several).With(
                    first.Parameters[0].Name, string.Join(", ", same.Select(f => Name(f.Parameters[0], phrase)))))
                : phrase.Of(first);
            sentences.Add(phrase.Of("severity." + same.Min(f => f.Severity)) + ": " + words);
        }

        return sentences;
    }

    private static bool IsOfOne(Finding finding) =>
        finding.Parameters.Count == 1 && finding.Parameters[0].Name is NameParameter or KindParameter;

    private static string Name(FindingParameter of, Phrase phrase) =>
        of.Name == KindParameter ? phrase.Of("partKind." + of.Text) : phrase.Name(of.Text);
}
