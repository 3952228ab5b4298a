using System.Reflection;
using System.Text;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Wording;

/// <summary>The words for findings and other codes, by language and unit system.</summary>
/// <remarks>
/// Texts are data: UTF-8 files of lines "code = text with {parameter}", one file a concept, embedded in the library.
/// Lines that start with # are comments. An application may translate them by code and supply its own renderer.
/// </remarks>
public sealed class Texts
{
    private static readonly Lazy<Texts> EnglishTexts = new(() => new Texts(Load("en")));

    private readonly Dictionary<string, string> templates;

    private Texts(Dictionary<string, string> templates) => this.templates = templates;

    /// <summary>The English texts.</summary>
    public static Texts English => EnglishTexts.Value;

    /// <summary>Every code for which there is a text.</summary>
    public IReadOnlyCollection<string> Codes => templates.Keys;

    /// <summary>The texts of a language.</summary>
    public static Texts In(Language language) => language switch
    {
        Language.English => English,
        _ => throw new ArgumentOutOfRangeException(nameof(language), language, "No texts are held in that language."),
    };

    /// <summary>The text of a code without parameters; the code itself when there is none, so that nothing is lost.</summary>
    public string Of(string code) => templates.TryGetValue(Guard.NotNull(code, nameof(code)), out string? text) ? text : code;

    /// <summary>A finding in words, in metric units.</summary>
    public string Of(Finding finding) => Of(finding, UnitSystem.Metric);

    /// <summary>A finding in words. A parameter the template does not name is left out; a finding without a template gives its code and parameters.</summary>
    public string Of(Finding finding, UnitSystem units)
    {
        Guard.NotNull(finding, nameof(finding));
        if (!templates.TryGetValue(finding.Code, out string? template))
        {
            return finding.Code + string.Concat(finding.Parameters.Select(p => ", " + p.Name + " " + Words(p, units)));
        }

        var text = new StringBuilder(template);
        foreach (FindingParameter parameter in finding.Parameters)
        {
            text.Replace("{" + parameter.Name + "}", Words(parameter, units));
        }

        return text.ToString();
    }

    private static string Words(FindingParameter parameter, UnitSystem units) =>
        parameter.Text ?? QuantityWords.Of(parameter.Value, parameter.Kind, units);

    private static Dictionary<string, string> Load(string language)
    {
        Assembly assembly = typeof(Texts).Assembly;
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        string prefix = "wording/" + language + "/";
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(prefix, StringComparison.Ordinal)))
        {
            using Stream stream = assembly.GetManifestResourceStream(name)!;
            using var reader = new StreamReader(stream, Encoding.UTF8);
            while (reader.ReadLine() is { } line)
            {
                int equals = line.IndexOf('=');
                if (equals < 0 || line[0] == '#')
                {
                    continue;
                }

                texts.Add(line.Substring(0, equals).Trim(), line.Substring(equals + 1).Trim());
            }
        }

        return texts;
    }
}
