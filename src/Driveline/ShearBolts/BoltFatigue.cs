using Driveline.Fatigue;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <summary>How long a shear bolt lasts at least under repeated work peaks.</summary>
/// <remarks>
/// Shear range from 0 to the peak, Δτ = T / (m · A · r), on the curve of EN 1993-1-9 for bolts in shear
/// (<see cref="SNCurve.BoltsInShear"/>): a lower bound. Valid while the peak stays below shear yield, f_y/√3, with f_y the lowest
/// yield strength of the bolt's class; above it the bolt yields at each peak and no life is given. The category holds for planes
/// through the shank: with threads in the plane the root area is used and a finding says so. The low load share counts: one bolt
/// when holes are worn or their fit is not known.
/// </remarks>
public sealed class BoltFatigue
{
    private BoltFatigue(double rangePa, double? cycles, double peaksPerHour, Basis basis, IReadOnlyList<Finding> findings)
    {
        RangePa = rangePa;
        Cycles = cycles;
        Hours = cycles is { } n ? n / peaksPerHour : null;
        Basis = basis;
        Findings = findings;
    }

    /// <summary>Shear stress range Δτ at the work peak.</summary>
    public Pressure Range => Pressure.FromPascals(RangePa);

    /// <summary>Peaks endured at least; positive infinity below the cut-off; null when the curve does not apply.</summary>
    public double? Cycles { get; }

    /// <summary>
    /// Hours endured at least at the stated rate of peaks; positive infinity below the cut-off or without peaks; null when the
    /// curve does not apply.
    /// </summary>
    public double? Hours { get; }

    /// <summary>Weakest basis used.</summary>
    public Basis Basis { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    internal double RangePa { get; }

    /// <summary>Least life of the joint's bolts under a repeated peak.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="workPeak">Highest torque of normal work, at the joint; 0 or more.</param>
    /// <param name="peaksPerHour">How often it comes; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
    public static BoltFatigue LowerBoundLife(ShearBoltJoint joint, Torque workPeak, double peaksPerHour)
    {
        Guard.NotNull(joint, nameof(joint));
        return LowerBoundLife(
            joint,
            ShearPlane.Of(joint.Bolt),
            Guard.NotNegative(Si.NewtonMeters(workPeak), "Work peak", "N·m", nameof(workPeak)),
            Guard.NotNegative(peaksPerHour, "Peaks per hour", "1/h", nameof(peaksPerHour)));
    }

    /// <summary>The range of stress and the cycles it takes.</summary>
    public override string ToString() => Cycles is { } cycles
        ? FormattableString.Invariant($"{Range.Megapascals:G4} MPa: {cycles:G3} cycles")
        : FormattableString.Invariant($"{Range.Megapascals:G4} MPa");

    internal static BoltFatigue LowerBoundLife(BreakTorque breakTorque, double peakNm, double peaksPerHour) =>
        LowerBoundLife(breakTorque.Joint, breakTorque.Plane, peakNm, peaksPerHour);

    /// <summary>True when the peak is above shear yield of the weakest bolt, so that no life is given.</summary>
    internal static bool YieldsAtEachPeak(BreakTorque breakTorque, double peakNm) =>
        IsAboveYield(breakTorque.Joint.Bolt, breakTorque.Plane, RangeOf(breakTorque.Joint, breakTorque.Plane, peakNm));

    private static BoltFatigue LowerBoundLife(ShearBoltJoint joint, ShearPlane plane, double peakNm, double rate)
    {
        ShearBolt bolt = joint.Bolt;
        Basis basis = Basis.Weakest(SNCurve.BoltsInShear.Basis, Basis.Weakest(plane.Load.Basis.Low, joint.Basis));
        double rangePa = RangeOf(joint, plane, peakNm);
        var findings = new List<Finding>(2);
        if (bolt.PlaneThrough is PlaneThrough.Thread or PlaneThrough.NotKnown && bolt.FittedSpringPin is null)
        {
            findings.Add(Finding.Of(ShearBoltFindings.FatigueThreadsInPlane, Severity.Note));
        }

        double shearYieldPa = LowestShearYieldPa(bolt);
        bool applies = Applies(bolt, plane);
        if (IsAboveYield(bolt, plane, rangePa))
        {
            applies = false;
            findings.Add(
                Finding.Of(ShearBoltFindings.YieldsAtEachPeak, Severity.Warning).Barring(Bars.Quiet).WithSettledBy(Measurements.WorkPeak)
                .With("peak", QuantityKind.Torque, peakNm)
                .With("stress", QuantityKind.Stress, rangePa)
                .With("yield", QuantityKind.Stress, shearYieldPa)
                .With("peaks", QuantityKind.Number, SNCurve.BoltsInShear.CyclesAt(Pressure.FromPascals(shearYieldPa))));
        }

        double? cycles = applies ? SNCurve.BoltsInShear.CyclesAt(Pressure.FromPascals(rangePa)) : null;
        return new BoltFatigue(rangePa, cycles, rate, basis, findings.AsReadOnly());
    }

    /// <summary>Lowest shear yield strength of the bolt's class, f_y/√3; 0 when its tensile strength is not known.</summary>
    internal static double LowestShearYieldPa(ShearBolt bolt) =>
        ShearRatios.YieldToTensile(bolt.Material.ShearClass) * (bolt.Material.Tensile?.SiBand.Low ?? 0) / Math.Sqrt(3);

    private static bool Applies(ShearBolt bolt, ShearPlane plane) =>
        LoadedAreaM2(bolt, plane) > 0 && LowestShearYieldPa(bolt) > 0 && bolt.FittedSpringPin is null;

    private static bool IsAboveYield(ShearBolt bolt, ShearPlane plane, double rangePa) =>
        Applies(bolt, plane) && rangePa > LowestShearYieldPa(bolt);

    private static double RangeOf(ShearBoltJoint joint, ShearPlane plane, double peakNm)
    {
        double areaM2 = LoadedAreaM2(joint.Bolt, plane);
        double planes = joint.PlanesPerBolt * (joint.IsTight ? joint.Bolts : 1);
        return areaM2 > 0 ? peakNm / (planes * areaM2 * joint.RadiusM) : 0;
    }

    private static double LoadedAreaM2(ShearBolt bolt, ShearPlane plane) =>
        bolt.PlaneThrough is PlaneThrough.Thread or PlaneThrough.NotKnown && bolt.Thread is { } thread ? thread.RootAreaM2
            : plane.Low.AreaM2;
}
