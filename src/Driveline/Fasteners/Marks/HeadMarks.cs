using System.Text.RegularExpressions;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>What a mark on a bolt head can mean.</summary>
/// <remarks>
/// A mark narrows the grade down; it never proves it. Marks this library does not hold give no candidates and a finding, never an
/// exception.
/// </remarks>
public static class HeadMarks
{
    // Proprietary "grade 9" type bolts: 180 ksi, 9 or more lines or a word mark (trade identification charts).
    private const double ProprietaryKsi = 180;

    private const int ProprietaryLines = 9;

    // 1 kgf/mm², exact: 9.80665 N over 1 mm².
    private const double KilogramForcePerSquareMillimeter = Si.Gravity * 1e6;

    /// <summary>What an inch bolt with this many radial lines may be.</summary>
    public static HeadMarkIdentification Identify(int radialLines, ScrewThread thread) =>
        Identify(HeadMark.RadialLines(radialLines), thread);

    /// <summary>
    /// What a bolt with the marks in a text may be, see <see cref="HeadMark.Parse"/>; an empty text is no mark, a bare number is stamped.
    /// </summary>
    public static HeadMarkIdentification Identify(string? text, ScrewThread thread) => Identify(
        string.IsNullOrWhiteSpace(text) ? HeadMark.None : HeadMark.TryParse(text, out HeadMark? mark, out _) ? mark!
            : HeadMark.OfText(text!), thread);

    /// <summary>What a bolt with this mark and thread may be.</summary>
    /// <param name="mark">What is seen on the head.</param>
    /// <param name="thread">Its thread, which rules out grades not made in that size.</param>
    /// <example>Three radial lines at 1/2-13 UNC: SAE 5 first, 827 to 1048 MPa.</example>
    public static HeadMarkIdentification Identify(HeadMark mark, ScrewThread thread)
    {
        Guard.NotNull(mark, nameof(mark));
        Guard.NotNull(thread, nameof(thread));
        var findings = new List<Finding>();
        List<HeadMarkCandidate> candidates = mark.IsNone ? Unmarked(thread) : Marked(mark, thread);
        if (mark.IsNone)
        {
            findings.Add(Finding.Of(FastenerFindings.UnmarkedHasNoMaximum, Severity.Warning));
        }
        else if (candidates.Count == 0)
        {
            findings.Add(Finding.Of(
                    BelongsElsewhere(mark, thread) ? FastenerFindings.MarkOfOtherThreads : FastenerFindings.MarkNotHeld, Severity.Warning)
                .With("mark", mark.ToString()).With("thread", thread.Designation));
        }

        AddWarnings(mark, candidates, findings);
        if (candidates.Count > 1)
        {
            findings.Add(Several(mark, candidates));
        }

        if (thread.IsSeriesAssumed)
        {
            findings.Add(Finding.Of(FastenerFindings.CoarseThreadAssumed, Severity.Note).With("thread", thread.Designation));
        }

        return new HeadMarkIdentification(mark, thread, candidates, findings);
    }

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
            Basis old = Basis.FromMemory("JIS B 1051, old marks: the number is the tensile strength in 10 kgf/mm²");
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

    private static bool IsProprietary(HeadMark mark) =>
        mark.Lines >= ProprietaryLines || (mark.Text is { } text && Compact(text) is "L9" or "9" or "GRADE9");

    private static HeadMarkCandidate Proprietary(HeadMark mark) => new(
        "proprietary high-strength bolt",
        null,
        mark.ToString(),
        StressBand.AtLeast(UnitsNet.Pressure.FromPascals(ProprietaryKsi * 1000 * Si.Psi), HeadMarkData.Charts),
        HeadMarkData.Charts);

    private static bool BelongsElsewhere(HeadMark mark, ScrewThread thread) => thread.System == ThreadSystem.Metric
        ? mark.Lines > 0 && HeadMarkData.Lines.Any(r => r.Fits(mark))
        : mark.Text is { } text && HeadMarkData.Texts.Any(r => r.Text == Compact(text) && r.Grade.Ranges[0].Sizes.System != thread.System);

    private static void AddWarnings(HeadMark mark, List<HeadMarkCandidate> candidates, List<Finding> findings)
    {
        if (IsProprietary(mark))
        {
            findings.Add(Finding.Of(FastenerFindings.NeverAFuse, Severity.Danger).With("mark", mark.ToString()));
        }

        if (candidates.Exists(c => c.Grade?.Family == MaterialFamily.StainlessSteel || HeadMarkData.InchStainless.Contains(c.HeadMark)))
        {
            findings.Add(Finding.Of(FastenerFindings.StainlessScattersWidely, Severity.Warning));
        }

        if (candidates.Count > 0 && mark.Text is { } text
            && Regex.IsMatch(Compact(text), @"^0[0-9]+\.[0-9]$", RegexOptions.CultureInvariant))
        {
            findings.Add(Finding.Of(FastenerFindings.HeadLimitsTension, Severity.Note).With("mark", mark.ToString()));
        }
    }

    private static Finding Several(HeadMark mark, List<HeadMarkCandidate> candidates)
    {
        double low = double.PositiveInfinity;
        double high = 0;
        foreach (HeadMarkCandidate candidate in candidates)
        {
            Band band = candidate.Tensile is { } tensile ? tensile.SiBand : new Band(0, double.PositiveInfinity, double.PositiveInfinity);
            low = Math.Min(low, band.Low);
            high = Math.Max(high, band.High);
        }

        return Finding.Of(FastenerFindings.SeveralGradesFitTheMark, Severity.Warning)
            .With("mark", mark.ToString())
            .With("grades", string.Join(", ", candidates.Select(c => c.Name)))
            .With("low", QuantityKind.Stress, low)
            .With("high", QuantityKind.Stress, high);
    }

    private static string Compact(string text) =>
        Regex.Replace(text.Length > 32 ? string.Empty : text.ToUpperInvariant().Replace(',', '.'), @"[\s\-_]", string.Empty,
            RegexOptions.CultureInvariant);
}
