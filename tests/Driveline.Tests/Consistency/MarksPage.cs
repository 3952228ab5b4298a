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
        A490 (ASTM A490-11, 1.1), cold-drawn low-carbon bar (SAE Handbook 1986, p. 2.15), bolts of copper and aluminium (ISO 8839:1986),
        the loose clearance holes of inch bolts (ASME B18.2.8-1999, Table 1a).

        Sought, and only seen in copies that do not say their edition, so common practice: stress areas of Unified threads, strengths of
        the ASTM and stainless bolts, loads of spring pins to ISO 8748, 8751 and 8752, loads of SAE J429, hardness to ASTM A370, typical
        strengths of aluminium; the coarse holes of ISO 273 to M16.

        Sought in vain: the power limits of ISO 500-1 (public previews stop before Table 1), EN 1993-1-9 Table 8.1 (bolts in shear), the
        rotary power table of ASABE D497 (the copies found break off before it), spring pins to ISO 8750 and ISO 13337, loads of fine
        metric threads and of UNF threads, bodies to ISO 4014, the tables of DIN 2093, heat data of steel and cast iron, the scatter of
        single-bolt shear tests.

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

        page.Append(LookedUp);
        foreach (BasisMark kind in new[] { BasisMark.FromMemory, BasisMark.CommonPractice })
        {
            page.Append(kind == BasisMark.FromMemory ? "\n## From memory\n\n" : "\n## Common practice\n\n")
                .Append("| concept | what it says | what it decides |\n|---|---|---|\n");
            foreach (SourceMark mark in marks.Where(m => m.Kind == kind))
            {
                page.Append(CultureInfo.InvariantCulture, $"| {mark.Concept} | {Cell(mark.Words)} | {Cell(mark.Decides)} |\n");
            }
        }

        return page.ToString().Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal);
}
