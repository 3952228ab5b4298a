using System.Xml.Linq;
using Driveline.Reports;

namespace Driveline.Tests.Reports;

/// <summary>A title that a case brings is text on every kind of page, and never endless.</summary>
public class HostileTitleTests
{
    private static readonly string[] Titles =
    [
        "<script>alert(1)</script>", "\" onload=\"x ' & <img src=x onerror=y>", "\u202E\u05D0\u05D1 \u2066evil",
        "\U0001F69C\U0001F69C tractor",
        new('x', 10000), "a\0b\r\nc", "]]></style></svg><b>", "[link](javascript:alert(1)) `code` | # head",
    ];

    public static TheoryData<string> Kinds => [.. PageKinds.Pages.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Page_OfAnyTitle_HoldsItAsText(string kind)
    {
        string plain = Html(kind, "plain");
        foreach (string title in Titles)
        {
            string html = Html(kind, title);
            Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
            Assert.DoesNotContain("\u202E", html, StringComparison.Ordinal);
            Assert.DoesNotContain("\u2066", html, StringComparison.Ordinal);
            Assert.DoesNotContain("\0", html, StringComparison.Ordinal);
            Assert.Equal(Count(plain, '<'), Count(html, '<'));
            Assert.InRange(html.Length, 0, plain.Length + 2000);
        }
    }

    public static TheoryData<string> Pictures => [.. PageKinds.Pictures.Keys];

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Picture_OfAnyTitle_IsWellFormedAndNeverEndless(string kind)
    {
        string plain = Drawn(kind, "plain");
        foreach (string title in Titles)
        {
            string svg = Drawn(kind, title);
            Assert.Equal("svg", XElement.Parse(svg).Name.LocalName);
            Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<b>", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("\u202E", svg, StringComparison.Ordinal);
            Assert.InRange(svg.Length, 0, plain.Length + 2000);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Markdown_OfAnyTitle_HoldsItAsText(string kind)
    {
        foreach (string title in Titles)
        {
            string text = PageKinds.Of(PageKinds.Pages[kind], kind, "md", ReportOptions.Default.WithTitle(title));
            Assert.StartsWith("# ", text, StringComparison.Ordinal);
            Assert.DoesNotContain("<", text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"(?<!\\)\]\(", text);
            Assert.InRange(text.IndexOf('\n', StringComparison.Ordinal), 2, 400);
        }
    }

    private static string Drawn(string kind, string title) =>
        PageKinds.Of(PageKinds.Pictures[kind], kind, "svg", ReportOptions.Default.WithTitle(title));

    private static string Html(string kind, string title) =>
        PageKinds.Of(PageKinds.Pages[kind], kind, "html", ReportOptions.Default.WithTitle(title));

    private static int Count(string text, char c) => text.Count(x => x == c);
}
