using System.Diagnostics.CodeAnalysis;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>
/// A bolt grade or property class of a standard, with the strength it promises by size. Immutable; equal when the designations are equal.
/// </summary>
public sealed class BoltGrade : IEquatable<BoltGrade>
{
    private readonly BoltGrade? longBoltGrade;
    private readonly double longBoltOverM;

    internal BoltGrade(
        string standard, string name, string designation, string headMark, MaterialFamily family, ShearClass shearClass,
            params GradeRange[] ranges)
        : this(standard, name, designation, headMark, family, shearClass, ranges, double.PositiveInfinity, null)
    {
    }

    private BoltGrade(
        string standard, string name, string designation, string headMark, MaterialFamily family, ShearClass shearClass,
            GradeRange[] ranges,
        double longBoltOverM, BoltGrade? longBoltGrade)
    {
        Standard = standard;
        Name = name;
        Designation = designation;
        HeadMark = headMark;
        Family = family;
        ShearClass = shearClass;
        Ranges = ranges;
        this.longBoltOverM = longBoltOverM;
        this.longBoltGrade = longBoltGrade;
    }

    /// <summary>Designation with its system, e.g. "SAE 5", "ISO 8.8", "ASTM A307 A", "A2-70".</summary>
    public string Designation { get; }

    /// <summary>The standard, e.g. "SAE J429".</summary>
    public string Standard { get; }

    /// <summary>Name within the standard, e.g. "5", "8.8".</summary>
    public string Name { get; }

    /// <summary>The mark the standard puts on the head, in words.</summary>
    public string HeadMark { get; }

    /// <summary>Kind of metal.</summary>
    internal MaterialFamily Family { get; }

    /// <summary>Which shear-to-tensile ratio applies.</summary>
    public ShearClass ShearClass { get; }

    /// <summary>The rows of its table, smallest sizes first.</summary>
    internal IReadOnlyList<GradeRange> Ranges { get; }

    /// <summary>Numbers on which sources disagree, over all sizes.</summary>
    internal IReadOnlyList<SourceConflict> Conflicts => Ranges.SelectMany(r => r.Conflicts).ToList();

    /// <summary>Every grade held: SAE J429, ISO 898-1, ASTM and ISO 3506-1, in that order.</summary>
    public static IReadOnlyList<BoltGrade> All => BoltGrades.All;

    /// <summary>The grade in a text as people write it: "SAE grade 5", "Gr.5", "8.8", "ISO 898-1 8.8", "A307A", "A2-70".</summary>
    /// <remarks>A bare "grade 5" is read as SAE J429; a bare "8.8" as ISO 898-1.</remarks>
    /// <exception cref="ArgumentException">No grade held is meant; the message lists those held.</exception>
    public static BoltGrade Parse(string text) => TryParse(text, out BoltGrade? grade, out string? problem)
        ? grade!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The grade in a text, or what is wrong with the text.</summary>
    /// <param name="text">See <see cref="Parse"/>; null is a problem, not an exception.</param>
    /// <param name="grade">The grade; null when there is a problem.</param>
    /// <param name="problem">What is wrong and which grades are held; null when there is a grade.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out BoltGrade? grade, [NotNullWhen(false)] out string? problem) =>
        GradeText.TryParse(text, out grade, out problem);

    /// <summary>What the grade promises at a size; false when the standard does not hold the grade at that size.</summary>
    /// <remarks>Bolts are taken as short; see <see cref="TryAt(ScrewThread, Length, out GradeStrength)"/>.</remarks>
    public bool TryAt(ScrewThread thread, [NotNullWhen(true)] out GradeStrength? strength)
    {
        GradeRange? range = RangeOf(thread);
        strength = range?.Strength;
        return range is not null;
    }

    /// <summary>What the grade promises at a size and bolt length; false when the standard does not hold it there.</summary>
    /// <remarks>Only SAE grade 2 depends on length: over 6 in a bolt takes the values of grade 1. Exactly 6 in is still short.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The length is not a finite value above 0.</exception>
    public bool TryAt(ScrewThread thread, Length boltLength, [NotNullWhen(true)] out GradeStrength? strength)
    {
        double lengthM = Guard.Positive(Si.Meters(boltLength), "Bolt length", "m", nameof(boltLength));
        return lengthM > longBoltOverM + 1e-9 && longBoltGrade is not null
            ? longBoltGrade.TryAt(thread, out strength)
            : TryAt(thread, out strength);
    }

    /// <summary>What the grade promises at a size.</summary>
    /// <exception cref="ArgumentException">The standard does not hold the grade at that size; the message lists the sizes held.</exception>
    public GradeStrength At(ScrewThread thread) => TryAt(thread, out GradeStrength? strength) ? strength! : throw NotHeld(thread);

    /// <summary>What the grade promises at a size and bolt length.</summary>
    /// <exception cref="ArgumentException">The standard does not hold the grade there; the message lists the sizes held.</exception>
    public GradeStrength At(ScrewThread thread, Length boltLength) =>
        TryAt(thread, boltLength, out GradeStrength? strength) ? strength! : throw NotHeld(thread);

    /// <inheritdoc/>
    public bool Equals(BoltGrade? other) => other is not null && Designation == other.Designation;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BoltGrade);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Designation);

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;

    internal BoltGrade WithLongBolts(double overInches, BoltGrade grade) =>
        new(Standard, Name, Designation, HeadMark, Family, ShearClass, [.. Ranges], overInches * Si.Inch, grade);

    internal GradeRange? RangeOf(ScrewThread thread)
    {
        Guard.NotNull(thread, nameof(thread));
        foreach (GradeRange range in Ranges)
        {
            if (range.Sizes.Covers(thread))
            {
                return range;
            }
        }

        return null;
    }

    internal string NotHeldText(ScrewThread thread) =>
        Designation + " is not held at " + thread + "; held: " + string.Join("; ", Ranges.Select(r => r.Sizes.Text)) + ".";

    private ArgumentException NotHeld(ScrewThread thread) => new(NotHeldText(thread), nameof(thread));
}
