using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>Whether the machine may be used, as the first lines of an answer.</summary>
internal static class StandingSentences
{
    /// <summary>All in one text: the state, then each reason with what lifts it.</summary>
    public static string InOne(Standing standing, Phrase phrase)
    {
        string code = "standing." + standing.State;
        return string.Join(" ", Reasons(standing, phrase).Prepend(phrase.Of(standing.Reasons.Count < 2 ? code : code + ".several")));
    }

    public static void Add(Standing standing, Phrase phrase, List<ReportBlock> blocks)
    {
        string code = "standing." + standing.State;
        string[] reasons = Reasons(standing, phrase);
        if (reasons.Length < 2)
        {
            blocks.Add(ReportBlock.Lead(InOne(standing, phrase), LeadTones.Of(standing.State)));
            return;
        }

        blocks.Add(ReportBlock.Lead(phrase.Of(code + ".several"), LeadTones.Of(standing.State)));
        blocks.Add(ReportBlock.Bullets(reasons));
    }

    private static string[] Reasons(Standing standing, Phrase phrase) =>
        [.. standing.Reasons.Select(r => phrase.Of(r.Why) + " " + phrase.Of(r.LiftCode))];
}
