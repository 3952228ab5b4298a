#if !NETSTANDARD_BUILD
namespace Driveline.Tests.Consistency;

/// <summary>The page of what was validated is the tests' own, and what is called published holds nothing from memory.</summary>
public class ValidationPageTests
{
    [Fact]
    public void Page_OfTheValidation_IsItsRowsOwn() =>
        GeneratedPage.IsTheOneIn("validation.md", ValidationPage.Markdown(ValidationRun.All(), Remembered()));

    [Fact]
    public void Rows_EachOfThem_NamesItsSource() =>
        Assert.Empty(ValidationRun.All().Where(r => r.Source.Length == 0).Select(r => r.Test).Distinct());

    [Fact]
    public void PublishedClasses_EachOfThem_IsInTheTable() => Assert.Equal(
        typeof(ValidationPageTests).Assembly.GetTypes().Where(t => t.Name.EndsWith("Published", StringComparison.Ordinal))
            .Select(t => t.Name).Order(StringComparer.Ordinal),
        ValidationTable.All.Select(t => t.Type.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void PublishedClasses_TheirRows_HoldNothingFromMemory() => Assert.Empty(
        ValidationTable.All.SelectMany(t => ValidationRun.Rows(t.Type)).Where(r => r.Row.Any(IsRemembered))
            .Select(r => r.Method.DeclaringType!.Name + "." + r.Method.Name + " " + string.Join(", ", r.Row)));

    private static bool IsRemembered(object? cell) => cell switch
    {
        ReferenceRow row => ReferenceTable.IsRemembered(row) && row.Cells.All(c => c != "seen"),
        string text => text.Contains("memory)", StringComparison.Ordinal) || text.Contains("from memory", StringComparison.Ordinal),
        _ => false,
    };

    private static int Remembered() => new[] { "fasteners", "clutch", "pto" }.Sum(pack => Directory
        .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "reference", pack), "*.csv")
        .SelectMany(f => ReferenceTable.Read(pack, Path.GetFileName(f)))
        .Count(r => r.Columns.Contains("confidence") && ReferenceTable.IsRemembered(r)));
}
#endif
