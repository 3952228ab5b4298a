using System.Text;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Pictures;

/// <summary>
/// The colours of every picture, light and dark. Told apart by lightness as well as by hue, so that colour-blind eyes and grey prints
/// can read them; a page that follows the reader's dark screen turns them dark, and paper gets the light ones.
/// </summary>
internal static class SvgPalette
{
    private static readonly string[] Names =
    [
        "none", "ink", "faint", "grid", "paper", "work", "engage", "device", "part", "room", "overlap", "careful", "room-ground",
        "overlap-ground", "limit-ground", "trip", "steel", "other-steel",
    ];

    private static readonly string[] Light =
    [
        "none", "#1c1c22", "#5a5a66", "#e1e1e7", "#fff", "#2f6fb5", "#a9cdef", "#e08a00", "#3b2d4d", "#1e7a58", "#b3261e", "#9c4f00",
        "#e4f3ec", "#fbe3e0", "#e4dcee", "#7d4f00", "#c3c8d0", "#e3e6ea",
    ];

    private static readonly string[] Dark =
    [
        "none", "#ececf2", "#b4b4c2", "#393944", "#17171c", "#78aef0", "#35567c", "#f3b04a", "#c9b6e4", "#57c99b", "#ff8d83", "#f0a860",
        "#12352a", "#452020", "#3a3148", "#f3c980", "#5d6470", "#434852",
    ];

    private static readonly string[] Fills = [.. Enumerable.Range(0, Names.Length).Select(k => Rule(k, 'f', "fill"))];
    private static readonly string[] Strokes = [.. Enumerable.Range(0, Names.Length).Select(k => Rule(k, 's', "stroke"))];

    /// <summary>The name of an ink as it ends a class.</summary>
    public static string Name(SvgInk ink) => Names[(int)ink];

    /// <summary>The ink of a headline.</summary>
    public static SvgInk Of(LeadTone tone) => tone switch
    {
        LeadTone.Good => SvgInk.Room,
        LeadTone.Careful => SvgInk.Careful,
        LeadTone.Bad => SvgInk.Overlap,
        _ => SvgInk.Faint,
    };

    /// <summary>The rules of the inks that a picture uses, bit by bit.</summary>
    public static void Append(StringBuilder svg, uint fills, uint strokes)
    {
        svg.Append(".dl-pic{max-width:100%;height:auto}");
        for (int k = 1; k < Names.Length; k++)
        {
            if ((fills & (1u << k)) != 0)
            {
                svg.Append(Fills[k]);
            }

            if ((strokes & (1u << k)) != 0)
            {
                svg.Append(Strokes[k]);
            }
        }

        svg.Append("@media print{.dl-pic{color-scheme:light;-webkit-print-color-adjust:exact;print-color-adjust:exact}}");
    }

    // What does not know light-dark() keeps the first colour.
    private static string Rule(int ink, char use, string property) => ".dl-" + use + "-" + Names[ink] + "{" + property + ":" + Light[ink]
        + ";" + property + ":light-dark(" + Light[ink] + "," + Dark[ink] + ")}";
}
