using System.Text.RegularExpressions;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>The bolts that a mark may belong to.</summary>
internal static class HeadMarkMeanings
{
    // Proprietary "grade 9" type bolts: 180 ksi, 9 or more lines or a word mark (trade identification charts).
    private const double ProprietaryKsi = 180;

    private const int ProprietaryLines = 9;

    // 1 kgf/mm², exact: 9.80665 N over 1 mm².
    private const double KilogramForcePerSquareMillimeter = Si.Gravity * 1e6;

    /// <summary>What a bolt with this mark and thread may be, likeliest first; none when the mark is not held.</summary>
    public static List<HeadMarkCandidate> Of(HeadMark mark, ScrewThread thread) => mark.IsNone ? Unmarked(thread) : Marked(mark, thread);

    /// <summary>True for the mark of a bolt stronger than any grade held.</summary>
    public static bool IsProprietary(HeadMark mark) =>
        mark.Lines >= ProprietaryLines || (mark.Text is { } text && Compact(text) is "L9" or "9" or "GRADE9");

    /// <summary>The text as it is held: no spaces, capitals.</summary>
    public static string Compact(string text) =>
        Regex.Replace(text.Length > 32 ? string.Empty : text.ToUpperInvariant().Replace(',', '.'), @"[\s\-_]", string.Empty,
            RegexOptions.CultureInvariant);

    private static List<HeadMarkCandidate> Unmarked(ScrewThread thread)
    {
        bool inch = thread.System == ThreadSystem.Inch;
        var candidates = new List<HeadMarkCandidate>();
        foreach (HeadMarkData.TextRow row in inch ? HeadMarkData.UnmarkedInch : HeadMarkData.UnmarkedMetric)
        {
            Add(candidates, row.Grade, row.Basis, thread);
        }

        FastenerMaterial ungraded = inch ? FastenerMaterial.UnmarkedInchBolt : FastenerMaterial.UnmarkedMetricBolt;
        candidates.Add(new HeadMarkCandidate("ungraded bolt", null, "no grade mark", ungraded.Tensile, HeadMarkData.Charts));
        return candidates;
    }

    private static List<HeadMarkCandidate> Marked(HeadMark mark, ScrewThread thread)
    {
        var byText = new List<HeadMarkCandidate>();
        var byLines = new List<HeadMarkCandidate>();
        if (mark.Text is { } text)
        {
            AddByText(byText, Compact(text), thread);
        }

        if (thread.System == ThreadSystem.Inch)
        {
            foreach (HeadMarkData.LineRow row in HeadMarkData.Lines)
            {
                if (row.Fits(mark))
                {
                    Add(byLines, row.Grade, row.Basis, thread);
                }
            }
        }

        if (IsProprietary(mark))
        {
            byLines.Add(Proprietary(mark));
        }

        // Text and lines that agree settle more than either; text and lines that disagree settle nothing, so both stay.
        List<HeadMarkCandidate> agreeing = byText.FindAll(c => byLines.Exists(l => l.Name == c.Name));
        return byText.Count == 0 ? byLines : byLines.Count == 0 ? byText : agreeing.Count > 0 ? agreeing : [.. byText, .. byLines];
    }

    private static void AddByText(List<HeadMarkCandidate> candidates, string text, ScrewThread thread)
    {
        string withoutZero = Regex.Replace(text, @"^0(?=[0-9]+\.[0-9]$)", string.Empty, RegexOptions.CultureInvariant);
        foreach (HeadMarkData.TextRow row in HeadMarkData.Texts)
        {
            if (row.Text == withoutZero)
            {
                Add(candidates, row.Grade, row.Basis, thread);
            }
        }

        if (thread.System == ThreadSystem.Inch && HeadMarkData.InchStainless.Contains(text))
        {
            RodMaterial stainless = RodMaterials.All.First(m => m.Family == MaterialFamily.StainlessSteel);
            candidates.Add(new HeadMarkCandidate(stainless.Designation, null, text, stainless.Tensile, HeadMarkData.Charts));
        }

        if (text is "4T" or "7T" or "9T" or "11T")
        {
            Basis old = Basis.CommonPractice("JIS B 1051, old marks: the number is the tensile strength in 10 kgf/mm²")
                .ReadVia("pages of two Japanese screw dealers; the marks lapsed in 1999");
            double pascals = int.Parse(
                text.TrimEnd('T'), System.Globalization.CultureInfo.InvariantCulture) * 10 * KilogramForcePerSquareMillimeter;
            candidates.Add(new HeadMarkCandidate(
                text + " (old JIS)", null, text, StressBand.AtLeast(UnitsNet.Pressure.FromPascals(pascals), old), old));
        }
    }

    private static void Add(List<HeadMarkCandidate> candidates, BoltGrade grade, Basis basis, ScrewThread thread)
    {
        if (grade.TryAt(thread, out GradeStrength? strength))
        {
            candidates.Add(new HeadMarkCandidate(grade.Designation, grade, grade.HeadMark, strength!.Tensile, basis));
        }
    }

    private static HeadMarkCandidate Proprietary(HeadMark mark) => new(
        "proprietary high-strength bolt",
        null,
        mark.ToString(),
        StressBand.AtLeast(UnitsNet.Pressure.FromPascals(ProprietaryKsi * 1000 * Si.Psi), HeadMarkData.Charts),
        HeadMarkData.Charts);
}
