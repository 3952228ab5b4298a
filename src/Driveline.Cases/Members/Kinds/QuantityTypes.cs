using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>Every type of quantity that a case file states.</summary>
internal static class QuantityTypes
{
    public static readonly QuantityType<double> Number = new(Dimension.Number, si => si);
    public static readonly QuantityType<double> TorsionalDamping = new(Dimension.TorsionalDamping, si => si);
    public static readonly QuantityType<UnitsNet.Length> Length = new(Dimension.Length, si => UnitsNet.Length.FromMeters(si));
    public static readonly QuantityType<UnitsNet.Angle> Angle = new(Dimension.Angle, si => UnitsNet.Angle.FromRadians(si));
    public static readonly QuantityType<UnitsNet.Duration> Time = new(Dimension.Time, si => UnitsNet.Duration.FromSeconds(si));
    public static readonly QuantityType<UnitsNet.Force> Force = new(Dimension.Force, si => UnitsNet.Force.FromNewtons(si));
    public static readonly QuantityType<UnitsNet.Torque> Torque = new(Dimension.Torque, si => UnitsNet.Torque.FromNewtonMeters(si));
    public static readonly QuantityType<UnitsNet.Power> Power = new(Dimension.Power, si => UnitsNet.Power.FromWatts(si));
    public static readonly QuantityType<UnitsNet.MassFlow> MassFlow = new(
        Dimension.MassFlow, si => UnitsNet.MassFlow.FromKilogramsPerSecond(si));
    public static readonly QuantityType<UnitsNet.MassMomentOfInertia> Inertia =
        new(Dimension.Inertia, si => UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(si));
    public static readonly QuantityType<UnitsNet.RotationalSpeed> RotationalSpeed =
        new(Dimension.RotationalSpeed, si => UnitsNet.RotationalSpeed.FromRadiansPerSecond(si));
    public static readonly QuantityType<UnitsNet.RotationalStiffness> TorsionalStiffness =
        new(Dimension.TorsionalStiffness, si => UnitsNet.RotationalStiffness.FromNewtonMetersPerRadian(si));
    public static readonly QuantityType<UnitsNet.ForcePerLength> SpringRate =
        new(Dimension.SpringRate, si => UnitsNet.ForcePerLength.FromNewtonsPerMeter(si));
    public static readonly QuantityType<UnitsNet.Pressure> Stress = new(Dimension.Stress, si => UnitsNet.Pressure.FromPascals(si));
}
