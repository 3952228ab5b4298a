using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>
/// A spring pin or hardened dowel with its published minimum shear load. Immutable; equal when the designations are equal.
/// </summary>
/// <remarks>
/// Standards give only a minimum: a pin may be stronger and nothing assures by how much, so expected and high are unbounded.
/// </remarks>
public sealed class SpringPin : IEquatable<SpringPin>
{
    internal SpringPin(SpringPinKind kind, string standard, string size, double diameterM, string material, MaterialFamily family,
        Sourced load, int planes)
    {
        Kind = kind;
        Standard = standard;
        Size = size;
        DiameterM = diameterM;
        Material = material;
        Family = family;
        PublishedLoad = load;
        PublishedPlanes = planes;
    }

    /// <summary>Every pin held.</summary>
    public static IReadOnlyList<SpringPin> All => SpringPins.All;

    /// <summary>Standard, size and material, e.g. "ISO 8752 8 mm, spring steel".</summary>
    public string Designation => Standard + " " + Size + ", " + Material;

    /// <summary>Kind of pin.</summary>
    internal SpringPinKind Kind { get; }

    /// <summary>The standard, e.g. "ISO 8752".</summary>
    public string Standard { get; }

    /// <summary>Nominal size as printed, e.g. "8 mm", "1/4 in".</summary>
    public string Size { get; }

    /// <summary>Material in words.</summary>
    public string Material { get; }

    /// <summary>Kind of metal.</summary>
    internal MaterialFamily Family { get; }

    /// <summary>Nominal diameter.</summary>
    public Length NominalDiameter => Length.FromMeters(DiameterM);

    /// <summary>The minimum shear load as printed.</summary>
    public Sourced PublishedLoad { get; }

    /// <summary>Number of shear planes of <see cref="PublishedLoad"/>: 2 for spring pins, 1 for dowels.</summary>
    public int PublishedPlanes { get; }

    /// <summary>Minimum load in double shear; twice the printed load where that is for one plane.</summary>
    public Force MinimumDoubleShearLoad => Force.FromNewtons(MinimumDoubleShearN);

    /// <summary>Load in double shear: at least the published minimum, expected and high unbounded.</summary>
    public ForceBand DoubleShearLoad => ForceBand.AtLeast(MinimumDoubleShearLoad, PublishedLoad.Basis);

    internal double DiameterM { get; }

    internal double MinimumDoubleShearN => Si.Newtons(PublishedLoad) * 2 / PublishedPlanes;

    /// <summary>
    /// The pin in a text: standard and size, optionally "austenitic" or "A", e.g. "ISO 8752 8 mm", "ISO 8752 - 8 x 40 - St".
    /// </summary>
    /// <exception cref="ArgumentException">No pin held is meant; the message lists the nearest or the standards held.</exception>
    public static SpringPin Parse(string text) => TryParse(text, out SpringPin? pin, out string? problem)
        ? pin!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The pin in a text, or what is wrong with the text.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out SpringPin? pin, [NotNullWhen(false)] out string? problem) =>
        SpringPinText.TryParse(text, out pin, out problem);

    /// <inheritdoc/>
    public bool Equals(SpringPin? other) => other is not null && Designation == other.Designation && Kind == other.Kind;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SpringPin);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Designation);

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;
}
