using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>What a grade promises at a range of sizes.</summary>
/// <remarks>
/// Tensile band. Low: the specified minimum (a limit). High: the specified maximum where there is one (a limit), else the strength at
/// the maximum core hardness through the conversion tables (a 95 % interval), else unbounded. Expected: the strength at the middle of
/// the permitted hardness, which a maker aims for, or the middle of minimum and specified maximum; unbounded when neither is held.
/// Public conversion tables differ by about 5 %, which the tail of the 95 % interval stands for; see <see cref="Hardness.ToTensile"/>.
/// </remarks>
public sealed class GradeStrength
{
    internal GradeStrength(
        string sizeRange, StressBand tensile, Sourced minimumTensile, Sourced? proofStress, Sourced? yieldStrength,
            HardnessRange? coreHardness, Basis basis)
    {
        SizeRange = sizeRange;
        Tensile = tensile;
        MinimumTensile = minimumTensile;
        PublishedProofStress = proofStress;
        PublishedYieldStrength = yieldStrength;
        CoreHardness = coreHardness;
        Basis = basis;
    }

    /// <summary>The sizes it holds for, in words.</summary>
    public string SizeRange { get; }

    /// <summary>Tensile strength of real bolts of the grade, see the remarks of the type.</summary>
    public StressBand Tensile { get; }

    /// <summary>The specified minimum tensile strength as printed.</summary>
    public Sourced MinimumTensile { get; }

    /// <summary>Proof stress (S_p); null when the standard gives none.</summary>
    public Pressure? ProofStress => PublishedProofStress is null ? null : Pressure.FromPascals(Si.Pascals(PublishedProofStress));

    /// <summary>Minimum yield strength or its stand-in (stress at 0.2 %); null when the standard gives none.</summary>
    public Pressure? YieldStrength => PublishedYieldStrength is null ? null : Pressure.FromPascals(Si.Pascals(PublishedYieldStrength));

    /// <summary>Proof stress as printed; null when the standard gives none.</summary>
    public Sourced? PublishedProofStress { get; }

    /// <summary>Yield strength as printed; null when the standard gives none.</summary>
    public Sourced? PublishedYieldStrength { get; }

    /// <summary>Permitted core hardness; null when not held. Ends of fasteners below class 8.8 may read up to HV 250.</summary>
    internal HardnessRange? CoreHardness { get; }

    /// <summary>Basis of the specified figures.</summary>
    public Basis Basis { get; }

    /// <summary>Its tensile strength, with its unit, and the sizes for which it holds.</summary>
    public override string ToString() => SizeRange + ": " + Tensile;
}
