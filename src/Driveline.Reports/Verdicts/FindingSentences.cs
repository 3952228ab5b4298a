using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Reports.Verdicts;

/// <summary>Findings in words, the worst first; one fact about several parts is said once, with all their names.</summary>
internal static class FindingSentences
{
    private const string NameParameter = "name";
    private const string KindParameter = "kind";
    private const string DeviceParameter = "device";
    private const string Several = ".several";
    private const string Each = ".each";

    // What the numbers say of the parts comes after what somebody has seen, as a clutch that is stuck.
    private static readonly string[] ByNumbers =
    [
        ProtectionFindings.PartNotGuarded, ProtectionFindings.TripAboveLimit, ProtectionFindings.TripHasNoLimit,
        ProtectionFindings.TripMayExceedLimit,
    ];

    public static IReadOnlyList<string> Of(IReadOnlyList<Finding> findings, Phrase phrase)
    {
        var groups = new List<List<Finding>>();
        var byKey = new Dictionary<string, List<Finding>>(StringComparer.Ordinal);
        for (int k = 0; k < findings.Count; k++)
        {
            string key = Key(findings[k], k, phrase);
            if (!byKey.TryGetValue(key, out List<Finding>? same))
            {
                byKey.Add(key, same = []);
                groups.Add(same);
            }

            same.Add(findings[k]);
        }

        var ranked = new List<string>?[2 * ((int)Severity.Note + 1)];
        foreach (List<Finding> same in groups)
        {
            Severity worst = Worst(same);
            int rank = (2 * (int)worst) + (Array.IndexOf(ByNumbers, same[0].Code) < 0 ? 0 : 1);
            (ranked[rank] ??= []).Add(phrase.Of("severity." + worst) + ": " + Words([.. same], phrase));
        }

        return [.. ranked.OfType<List<string>>().SelectMany(r => r)];
    }

    private static Severity Worst(List<Finding> same)
    {
        Severity worst = same[0].Severity;
        foreach (Finding finding in same)
        {
            worst = finding.Severity < worst ? finding.Severity : worst;
        }

        return worst;
    }

    private static string Key(Finding finding, int at, Phrase phrase) =>
        !phrase.Has(finding.Code + Several) || !(IsOfOne(finding) || phrase.Has(finding.Code + Each)) ? "#" + at
        : finding.Code + "/" + finding.Parameter(DeviceParameter)?.Text;

    private static string Words(Finding[] same, Phrase phrase)
    {
        Finding first = same[0];
        if (same.Length == 1)
        {
            return phrase.Of(first);
        }

        if (!phrase.Has(first.Code + Each))
        {
            return phrase.Of(Phrase.Code(first.Code + Several).With(
                first.Parameters[0].Name, string.Join(", ", same.Select(f => Name(f.Parameters[0], phrase)))));
        }

        IEnumerable<string> each = same.Select(f => phrase.Of(f.Parameters.Aggregate(
            Phrase.Code(f.Code + Each), (e, p) => p.Text is { } text ? e.With(p.Name, text) : e.With(p.Name, p.Kind, p.Value))));
        Finding all = Phrase.Code(first.Code + Several).With(NameParameter, string.Join("; ", each));
        return phrase.Of(first.Parameter(DeviceParameter)?.Text is { } device ? all.With(DeviceParameter, phrase.Name(device)) : all);
    }

    private static bool IsOfOne(Finding finding) =>
        finding.Parameters.Count == 1 && finding.Parameters[0].Name is NameParameter or KindParameter;

    private static string Name(FindingParameter of, Phrase phrase) =>
        of.Name == KindParameter ? phrase.Of("partKind." + of.Text) : phrase.Name(of.Text);
}
