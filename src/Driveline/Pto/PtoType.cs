using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>A rear PTO type of ISO 500: stub geometry, rated speed and the power limits by edition.</summary>
/// <remarks>
/// Geometry and speed are published; power limits and root diameters are remembered or follow form rules and say so.
/// Type 1 turns at 540 min⁻¹, types 2 and 3 at 1000 min⁻¹, type 4 at 1300 min⁻¹.
/// </remarks>
public sealed class PtoType
{
    internal PtoType(
        int number, double nominalDiameterMm, int splines, SplineForm form, double speedPerMinute, Basis geometry, LengthBand root,
            PtoLimit[] limits)
    {
        Number = number;
        NominalDiameterMm = nominalDiameterMm;
        SplineCount = splines;
        SplineForm = form;
        SpeedPerMinute = speedPerMinute;
        GeometryBasis = geometry;
        RootDiameter = root;
        Limits = Array.AsReadOnly(limits);
    }

    /// <summary>All types, in order of their numbers.</summary>
    public static IReadOnlyList<PtoType> All => PtoTypes.All;

    /// <summary>Type number, 1 to 4.</summary>
    public int Number { get; }

    /// <summary>Nominal stub diameter: 35, 35, 45 and 57.5 mm for types 1 to 4.</summary>
    public Length NominalDiameter => Length.FromMillimeters(NominalDiameterMm);

    /// <summary>Number of splines: 6, 21, 20 and 22.</summary>
    public int SplineCount { get; }

    /// <summary>Flank form of the splines.</summary>
    internal SplineForm SplineForm { get; }

    /// <summary>Rated speed of the PTO.</summary>
    public RotationalSpeed RatedSpeed => RotationalSpeed.FromRevolutionsPerMinute(SpeedPerMinute);

    /// <summary>Basis of diameter, spline count and speed.</summary>
    public Basis GeometryBasis { get; }

    /// <summary>Diameter of the circle at the bottom of the splines, from form rules; both readings kept for type 1.</summary>
    public LengthBand RootDiameter { get; }

    /// <summary>Every power limit known for the type: editions of the standard first, then tractor manuals.</summary>
    internal IReadOnlyList<PtoLimit> Limits { get; }

    /// <summary>The lowest limit of all sources: the one to be careful by.</summary>
    internal PtoLimit LowestLimit => Limits.OrderBy(limit => limit.PowerW).First();

    /// <summary>The highest limit of all sources.</summary>
    internal PtoLimit HighestLimit => Limits.OrderByDescending(limit => limit.PowerW).First();

    internal double NominalDiameterMm { get; }

    internal double SpeedPerMinute { get; }

    /// <summary>What a caller must notice when the type carries a power: conflicting limits, and a power above the lowest.</summary>
    /// <param name="power">Power taken from the PTO; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
    public IReadOnlyList<Finding> Check(Power power)
    {
        double watts = Guard.NotNegative(Si.Watts(power), "PTO power", "W", nameof(power));
        var findings = new List<Finding>();
        PtoLimit lowest = LowestLimit, highest = HighestLimit;
        if (highest.PowerW > lowest.PowerW && watts > lowest.PowerW)
        {
            findings.Add(Finding.Of(PtoFindings.PowerLimitsDiffer, Severity.Note)
                .With("type", QuantityKind.Count, Number)
                .With("lowest", QuantityKind.Power, lowest.PowerW)
                .With("highest", QuantityKind.Power, highest.PowerW));
        }

        if (watts > lowest.PowerW)
        {
            findings.Add(Finding.Of(PtoFindings.PowerAboveLowestLimit, Severity.Warning)
                .With("type", QuantityKind.Count, Number)
                .With("power", QuantityKind.Power, watts)
                .With("lowest", QuantityKind.Power, lowest.PowerW)
                .With("source", lowest.Basis.Document));
        }

        return findings;
    }

    /// <summary>The type of that number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 1 to 4; the message lists what is held.</exception>
    public static PtoType Of(int number) => PtoTypes.Of(number);

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"PTO type {Number}: {NominalDiameterMm} mm, {SplineCount} splines, {SpeedPerMinute} min⁻¹");
}
