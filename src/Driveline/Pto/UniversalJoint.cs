using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>A cardan joint at a fixed angle: how unevenly it turns the driven shaft.</summary>
/// <remarks>
/// Convention: the rotation θ of the driving shaft is 0 when the driving yoke lies in the plane of the two shafts; there the
/// driven shaft is fastest. ω₂/ω₁ = cos β / (1 − sin² β cos² θ), between cos β and 1/cos β, with β the joint angle.
/// No friction, no play, no inertia torques. Other authors count θ from a quarter turn away.
/// </remarks>
public sealed class UniversalJoint
{
    private readonly double beta;
    private readonly double cos;
    private readonly double sin2;

    private UniversalJoint(double beta)
    {
        this.beta = beta;
        cos = Math.Cos(beta);
        double sin = Math.Sin(beta);
        sin2 = sin * sin;
    }

    /// <summary>Joint angle β between the two shafts.</summary>
    public Angle Angle => Angle.FromRadians(beta);

    /// <summary>Highest ω₂/ω₁ in a turn, 1/cos β.</summary>
    /// <example>25°: 1.10338.</example>
    public double MaximumSpeedRatio => 1 / cos;

    /// <summary>Lowest ω₂/ω₁ in a turn, cos β.</summary>
    /// <example>25°: 0.90631.</example>
    public double MinimumSpeedRatio => cos;

    /// <summary>Non-uniformity U = (ω₂max − ω₂min)/ω₁ = sin β tan β.</summary>
    /// <example>25°: 0.19707.</example>
    public double NonUniformity => sin2 / cos;

    /// <summary>Highest torque in the driven shaft over the torque in the driving shaft, 1/cos β, by power balance.</summary>
    /// <example>25°: 1.10338.</example>
    public double PeakTorqueFactor => 1 / cos;

    internal double AngleRad => beta;

    /// <summary>A joint at an angle.</summary>
    /// <param name="angle">Joint angle β; from 0° up to but not including 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is negative, 90° or more, or not finite.</exception>
    public static UniversalJoint At(Angle angle)
    {
        double rad = Si.Radians(angle);
        return rad >= 0 && rad < Math.PI / 2 && Math.Cos(rad) > 1e-9
            ? new UniversalJoint(rad)
            : throw Guard.OutOfRange("Joint angle", "from 0° up to but not including 90°", rad / Si.Degree, "°", nameof(angle));
    }

    /// <summary>The joint whose non-uniformity is the given one, cos β = (√(U² + 4) − U) / 2.</summary>
    /// <param name="nonUniformity">U = 1/cos β − cos β; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The non-uniformity is negative or not finite, or the joint would reach 90°.
    /// </exception>
    /// <example>0.125: 20.04°.</example>
    public static UniversalJoint OfNonUniformity(double nonUniformity)
    {
        double u = Guard.NotNegative(nonUniformity, "Non-uniformity", string.Empty, nameof(nonUniformity));

        // 2 / (√(u² + 4) + u) is the same root without cancellation; atan2 keeps small angles exact: tan² β = u / cos β.
        double c = 2 / (Math.Sqrt((u * u) + 4) + u);
        return At(Angle.FromRadians(Math.Atan(Math.Sqrt(u / c))));
    }

    /// <summary>Speed ratio ω₂/ω₁ at a rotation θ of the driving shaft.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rotation is not finite.</exception>
    public double SpeedRatioAt(Angle rotation) => RatioAt(Rotation(rotation));

    /// <summary>Torque ratio T₂/T₁ = ω₁/ω₂ at a rotation θ of the driving shaft.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rotation is not finite.</exception>
    public double TorqueRatioAt(Angle rotation) => 1 / RatioAt(Rotation(rotation));

    /// <summary>Rotation of the driven shaft, tan θ₂ = tan θ / cos β, continued over whole turns.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rotation is not finite.</exception>
    public Angle DrivenRotation(Angle rotation)
    {
        double t = Rotation(rotation);
        double halfTurns = Math.Round(t / Math.PI);
        double rest = t - (halfTurns * Math.PI);
        return Angle.FromRadians((halfTurns * Math.PI) + Math.Atan2(Math.Sin(rest), Math.Cos(rest) * cos));
    }

