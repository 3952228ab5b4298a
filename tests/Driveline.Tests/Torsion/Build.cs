using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Tests.Torsion;

/// <summary>Short forms for building models in tests, SI throughout.</summary>
internal static class Build
{
    public static TorsionModelBuilder Rotor(this TorsionModelBuilder builder, string name, double inertia) =>
        builder.AddRotor(name, MassMomentOfInertia.FromKilogramSquareMeters(inertia));

    public static TorsionModelBuilder Held(this TorsionModelBuilder builder, string name, double speed) =>
        builder.AddHeldRotor(name, RotationalSpeed.FromRadiansPerSecond(speed));

    public static Shaft Shaft(double stiffness, double damping = 0) =>
        Driveline.Torsion.Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(stiffness)).WithDamping(damping);

    public static Torque Nm(double value) => Torque.FromNewtonMeters(value);

    public static Duration S(double value) => Duration.FromSeconds(value);

    public static RotationalSpeed RadPerS(double value) => RotationalSpeed.FromRadiansPerSecond(value);

    public static RotationalStiffness NmPerRad(double value) => RotationalStiffness.FromNewtonMetersPerRadian(value);

    public static TransientResult Run(this TorsionStart start, double seconds) => Transient.Run(start, S(seconds));

    public static double PeakNm(this TransientResult result, string element) => result.Peak(element).Own!.Value.NewtonMeters;

    public static double PeakS(this TransientResult result, string element) => result.Peak(element).Time.Seconds;

    public static void Near(double expected, double actual, double relative, string source = "") =>
        Assert.True(
            Math.Abs(actual - expected) <= relative * Math.Abs(expected),
            FormattableString.Invariant($"expected {expected:R}, got {actual:R}, off by {(actual - expected) / expected:E2}; {source}"));
}
