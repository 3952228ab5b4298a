using System.Text.RegularExpressions;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>What a mark on a bolt head can mean.</summary>
/// <remarks>
/// A mark narrows the grade down; it never proves it. Marks this library does not hold give no candidates and a finding, never an
/// exception.
/// </remarks>
internal static class HeadMarks
{
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
        List<HeadMarkCandidate> candidates = HeadMarkMeanings.Of(mark, thread);
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

        return new HeadMarkIdentification(mark, thread, candidates.AsReadOnly(), findings.AsReadOnly());
    }

    private static bool BelongsElsewhere(HeadMark mark, ScrewThread thread) => thread.System == ThreadSystem.Metric
        ? mark.Lines > 0 && HeadMarkData.Lines.Any(r => r.Fits(mark))
        : mark.Text is { } text && HeadMarkData.Texts.Any(
            r => r.Text == HeadMarkMeanings.Compact(text) && r.Grade.Ranges[0].Sizes.System != thread.System);

    private static void AddWarnings(HeadMark mark, List<HeadMarkCandidate> candidates, List<Finding> findings)
    {
        if (HeadMarkMeanings.IsProprietary(mark))
        {
            findings.Add(Finding.Of(FastenerFindings.NeverAFuse, Severity.Danger).With("mark", mark.ToString()));
        }

        if (candidates.Exists(c => c.Grade?.Family == MaterialFamily.StainlessSteel || HeadMarkData.InchStainless.Contains(c.HeadMark)))
        {
            findings.Add(Finding.Of(FastenerFindings.StainlessScattersWidely, Severity.Warning));
        }

        if (candidates.Count > 0 && mark.Text is { } text
            && Regex.IsMatch(HeadMarkMeanings.Compact(text), @"^0[0-9]+\.[0-9]$", RegexOptions.CultureInvariant))
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
}