    /// <summary>Angular acceleration of the driven shaft, α₂ = −ω₁² cos β sin² β sin 2θ / (1 − sin² β cos² θ)².</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public RotationalAcceleration DrivenAccelerationAt(RotationalSpeed speed, Angle rotation)
    {
        double omega = Speed(speed);
        double t = Rotation(rotation);
        double c = Math.Cos(t);
        double divisor = 1 - (sin2 * c * c);
        return RotationalAcceleration.FromRadiansPerSecondSquared(-omega * omega * cos * sin2 * Math.Sin(2 * t) / (divisor * divisor));
    }

    /// <summary>Largest angular acceleration of the driven shaft in a turn.</summary>
    /// <remarks>
    /// At cos 2θ = (√(a² + 8 b²) − a) / (2 b) with a = 1 − b, b = sin² β / 2: the exact place, of which the
    /// textbook's 2 sin² β / (2 − sin² β) is the first approximation.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not finite.</exception>
    public RotationalAcceleration PeakDrivenAcceleration(RotationalSpeed speed)
    {
        double b = sin2 / 2;
        double a = 1 - b;
        double cos2 = 4 * b / (Math.Sqrt((a * a) + (8 * b * b)) + a);
        double theta = -0.5 * Math.Acos(Math.Min(1, cos2));
        return DrivenAccelerationAt(speed, Angle.FromRadians(theta));
    }

    /// <summary>Largest couple that bends the shafts and their bearings, T tan β, twice a turn.</summary>
    /// <param name="torque">Torque in the driving shaft; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The torque is negative or not finite.</exception>
    public Torque SecondaryCouple(Torque torque) =>
        Torque.FromNewtonMeters(Guard.NotNegative(Si.NewtonMeters(torque), "Torque", "N·m", nameof(torque)) * Math.Sqrt(sin2) / cos);

    /// <summary>What a caller must notice about a standard joint working at this angle; sources give 15°, 25° and 35°.</summary>
    /// <remarks>Above the strictest limit: a warning. Above every limit for continuous work: a danger.</remarks>
    public IReadOnlyList<Finding> CheckContinuousWork()
    {
        JointAngleLimit[] limits = [.. JointAngleLimit.All.Where(l => !l.IsWideAngle && l.IsContinuous).OrderBy(l => l.Printed.Value)];
        double strictest = limits[0].Printed.Value * Si.Degree, loosest = limits[limits.Length - 1].Printed.Value * Si.Degree;
        const double rounding = 1e-12;
        if (beta <= strictest + rounding)
        {
            return [];
        }

        bool tooSteep = beta > loosest + rounding;
        return
        [
            Finding.Of(
                tooSteep ? PtoFindings.JointAngleTooSteep : PtoFindings.JointAngleAbovePractice,
                tooSteep ? Severity.Danger : Severity.Warning)
                .With("angle", QuantityKind.Angle, beta)
                .With("strictest", QuantityKind.Angle, strictest)
                .With("loosest", QuantityKind.Angle, loosest),
        ];
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"universal joint at {beta / Si.Degree:G4}°");

    private static double Rotation(Angle rotation)
    {
        double t = Si.Radians(rotation);
        return Guard.IsFinite(t) ? t : throw Guard.OutOfRange("Rotation", "a finite angle", t, "rad", nameof(rotation));
    }

    private static double Speed(RotationalSpeed speed)
    {
        double omega = Si.RadiansPerSecond(speed);
        return Guard.IsFinite(omega) ? omega : throw Guard.OutOfRange("Speed", "a finite value", omega, "rad/s", nameof(speed));
    }

    private double RatioAt(double theta)
    {
        double c = Math.Cos(theta);
        return cos / (1 - (sin2 * c * c));
    }
}
