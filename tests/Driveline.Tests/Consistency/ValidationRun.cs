using System.Reflection;
using Xunit.Sdk;

namespace Driveline.Tests.Consistency;

/// <summary>Runs every printed row once more and notes how far off each was.</summary>
internal static class ValidationRun
{
    private const int LongestSource = 180;

    private static readonly string[] OwnWords = [
        "derived", "recomputed", "hand", "reference pack", "computed", "1000 / 540", "z formula", "iso-898-1-classes.csv", "closed form",
        "definition of",
    ];

    private static readonly string[] Packs = ["fasteners", "clutch", "pto"];

    private static readonly Dictionary<string, (string Pack, string Source)> Sources = SourcesById();

    public static IReadOnlyList<ValidationRow> All() => [.. ValidationTable.All.SelectMany(Of)];

    public static IEnumerable<(MethodInfo Method, object?[] Row)> Rows(Type type) => type
        .GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        .Where(m => m.GetCustomAttribute<FactAttribute>() is not null)
        .SelectMany(m => m.GetCustomAttributes<DataAttribute>().ToArray() is { Length: > 0 } data
            ? data.SelectMany(d => d.GetData(m)).Select(row => (m, row))
            : [(m, Array.Empty<object?>())]);

    private static IEnumerable<ValidationRow> Of(ValidationTable table)
    {
        foreach ((MethodInfo method, object?[] row) in Rows(table.Type))
        {
            ValidationKind kind = table.KindOf(method.Name);
            if (kind == ValidationKind.Guard)
            {
                continue;
            }

            (IReadOnlyList<(double Deviation, string Source)> compared, string? cited) = Close.Recorded(
                () => method.Invoke(Activator.CreateInstance(table.Type), row));
            string source = cited is null
                ? SourceOf(row, table.Type)
                    ?? compared.Select(c => Named(c.Source, table.Type)).FirstOrDefault(s => s.Length > 0) ?? string.Empty
                : Named(cited, table.Type);
            if (IsRemembered(source))
            {
                continue;
            }

            yield return new ValidationRow(
                table.Capability,
                table.Type.Name + "." + method.Name,
                (kind is ValidationKind.Computed or ValidationKind.Contained) && IsOurOwn(source) ? ValidationKind.SecondMethod : kind,
                source,
                compared.Count, compared.Count == 0 ? null : compared.Max(c => c.Deviation));
        }
    }

    private static string? SourceOf(object?[] row, Type type)
    {
        string[] texts = [.. row.OfType<string>()];
        return row.OfType<ReferenceRow>().Select(r => Cut(r["source"])).FirstOrDefault(s => s.Length > 0)
            ?? texts.Select(t => ById(t, type)).FirstOrDefault(s => s.Length > 0)
            ?? texts.Reverse().Where(t => t.Contains(' ', StringComparison.Ordinal)).Select(Cut).FirstOrDefault();
    }

    private static string Named(string text, Type type) => ById(text, type) is { Length: > 0 } known ? known : Cut(text);

    // "CL01 Bhandari, Ex 11.1": the row of that id names its source.
    private static string ById(string text, Type type)
    {
        // M6 is a material in the pack of clutches, and a thread in that of fasteners.
        bool isFastener = type.Namespace!.EndsWith("Fasteners", StringComparison.Ordinal);
        string? id = text.Split(' ', ':', ',', ';').Take(2).FirstOrDefault(
            word => Sources.TryGetValue(word, out (string Pack, string Source) known) && (known.Pack == "fasteners" || !isFastener));
        return id is null ? string.Empty : Sources[id].Source;
    }

    private static bool IsRemembered(string source) =>
        source.Contains("memory", StringComparison.Ordinal) || source.Contains("remembered", StringComparison.Ordinal);

    // A sum by hand or by other code is no print.
    private static bool IsOurOwn(string source) => OwnWords.Any(w => source.StartsWith(w, StringComparison.Ordinal));

    private static string Cut(string text)
    {
        string one = text.Trim();
        return one.Length <= LongestSource ? one : one[..LongestSource].TrimEnd() + "…";
    }

    private static Dictionary<string, (string Pack, string Source)> SourcesById()
    {
        var known = new Dictionary<string, (string Pack, string Source)>(StringComparer.Ordinal);
        foreach (string pack in Packs)
        {
            foreach (string file in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "reference", pack), "*.csv").Order())
            {
                foreach (ReferenceRow row in ReferenceTable.Read(pack, Path.GetFileName(file)).Where(r => r.Columns.Contains("id")))
                {
                    known.TryAdd(row["id"], (pack, Cut(row["source"])));
                }
            }
        }

        return known;
    }
}
