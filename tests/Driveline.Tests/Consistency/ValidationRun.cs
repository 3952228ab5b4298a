using System.Reflection;
using Xunit.Sdk;

namespace Driveline.Tests.Consistency;

/// <summary>Runs every printed row once more and notes how far off each was.</summary>
internal static class ValidationRun
{
    private const string InTheClass = "named beside the row";
    private const int LongestSource = 90;

    private static readonly string[] OwnWords = ["derived", "recomputed", "hand", "reference pack", "1000 / 540", "computed"];

    private static readonly string[] Packs = ["fasteners", "clutch", "pto"];

    private static readonly Dictionary<string, string> Sources = SourcesById();

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

            IReadOnlyList<(double Deviation, string Source)> compared = Close.Recorded(
                () => method.Invoke(Activator.CreateInstance(table.Type), row));
            string source = SourceOf(row) ?? compared.Select(c => Short(c.Source)).FirstOrDefault(s => s.Length > 0) ?? InTheClass;
            if (source.Contains("remembered", StringComparison.Ordinal))
            {
                continue;
            }

            yield return new ValidationRow(
                table.Capability,
                kind == ValidationKind.Computed && IsOurOwn(source) ? ValidationKind.SecondMethod : kind,
                source,
                compared.Count, compared.Count == 0 ? null : compared.Max(c => c.Deviation));
        }
    }

    private static string? SourceOf(object?[] row) =>
        row.OfType<ReferenceRow>().Select(r => Cut(r["source"])).FirstOrDefault(s => s.Length > 0)
        ?? row.OfType<string>().Reverse().Where(t => t.Contains(' ', StringComparison.Ordinal) || Sources.ContainsKey(t)).Select(Short)
            .FirstOrDefault(s => s.Length > 0);

    // "CL01 Bhandari, Ex 11.1": the row of that id names its source; else the words after the id do.
    private static string Short(string text)
    {
        string[] words = text.Split(' ', ':', ',', ';');
        string? id = words.Take(2).FirstOrDefault(Sources.ContainsKey);
        return id is not null && Sources[id].Length > 0 ? Sources[id]
            : text.Contains(" × ", StringComparison.Ordinal) && text.Contains(" N ", StringComparison.Ordinal) ? Cut(text.Split(',')[0])
            : Cut(text.Split(": ")[0]);
    }

    // A sum by hand or by other code is no print.
    private static bool IsOurOwn(string source) => OwnWords.Any(w => source.StartsWith(w, StringComparison.Ordinal));

    private static string Cut(string text)
    {
        string first = text.Split(';')[0].Trim();
        return first.Length <= LongestSource ? first : first[..LongestSource].TrimEnd() + "…";
    }

    private static Dictionary<string, string> SourcesById()
    {
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string pack in Packs)
        {
            foreach (string file in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "reference", pack), "*.csv").Order())
            {
                foreach (ReferenceRow row in ReferenceTable.Read(pack, Path.GetFileName(file)).Where(r => r.Columns.Contains("id")))
                {
                    known.TryAdd(row["id"], Cut(row["source"]));
                }
            }
        }

        return known;
    }
}
