using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Text;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Wording;

/// <summary>The words for findings and other codes, by language and unit system.</summary>
/// <remarks>
/// Texts are data: UTF-8 files of lines "code = text with {parameter}", one file a concept, embedded in the library.
/// Where a text holds a figure, the code with ".us" has it in US units.
/// Lines that start with # are comments. Names that the library gives itself in English (a default name, a material, a source)
/// have their words under "name.", see <see cref="Name"/>. An application may bring a language or words of its
/// own, see <see cref="InLanguage"/> and <see cref="With"/>.
/// </remarks>
public sealed partial class Texts
{
    private const string NamePrefix = "name.";
    private const string UsEnding = ".us";

    private static readonly Lazy<Texts> EnglishTexts = new(() => new Texts(Language.English));
    private static readonly Lazy<Texts> SpanishTexts = new(() => new Texts(Language.Spanish));

    private readonly Dictionary<string, string> all;
    private readonly Dictionary<string, string> templates;
    private readonly ConcurrentDictionary<string, Template> cutForMetric = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Template> cutForUs = new(StringComparer.Ordinal);
    private readonly NameWords names;

    private Texts(Language language)
        : this(language, Languages.CodeOf(language), Load(Languages.CodeOf(language)))
    {
    }

    private Texts(Language language, string languageCode, Dictionary<string, string> all)
    {
        this.all = all;
        Language = language;
        LanguageCode = languageCode;
        names = new NameWords();
        templates = new Dictionary<string, string>(all.Count, StringComparer.Ordinal);
        foreach (KeyValuePair<string, string> text in all)
        {
            if (IsName(text.Key))
            {
                names.Add(text.Key.Substring(NamePrefix.Length), text.Value);
            }
            else
            {
                templates.Add(text.Key, text.Value);
            }
        }

        names.Order();
    }

    /// <summary>The English texts.</summary>
    public static Texts English => EnglishTexts.Value;

    /// <summary>The Spanish texts.</summary>
    public static Texts Spanish => SpanishTexts.Value;

    /// <summary>The language held here that these texts are in, or whose texts stand where those of the caller have none.</summary>
    public Language Language { get; }

    /// <summary>Code of their language, e.g. "es"; it is also the lang attribute of a page.</summary>
    public string LanguageCode { get; }

    /// <summary>Every code for which there is a text.</summary>
    public IReadOnlyCollection<string> Codes => templates.Keys;

    /// <summary>The texts of a language.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public static Texts In(Language language) => language switch
    {
        Language.English => English,
        Language.Spanish => Spanish,
        _ => throw new ArgumentOutOfRangeException(nameof(language), language, "No texts are held in that language."),
    };

    /// <summary>The text of a code without parameters; the code itself when there is none, so that nothing is lost.</summary>
    public string Of(string code) => templates.TryGetValue(Guard.NotNull(code, nameof(code)), out string? text) ? text : code;

    /// <summary>The text of a code without parameters in units: one that holds a figure has another in US units.</summary>
    public string Of(string code, DisplayUnits units) =>
        units == DisplayUnits.UsCustomary && templates.TryGetValue(Guard.NotNull(code, nameof(code)) + UsEnding, out string? text) ? text
            : Of(code);

    /// <summary>The words for a name that the library gives itself in English; any other name, such as one from a case, as it is.</summary>
    /// <example>In Spanish "shear bolt" is "perno fusible", and "drive tube" stays "drive tube".</example>
    public string Name(string name) => names.Of(Guard.NotNull(name, nameof(name)));

    /// <summary>A finding in words, in metric units.</summary>
    public string Of(Finding finding) => Of(finding, DisplayUnits.Metric);

    /// <summary>
    /// A finding in words. A parameter the template does not name is left out; a finding without a template gives its code and parameters.
    /// </summary>
    public string Of(Finding finding, DisplayUnits units)
    {
        Guard.NotNull(finding, nameof(finding));
        return TemplateOf(finding.Code, units) is not { } template ? Bare(finding, units)
            : Articles(template.Fill(
                (Texts: this, Finding: finding, Units: units), static (from, place) => from.Texts.Words(from, place)));
    }

    private Template? TemplateOf(string code, DisplayUnits units)
    {
        ConcurrentDictionary<string, Template> cut = units == DisplayUnits.UsCustomary ? cutForUs : cutForMetric;
        return cut.TryGetValue(code, out Template? known) ? known
            : cut == cutForUs && templates.TryGetValue(code + UsEnding, out string? us) ? cut.GetOrAdd(code, Template.Of(us))
            : templates.TryGetValue(code, out string? template) ? cut.GetOrAdd(code, Template.Of(template))
            : null;
    }

    // In English every part has its article, in Spanish one that the library names; the case's own names stand in quotes there.
    private string Articles(string text) => Language == Language.Spanish ? SpanishNames.WithArticles(text, names)
        : text.IndexOf("he the ", StringComparison.Ordinal) < 0 ? text
        : text.Replace("the the ", "the ").Replace("The the ", "The ");

    private string Bare(Finding finding, DisplayUnits units) =>
        finding.Code + string.Concat(finding.Parameters.Select(p => ", " + p.Name + " " + Words(p, units)));

    private string? Words((Texts Texts, Finding Finding, DisplayUnits Units) from, Template.Place place) =>
        from.Finding.Parameter(place.Parameter) is not { } parameter ? null
            : place.Codes is { } codes ? OfCode(codes, parameter.Text ?? Thousandths(parameter.Value))
            : Words(parameter, from.Units);

    private string OfCode(string prefix, string? code) =>
        templates.TryGetValue(prefix + "." + code, out string? words) ? words : code ?? string.Empty;

    private static string Thousandths(double value) => Math.Round(value * 1000).ToString(CultureInfo.InvariantCulture);

    private string Words(FindingParameter parameter, DisplayUnits units) =>
        parameter.Text is { } text ? Name(text) : QuantityWords.Of(parameter.Value, parameter.Kind, units, this);

    private static bool IsName(string code) => code.StartsWith(NamePrefix, StringComparison.Ordinal);

    private static Dictionary<string, string> Load(string language)
    {
        Assembly assembly = typeof(Texts).Assembly;
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        string prefix = "wording/" + language + "/";
        foreach (string name in assembly.GetManifestResourceNames())
        {
            if (!name.StartsWith(prefix, StringComparison.Ordinal))
            {
                continue;
            }

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
