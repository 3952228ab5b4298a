using System.Globalization;

namespace Driveline.Tests.Torsion;

/// <summary>Rows of the comma-separated reference files beside the tests.</summary>
internal static class ReferenceFile
{
    public static IEnumerable<string[]> Rows(params string[] path) =>
        File.ReadLines(Path.Combine([AppContext.BaseDirectory, "reference", .. path])).Skip(1).Select(Fields);

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string[] Fields(string line)
    {
        var fields = new List<string>();
        int start = 0;
        bool quoted = false;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (i == line.Length || (line[i] == ',' && !quoted))
            {
                fields.Add(line.Substring(start, i - start).Trim('"'));
                start = i + 1;
            }
        }

        return fields.ToArray();
    }
}
