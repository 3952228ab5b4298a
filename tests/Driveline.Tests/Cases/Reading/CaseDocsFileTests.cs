using System.Text;
using Driveline.Cases;
using Driveline.Cases.Results;

namespace Driveline.Tests.Cases;

/// <summary>The pages in shared/docs are the ones the member table writes.</summary>
public class CaseDocsFileTests
{
    [Fact]
    public void DocsPage_OfTheCaseFile_IsTheTablesOwn() => Assert.Equal(Page("case-file.md"), Lines(CaseDocs.Markdown()));

    [Fact]
    public void SchemaFile_OfTheCaseFile_IsTheTablesOwn() => Assert.Equal(Page("case-file.schema.json"), Lines(CaseSchema.Json()));

    [Fact]
    public void DocsPage_OfTheResults_IsTheRowsOwn() => Assert.Equal(Page("results.md"), Lines(ResultDocs.Markdown()));

    private static string Page(string file) => Lines(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", file), Encoding.UTF8));

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).TrimEnd();
}
