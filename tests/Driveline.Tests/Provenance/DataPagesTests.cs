using System.Text;
using Driveline.Provenance;

namespace Driveline.Tests.Provenance;

/// <summary>The pages of numbers are those the data write; one that differs is written beside the tests, to be read and copied.</summary>
public class DataPagesTests
{
    private static readonly string Received = Path.Combine(AppContext.BaseDirectory, "received-data");

    public static TheoryData<string> Files => [.. DataPages.All.Keys, "index.md"];

    [Theory]
    [MemberData(nameof(Files))]
    public void DataPage_InTheDocs_IsTheDataItself(string file)
    {
        string page = DataPages.Text(file);
        string held = Path.Combine(AppContext.BaseDirectory, "docs", "data", file);
        if (!File.Exists(held) || Lines(File.ReadAllText(held, Encoding.UTF8)) != page)
        {
            Directory.CreateDirectory(Received);
            File.WriteAllText(Path.Combine(Received, file), page);
            Assert.Fail("shared/docs/data/" + file + " differs from the data; read and copy " + Path.Combine(Received, file));
        }
    }

    [Fact]
    public void DataPages_InTheDocs_AreNoOthers() => Assert.Equal(
        [.. DataPages.All.Keys.Append("index.md").Order(StringComparer.Ordinal)],
        Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "docs", "data"), "*.md").Select(f => Path.GetFileName(f))
            .Order(StringComparer.Ordinal));

    [Fact]
    public void Constants_Sources_AreFoundAcrossTheConcepts()
    {
        (string Concept, Basis Basis)[] all = [.. ConstantPages.All()];
        Assert.True(all.Select(s => s.Concept).Distinct().Count() >= 8, "the search must see every concept");
        Assert.True(all.Length > 150, "the search must see the code it reads");
        Assert.All(Enum.GetValues<BasisKind>().Where(k => k != BasisKind.Given), k => Assert.Contains(all, s => s.Basis.Kind == k));
    }

    // The marks of single rows, read in the code: a page must not dress them up.
    [Theory]
    [InlineData("grades.md", "| SAE 5 | 1/4 to 1 in | 3 radial lines, 120° apart | 120 ksi | 85 ksi | 92 ksi |", "printed Published")]
    [InlineData("materials.md", "| 1045 hot rolled | 310 | 565 |", "Published")]
    [InlineData("pto.md", "| 1 | TractorManual | 55.9 | 540 |", "Published")]
    [InlineData("clutches.md", "| rotary rake, 3.5 to 4.6 m | friction overload coupling | 550 |", "Published")]
    [InlineData("machines.md", "| mower, flail | 0 | 10 | 0 | 40 |", "FromMemory")]
    public void DataPage_ARowOfIt_KeepsItsMark(string file, string row, string mark)
    {
        string line = Assert.Single(DataPages.Text(file).Split('\n'), l => l.StartsWith(row, StringComparison.Ordinal));
        Assert.Contains("| " + mark, line, StringComparison.Ordinal);
    }

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal);
}
