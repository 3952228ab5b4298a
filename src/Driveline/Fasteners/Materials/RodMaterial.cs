using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>
/// A rod or bolt material without a bolt grade: aluminium, brass, bronze, low-carbon steel. Immutable; equal when the designations are
/// equal.
/// </summary>
internal sealed class RodMaterial : IEquatable<RodMaterial>
{
    internal RodMaterial(
        string designation, MaterialFamily family, ShearClass shearClass, RodValueKind valueKind, Sourced tensile, Sourced? yield,
            Sourced? typicalShear,
        params SourceConflict[] conflicts)
    {
        Designation = designation;
        Family = family;
        ShearClass = shearClass;
        ValueKind = valueKind;
        PublishedTensile = tensile;
        PublishedYield = yield;
        PublishedShear = typicalShear;
        Conflicts = conflicts;
        Tensile = Band(tensile, valueKind, conflicts);
    }

    /// <summary>Designation, e.g. "6061-T6 aluminium rod".</summary>
    public string Designation { get; }

    /// <summary>Kind of metal.</summary>
    public MaterialFamily Family { get; }

    /// <summary>Which shear-to-tensile ratio applies.</summary>
    public ShearClass ShearClass { get; }

    /// <summary>Whether the figures are minimum or typical values.</summary>
    public RodValueKind ValueKind { get; }

    /// <summary>Tensile strength of real rods.</summary>
    /// <remarks>
    /// A typical value is the expected one; low and high lie 10 % to each side (95 % intervals), widened by a conflicting source.
    /// A minimum value is the low end (a limit); expected and high are unbounded, because nothing assures a maximum.
    /// </remarks>
    public StressBand Tensile { get; }

    /// <summary>Tensile strength as printed.</summary>
    public Sourced PublishedTensile { get; }

    /// <summary>Yield strength as printed; null when none is held.</summary>
    public Sourced? PublishedYield { get; }

    /// <summary>Typical shear strength as printed; null when none is held.</summary>
    public Sourced? PublishedShear { get; }

    /// <summary>Yield strength; null when none is held.</summary>
    public Pressure? YieldStrength => PublishedYield is null ? null : Pressure.FromPascals(Si.Pascals(PublishedYield));

    /// <summary>Typical shear strength; null when none is held.</summary>
    public Pressure? TypicalShearStrength => PublishedShear is null ? null : Pressure.FromPascals(Si.Pascals(PublishedShear));

    /// <summary>Numbers on which sources disagree.</summary>
    public IReadOnlyList<SourceConflict> Conflicts { get; }

    /// <summary>The material in a text: its designation or the alloy within it, e.g. "6061-T6".</summary>
    /// <exception cref="ArgumentException">No material held is meant, or more than one; the message lists them.</exception>
    public static RodMaterial Parse(string text) => TryParse(text, out RodMaterial? material, out string? problem)
        ? material!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The material in a text, or what is wrong with the text.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out RodMaterial? material, [NotNullWhen(false)] out string? problem) =>
        RodMaterials.TryParse(text, out material, out problem);

    /// <inheritdoc/>
    public bool Equals(RodMaterial? other) => other is not null && Designation == other.Designation;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RodMaterial);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Designation);

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;

    private static StressBand Band(Sourced tensile, RodValueKind kind, SourceConflict[] conflicts)
    {
        double printed = Si.Pascals(tensile);
        if (kind != RodValueKind.Typical)
        {
            return StressBand.OfSi(
                new Band(printed, double.PositiveInfinity, double.PositiveInfinity),
                new BandBasis(tensile.Basis, tensile.Basis, tensile.Basis, BandEnd.Limit, BandEnd.Interval95));
        }

        const double Spread = 0.10;
        double low = printed * (1 - Spread);
        double high = printed * (1 + Spread);
        Basis ends = Basis.Weakest(
            tensile.Basis, Basis.CommonPractice("rods of one alloy and temper lie within about 10 % of the typical strength"));
        foreach (SourceConflict conflict in conflicts.Where(c => c.Subject == RodMaterials.TensileStrength))
        {
            low = Math.Min(low, Si.Pascals(conflict.Other) * (1 - Spread));
            high = Math.Max(high, Si.Pascals(conflict.Other) * (1 + Spread));
            ends = Basis.Weakest(ends, conflict.Other.Basis);
        }

        return StressBand.OfSi(
            new Band(low, printed, high), new BandBasis(ends, tensile.Basis, ends, BandEnd.Interval95, BandEnd.Interval95));
    }
}
