using System.Text;
using System.Text.RegularExpressions;

namespace Driveline.Tests.Consistency;

/// <summary>Every basis that the sources of the libraries write down.</summary>
internal static partial class SourceMarks
{
    public static IReadOnlyList<SourceMark> All()
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "source");
        var found = new List<SourceMark>();
        foreach (string path in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(p => Path.GetFileName(p) != "Basis.cs").OrderBy(p => p.Replace('\\', '/'), StringComparer.Ordinal))
        {
            string code = File.ReadAllText(path, Encoding.UTF8).Replace("\r\n", "\n", StringComparison.Ordinal);
            string[] folders = Path.GetRelativePath(folder, path).Replace('\\', '/').Split('/');
            string concept = folders.Length > 2 ? folders[1] : folders[0];
            string decides = Summary(code, Path.GetFileNameWithoutExtension(path).Split('.')[0]);
            found.AddRange(Mark().Matches(code).Select(m => new SourceMark(
                Enum.Parse<BasisMark>(m.Groups["kind"].Value), Words(code, m.Index + m.Length), concept, decides)));
        }

        return found;
    }

    // The literals of the argument list, from behind its opening bracket; what is not a literal is put in when it runs.
    private static string Words(string code, int from)
    {
        var words = new StringBuilder();
        int depth = 1;
        for (int k = from; depth > 0; k++)
        {
            switch (code[k])
            {
                case '(':
                    depth++;
                    break;
                case ')':
                    depth--;
                    break;
                case '"':
                    int end = code.IndexOf('"', k + 1);
                    words.Append(code, k + 1, end - k - 1);
                    k = end;
                    break;
                case ',':
                    words.Append(", ");
                    break;
                case '+':
                    break;
                default:
                    if (char.IsLetter(code[k]) && (words.Length == 0 || words[^1] != '…'))
                    {
                        words.Append('…');
                    }

                    break;
            }
        }

        return words.ToString().Trim();
    }

    private static string Summary(string code, string type)
    {
        Match summary = Documented().Match(code);
        string text = summary.Success ? Tag().Replace(summary.Groups["text"].Value, m => m.Groups["name"].Value) : type;
        string plain = Blank().Replace(text.Replace("///", " ", StringComparison.Ordinal), " ").Trim();
        int end = plain.IndexOf(". ", StringComparison.Ordinal);
        return (end < 0 ? plain : plain[..end]).TrimEnd('.');
    }

    [GeneratedRegex(@"Basis\.(?<kind>FromMemory|CommonPractice|Given|Published)\(")]
    private static partial Regex Mark();

    [GeneratedRegex(@"<(?:summary|content)>(?<text>.*?)</(?:summary|content)>", RegexOptions.Singleline)]
    private static partial Regex Documented();

    [GeneratedRegex("<(?:see|paramref) (?:cref|name)=\"(?:[\\w.]+\\.)?(?<name>\\w+)[^\"]*\"/>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();
}
