using System.Diagnostics.CodeAnalysis;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>
/// What a text says a bolt or pin is made of, before its size is known: a grade, a rod material, a measured hardness, unmarked, or not
/// known.
/// </summary>
/// <remarks>The one vocabulary of a bolt's material. Immutable; equal when they name the same material.</remarks>
public sealed class MaterialName : IEquatable<MaterialName>
{
    private readonly string name;

    private MaterialName(string name, BoltGrade? grade, RodMaterial? rod, Hardness? hardness)
        : this(name, grade, rod, hardness, null)
    {
    }

    private MaterialName(string name, BoltGrade? grade, RodMaterial? rod, Hardness? hardness, FastenerMaterial? own)
    {
        Own = own;
        this.name = name;
        Grade = grade;
        RodMaterial = rod;
        Hardness = hardness;
    }

    /// <summary>A bolt whose head carries no grade mark.</summary>
    public static MaterialName Unmarked { get; } = new("unmarked", null, null, null);

    /// <summary>Nobody knows what it is made of.</summary>
    public static MaterialName NotKnown { get; } = new("not known", null, null, null);

    /// <summary>The bolt grade; null when the text names none.</summary>
    public BoltGrade? Grade { get; }

    /// <summary>The rod material; null when the text names none.</summary>
    internal RodMaterial? RodMaterial { get; }

    /// <summary>The measured hardness; null when the text states none.</summary>
    public Hardness? Hardness { get; }

    /// <summary>A material of the caller's own; null when it is held here.</summary>
    public FastenerMaterial? Own { get; }

    /// <summary>True for a bolt without a grade mark.</summary>
    public bool IsUnmarked => ReferenceEquals(this, Unmarked);

    /// <summary>
    /// A material of the caller's own, see <see cref="FastenerMaterial.Own"/> and <see cref="FastenerMaterial.Certified"/>.
    /// </summary>
    /// <exception cref="ArgumentException">The strength of the material depends on the size of the bolt, or is not known.</exception>
    public static MaterialName Of(FastenerMaterial own)
    {
        Guard.NotNull(own, nameof(own));
        return own is { IsIdentified: true, Grade: null, RodMaterial: null }
            ? new MaterialName(own.Name, null, null, null, own)
            : throw new ArgumentException(
                "A material of the caller's own has a strength, and no grade held here; got " + own + ".", nameof(own));
    }

    /// <summary>The material in a text: "SAE 5", "8.8", "HRC 28", "6061-T6", "rod SAE 1018", "unmarked", "no marks", "not known".</summary>
    /// <exception cref="ArgumentException">The text names nothing held; the message says what is held.</exception>
    public static MaterialName Parse(string text) => TryParse(text, out MaterialName? material, out string? problem)
        ? material!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The material in a text, or what is wrong with the text; see <see cref="Parse"/>.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out MaterialName? material, [NotNullWhen(false)] out string? problem) =>
        MaterialNameText.TryParse(text, out material, out problem);

    /// <summary>Why there is no such material at a size; null when there is.</summary>
    /// <param name="thread">The thread of the bolt.</param>
    public string? ProblemAt(ScrewThread thread)
    {
        Guard.NotNull(thread, nameof(thread));
        return Grade is not null && !Grade.TryAt(thread, out _) ? Grade.NotHeldText(thread) : null;
    }

    /// <summary>The material at a size.</summary>
    /// <param name="thread">The thread, which decides the strength of a grade and whether unmarked means inch or metric.</param>
    /// <exception cref="ArgumentException">The standard does not hold the grade at that size; see <see cref="ProblemAt"/>.</exception>
    public FastenerMaterial At(ScrewThread thread)
    {
        Guard.NotNull(thread, nameof(thread));
        return Own is not null ? Own
            : Grade is not null ? FastenerMaterial.Graded(Grade, thread)
            : RodMaterial is not null ? FastenerMaterial.Rod(RodMaterial)
            : Hardness is not null ? FastenerMaterial.OfMeasuredHardness(Hardness)
            : !IsUnmarked ? FastenerMaterial.NotKnown
            : thread.System == ThreadSystem.Inch ? FastenerMaterial.UnmarkedInchBolt
            : FastenerMaterial.UnmarkedMetricBolt;
    }

    /// <inheritdoc/>
    public bool Equals(MaterialName? other) => other is not null && name == other.name && Equals(Own, other.Own);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as MaterialName);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(name);

    /// <summary>The name, e.g. "SAE 5", "HRC 28", "unmarked".</summary>
    public override string ToString() => name;

    internal static MaterialName Of(BoltGrade grade) => new(grade.Designation, grade, null, null);

    internal static MaterialName Of(RodMaterial rod) => new(rod.Designation, null, rod, null);

    internal static MaterialName Of(Hardness hardness) => new(hardness.ToString(), null, null, hardness);
}
