using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>Whether the machine may be used, as the first lines of an answer.</summary>
internal static class StandingSentences
{
    public static void Add(Standing standing, Phrase phrase, List<ReportBlock> blocks)
    {
        string code = "standing." + standing.State;
        string[] reasons = [.. standing.Reasons.Select(r => phrase.Of(r.Why) + " " + phrase.Of(r.LiftCode))];
        if (reasons.Length < 2)
        {
            blocks.Add(ReportBlock.Lead(string.Join(" ", reasons.Prepend(phrase.Of(code))), LeadTones.Of(standing.State)));
            return;
        }

        blocks.Add(ReportBlock.Lead(phrase.Of(code + ".several"), LeadTones.Of(standing.State)));
        blocks.Add(ReportBlock.Bullets(reasons));
    }
}
