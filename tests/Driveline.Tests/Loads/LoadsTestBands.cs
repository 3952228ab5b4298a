using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Loads;

/// <summary>Bands as short as a test row wants them, all given.</summary>
internal static class LoadsTestBands
{
    public static readonly Basis Given = Basis.Given("test");

    public static readonly RotationalSpeed Rated = RotationalSpeed.FromRevolutionsPerMinute(540);

    public static TorqueBand Nm(double value) => TorqueBand.Exactly(Torque.FromNewtonMeters(value), Given);

    public static TorqueBand Nm(double low, double expected, double high) => TorqueBand.Between(
        Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(expected), Torque.FromNewtonMeters(high), Given);

    public static InertiaBand KgM2(double value) => InertiaBand.Exactly(MassMomentOfInertia.FromKilogramSquareMeters(value), Given);

    public static InertiaBand KgM2(double low, double expected, double high) => InertiaBand.Between(
        MassMomentOfInertia.FromKilogramSquareMeters(low),
        MassMomentOfInertia.FromKilogramSquareMeters(expected),
        MassMomentOfInertia.FromKilogramSquareMeters(high),
        Given);

    public static StiffnessBand NmPerRad(double value) =>
        StiffnessBand.Exactly(RotationalStiffness.FromNewtonMetersPerRadian(value), Given);

    public static StiffnessBand NmPerRad(double low, double expected, double high) => StiffnessBand.Between(
        RotationalStiffness.FromNewtonMetersPerRadian(low),
        RotationalStiffness.FromNewtonMetersPerRadian(expected),
        RotationalStiffness.FromNewtonMetersPerRadian(high),
        Given);

    public static TimeBand Seconds(double value) => TimeBand.Exactly(Duration.FromSeconds(value), Given);

    public static PowerBand Watts(double value) => PowerBand.Exactly(Power.FromWatts(value), Given);

    public static RatioBand Ratio(double value) => RatioBand.Exactly(value, Given);
}
