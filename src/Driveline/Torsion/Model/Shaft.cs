using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>A shaft without inertia: a torsional spring with viscous damping, and what sits in line with it.</summary>
/// <remarks>
/// T = k·θ + c·dθ/dt, with k stiffness [N·m/rad], θ twist [rad], c damping [N·m·s/rad]. Immutable. A gear of ratio i sits
/// behind the spring: the far rotor turns i times as fast. All figures are at the shaft's own speed.
/// </remarks>
public sealed class Shaft
{
    private Shaft(double stiffness)
    {
        StiffnessNmPerRad = stiffness;
        Ratio = 1;
        JointCosine = 1;
    }

    private Shaft(Shaft other)
    {
        StiffnessNmPerRad = other.StiffnessNmPerRad;
        DampingNmsPerRad = other.DampingNmsPerRad;
        Ratio = other.Ratio;
        BacklashRad = other.BacklashRad;
        JointCosine = other.JointCosine;
        JointPhaseRad = other.JointPhaseRad;
    }

    /// <summary>Torsional stiffness k.</summary>
    public RotationalStiffness Stiffness => RotationalStiffness.FromNewtonMetersPerRadian(StiffnessNmPerRad);

    /// <summary>Viscous damping c in the shaft, N·m·s/rad; 0 unless given.</summary>
    public double DampingNmsPerRad { get; private set; }

    /// <summary>Speed of the far rotor over the shaft's own, above 0; 1 unless given.</summary>
    public double Ratio { get; private set; }

    /// <summary>Free play between the shaft and its driving rotor.</summary>
    public Angle Backlash => Angle.FromRadians(BacklashRad);

    internal double StiffnessNmPerRad { get; }

    internal double BacklashRad { get; private set; }

    internal double JointCosine { get; private set; }

    internal double JointPhaseRad { get; private set; }

    /// <summary>A shaft of that stiffness.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Stiffness is zero, negative or not finite.</exception>
    public static Shaft OfStiffness(RotationalStiffness stiffness) =>
        new(Guard.Positive(Si.NewtonMetersPerRadian(stiffness), "Shaft stiffness", "N·m/rad", nameof(stiffness)));

    /// <summary>A shaft of a stiffness above 0, N·m/rad, with a damping of 0 or more, N·m·s/rad.</summary>
    internal static Shaft Of(double stiffness, double damping) =>
        new(Guard.Positive(stiffness, "Shaft stiffness", "N·m/rad", nameof(stiffness)))
        {
            DampingNmsPerRad = Guard.NotNegative(damping, "Shaft damping", "N·m·s/rad", nameof(damping)),
        };

    /// <summary>A solid round shaft: k = G·J/L with J = π·d⁴/32.</summary>
    /// <param name="diameter">Diameter d; above 0.</param>
    /// <param name="length">Length L between the ends that twist against each other; above 0.</param>
    /// <param name="shearModulus">Shear modulus G; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is zero, negative or not finite.</exception>
    /// <example>d 50 mm, L 1 m, G 80 GPa: 49087.4 N·m/rad.</example>
    public static Shaft SolidRound(Length diameter, Length length, Pressure shearModulus) =>
        Tube(diameter, Length.Zero, length, shearModulus);

    /// <summary>A round tube: k = G·J/L with J = π·(D⁴ − d⁴)/32.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range, or the bore is not smaller than the outside.</exception>
    public static Shaft Tube(Length outerDiameter, Length innerDiameter, Length length, Pressure shearModulus)
    {
        double outer = Guard.Positive(Si.Meters(outerDiameter), "Outer diameter", "m", nameof(outerDiameter));
        double inner = Guard.NotNegative(Si.Meters(innerDiameter), "Inner diameter", "m", nameof(innerDiameter));
        if (inner >= outer)
        {
            throw Guard.OutOfRange(
                "Inner diameter", FormattableString.Invariant($"below the outer diameter {outer:G6} m"), inner, "m", nameof(innerDiameter));
        }

        var none = default(NoSteps);
        return new Shaft(ShaftStiffness.NmPerRad(
            outer,
            inner,
            Guard.Positive(Si.Meters(length), "Shaft length", "m", nameof(length)),
            Guard.Positive(Si.Pascals(shearModulus), "Shear modulus", "Pa", nameof(shearModulus)),
            ref none));
    }

    /// <summary>The same shaft with viscous damping c, N·m·s/rad; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Damping is negative or not finite.</exception>
    public Shaft WithDamping(double newtonMeterSecondsPerRadian) => new(this)
    {
        DampingNmsPerRad = Guard.NotNegative(
            newtonMeterSecondsPerRadian, "Shaft damping", "N·m·s/rad", nameof(newtonMeterSecondsPerRadian)),
    };

    /// <summary>The same shaft with a loss-free gear behind it: far speed = ratio × own speed, own torque = ratio × far torque.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is zero, negative or not finite.</exception>
    public Shaft WithRatio(double ratio) => new(this) { Ratio = Guard.Positive(ratio, "Gear ratio", string.Empty, nameof(ratio)) };

    /// <summary>
    /// The same shaft with free play. A run starts with the play taken up in the driving direction, or in reverse when the shaft starts
    /// with reverse torque.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Play is negative or not finite.</exception>
    public Shaft WithBacklash(Angle play) => new(this)
    {
        BacklashRad = Guard.NotNegative(Si.Radians(play), "Backlash", "rad", nameof(play)),
    };

    /// <summary>The same shaft with one universal joint at its driving end: ω_shaft/ω_rotor = cos β/(1 − sin²β·cos²θ).</summary>
    /// <param name="jointAngle">Angle β between the two shafts; from 0 to 60°.</param>
    /// <param name="phase">
    /// Yoke angle θ at the start; 0 when the driving yoke lies in the plane of the two shafts, where the ratio is 1/cos β.
    /// </param>
    /// <remarks>
    /// The torque on the rotor is the shaft's times the same ratio: a joint loses no power. Two joints on a shaft: give the equivalent
    /// angle.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public Shaft WithJoint(Angle jointAngle, Angle phase)
    {
        double beta = Guard.Within(Si.Radians(jointAngle), 0, Math.PI / 3, "Joint angle", "rad", nameof(jointAngle));
        double theta = Si.Radians(phase);
        if (!Guard.IsFinite(theta))
        {
            throw Guard.OutOfRange("Joint phase", "a finite value", theta, "rad", nameof(phase));
        }

        return new Shaft(this) { JointCosine = beta == 0 ? 1 : Math.Cos(beta), JointPhaseRad = theta };
    }

    /// <summary>Its stiffness.</summary>
    public override string ToString() => FormattableString.Invariant($"{Stiffness.NewtonMetersPerRadian:G4} N·m/rad");
}
