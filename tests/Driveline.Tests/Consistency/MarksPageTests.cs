#if !NETSTANDARD_BUILD
namespace Driveline.Tests.Consistency;

/// <summary>What is remembered or common practice is listed, and nothing is called published without its edition.</summary>
public class MarksPageTests
{
    [Fact]
    public void Page_OfTheMarks_IsTheSourcesOwn() => GeneratedPage.IsTheOneIn("marks.md", MarksPage.Markdown(SourceMarks.All()));

    [Fact]
    public void Marks_EachOfThem_SayWhenTheyWereLookedUp()
    {
        SourceMark[] open = [.. SourceMarks.All().Where(m => m.Kind is BasisMark.FromMemory or BasisMark.CommonPractice)];
        Assert.Empty(open.Where(m => MarkLookups.Of(m).Length == 0).Select(m => m.Words));
        Assert.Empty(MarkLookups.WithoutMark(open));
    }

    [Theory]
    [InlineData("not stated")]
    [InlineData("not shown")]
    [InlineData("family")]
    [InlineData("predecessor")]
    [InlineData("1980s")]
    [InlineData("text of")]
    [InlineData("magazine")]
    public void Published_WithoutItsEdition_IsNowhere(string evasion) => Assert.DoesNotContain(
        SourceMarks.All(), m => m.Kind == BasisMark.Published && m.Words.Contains(evasion, StringComparison.Ordinal));
}
#endif
