using System.Globalization;
using System.Text;

namespace Driveline.Tests.Consistency;

/// <summary>The page shared/docs/marks.md.</summary>
internal static class MarksPage
{
    private const string Head = """
        # Numbers without a page

        Every basis that the code marks as remembered or as common practice, with what it decides. The page is made from the sources by
        a test (DEVELOPERS.md tells how to renew it). One mark may stand for many numbers: the loads of all fine threads are one mark. A
        mark leaves this page only with the document, its edition and the table in hand, or a named copy of it.

        | mark | places in the code | meaning |
        |---|---|---|

        """;

    private const string LookedUp = """

        ## Looked up

        Found in a named copy, and marked as published since: bearing of a pin (EN 1993-1-8:2005, Table 3.10), the greatest strength of
        A490 (ASTM A490-11, 1.1), strengths of SAE and older ASTM bolts (Mechanical Engineering Design, 5th ed., p. 341), stress areas of
        Unified threads (ANSI B1.1-1974 in the 9th ed., Table 8-2), hot-rolled and cold-drawn bar (SAE Handbook 1986, p. 2.15), C45
        (DIN EN 10083-2:2006-10), shear yield over tensile yield (NASA TM-106943), bolts of copper and aluminium (ISO 8839:1986),
        clearance holes (ISO 273:1979; ASME B18.2.8-1999, the normal fit to 1 in), socket screws (ASTM A574-13), the conversion of
        hardness (DIN 50150:1976, but for five lines), the pressure of a cross pin (teaching pages of 2023).

        Each mark below says when it was looked up and what came of it (`shared/reference/marks/looked-up.csv`; a mark without a row there
        fails a test). Manuals carry no date and their makers are withheld: they count as published, and are counted apart.

        """;

    private static readonly (BasisMark Kind, string Meaning)[] Meanings =
    [
        (BasisMark.FromMemory, "nobody has checked it; must be replaced"),
        (BasisMark.CommonPractice, "no source we can name, or only a secondary one without its edition"),
        (BasisMark.Given, "stated by the case or the caller"),
        (BasisMark.Published, "document, edition and place are named"),
    ];

    public static string Markdown(IReadOnlyList<SourceMark> marks)
    {
        var page = new StringBuilder(Head);
        foreach ((BasisMark kind, string meaning) in Meanings)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {kind} | {marks.Count(m => m.Kind == kind)} | {meaning} |\n");
        }

        page.Append(CultureInfo.InvariantCulture,
            $"| of these, undated | {marks.Count(IsUndated)} | a maker's manual or sheet, or a paper, that carries no date |\n");
        page.Append(LookedUp);
        foreach (BasisMark kind in new[] { BasisMark.FromMemory, BasisMark.CommonPractice })
        {
            page.Append(kind == BasisMark.FromMemory ? "\n## From memory\n\n" : "\n## Common practice\n\n")
                .Append("| concept | what it says | what it decides | looked up |\n|---|---|---|---|\n");
            foreach (SourceMark mark in marks.Where(m => m.Kind == kind))
            {
                page.Append(CultureInfo.InvariantCulture,
                    $"| {mark.Concept} | {Cell(mark.Words)} | {Cell(mark.Decides)} | {Cell(MarkLookups.Of(mark))} |\n");
            }
        }

        return page.ToString().Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    private static bool IsUndated(SourceMark mark) =>
        mark.Kind == BasisMark.Published && mark.Words.Contains("undated", StringComparison.Ordinal);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal);
}
