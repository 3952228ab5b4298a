using Driveline.Fatigue;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>A place of the driveline whose fatigue is followed: its curve, and its shear stress for the torque that is measured.</summary>
public sealed class FatigueDetail
{
    private FatigueDetail(string name, SNCurve curve, double paPerNm, double holdsToNm, Basis basis, bool isBolt)
    {
        IsBolt = isBolt;
        Name = name;
        Curve = curve;
        PaPerNm = paPerNm;
        HoldsToNm = holdsToNm;
        Basis = basis;
    }

    /// <summary>Name, e.g. "drive tube".</summary>
    public string Name { get; }

    /// <summary>True for the bolts of a joint.</summary>
    public bool IsBolt { get; }

    /// <summary>The curve.</summary>
    public SNCurve Curve { get; }

    /// <summary>Weakest basis of curve and stress.</summary>
    public Basis Basis { get; }

    internal double PaPerNm { get; }

    /// <summary>Torque up to which the curve holds; +∞ when nothing limits it.</summary>
    internal double HoldsToNm { get; }

    /// <summary>A place by its shear stress at a torque, in proportion.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="curve">Its curve.</param>
    /// <param name="stress">Shear stress; above 0.</param>
    /// <param name="at">The torque it comes with, as measured; above 0.</param>
    /// <param name="basis">Where the stress comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">Stress or torque is zero, negative or not finite.</exception>
    public static FatigueDetail Of(string name, SNCurve curve, Pressure stress, Torque at, Basis basis) => new(
        Guard.NotBlank(name, "Name", nameof(name)),
        Guard.NotNull(curve, nameof(curve)),
        Guard.Positive(Si.Pascals(stress), "Shear stress", "Pa", nameof(stress)) / Guard.Positive(Si.NewtonMeters(at), "Torque",
            "N·m", nameof(at)),
        double.PositiveInfinity,
        Basis.Weakest(curve.Basis, Guard.NotNull(basis, nameof(basis))),
        isBolt: false);

    /// <summary>A round shaft or tube: τ = T / W_p, on a curve of choice for its worst notch or weld.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="section">A round section.</param>
    /// <param name="curve">The curve of its worst detail.</param>
    /// <exception cref="ArgumentException">The section is no round one.</exception>
    public static FatigueDetail Shaft(string name, ShaftSection section, SNCurve curve)
    {
        Guard.NotNull(section, nameof(section));
        return section.SectionModulus is { } modulus
            ? Of(name, curve, Pressure.FromPascals(1 / modulus.CubicMeters), Torque.FromNewtonMeters(1),
                Basis.Given("shaft section as stated"))
            : throw new ArgumentException("A fatigue detail needs a round section; got " + section.Shape + ".", nameof(section));
    }

    /// <summary>
    /// The bolts of a shear-bolt joint on the curve of bolts in shear, up to the torque at which they yield; see <see
    /// cref="BoltFatigue"/>.
    /// </summary>
    /// <param name="name">Its name.</param>
    /// <param name="joint">The joint, at the place of the torque that is measured.</param>
    /// <exception cref="ArgumentException">The name is blank, or the joint is missing.</exception>
    public static FatigueDetail Bolts(string name, ShearBoltJoint joint)
    {
        BoltFatigue at1Nm = BoltFatigue.LowerBoundLife(Guard.NotNull(joint, nameof(joint)), Torque.FromNewtonMeters(1), 0);
        bool applies = at1Nm.Cycles is not null && at1Nm.RangePa > 0;
        return new FatigueDetail(
            Guard.NotBlank(name, "Name", nameof(name)),
            SNCurve.BoltsInShear,
            applies ? at1Nm.RangePa : 0,
            applies ? BoltFatigue.LowestShearYieldPa(joint.Bolt) / at1Nm.RangePa : 0,
            at1Nm.Basis,
            isBolt: true);
    }

    /// <summary>The same place when its own torque is so many times the one that is measured.</summary>
    /// <param name="partOverMeasured">Torque at the place over torque measured; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is zero, negative or not finite.</exception>
    public FatigueDetail WithTorqueRatio(double partOverMeasured)
    {
        double ratio = Guard.Positive(partOverMeasured, "Torque ratio", string.Empty, nameof(partOverMeasured));
        return new FatigueDetail(Name, Curve, PaPerNm * ratio, HoldsToNm / ratio, Basis, IsBolt);
    }
}
