#if !NETSTANDARD_BUILD
namespace Driveline.Tests.Consistency;

/// <summary>What is remembered or common practice is listed, and nothing is called published without its edition.</summary>
public class MarksPageTests
{
    [Fact]
    public void Page_OfTheMarks_IsTheSourcesOwn() => GeneratedPage.IsTheOneIn("marks.md", MarksPage.Markdown(SourceMarks.All()));

    [Fact]
    public void Published_WithoutItsEdition_IsNowhere() => Assert.DoesNotContain(
        SourceMarks.All(), m => m.Kind == BasisMark.Published && m.Words.Contains("not stated", StringComparison.Ordinal));
}
#endif
