using System.Text.RegularExpressions;
using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Cli;

/// <summary>Bold and colour for what is dangerous, on a terminal only; the words say it all without them.</summary>
internal static class Emphasis
{
    private const string Plain = "\u001b[0m";
    private const string Red = "\u001b[1;31m";
    private const string Yellow = "\u001b[1;33m";

    public static string Of(string text, Texts texts)
    {
        string danger = Words(texts.Of("severity." + Severity.Danger));
        string stop = Words(texts.Of("standing.Stop")) + "|" + Words(texts.Of("standing.Stop.several"));
        string marked = Regex.Replace(text, "(?m)^(?:- )?" + danger + "(?=:)|^(?:" + stop + ")", m => Red + m.Value + Plain);
        return Regex.Replace(
            marked, "(?m)^(?:- )?" + Words(texts.Of("severity." + Severity.Warning)) + "(?=:)", m => Yellow + m.Value + Plain);
    }

    // A line may break at any blank.
    private static string Words(string words) => string.Join("\\s+", words.Split(' ').Select(Regex.Escape));
}
