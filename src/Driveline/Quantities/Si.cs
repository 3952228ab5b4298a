using Driveline.Provenance;
using UnitsNet;
using UnitsNet.Units;

namespace Driveline.Quantities;

/// <summary>The only place that converts UnitsNet values. Kernels see doubles in SI.</summary>
/// <remarks>
/// Factors that UnitsNet 5.75.1 rounds are ours and exact: mechanical horsepower (550 ft·lbf/s), revolutions per minute,
/// pound and slug inertias. Exact by definition: inch 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s².
/// </remarks>
internal static class Si
{
    /// <summary>Inch, in m (exact, international yard and pound agreement 1959).</summary>
    public const double Inch = 0.0254;

    /// <summary>Foot, in m (exact).</summary>
    public const double Foot = 0.3048;

    /// <summary>One mile an hour in metres a second, exact.</summary>
    public const double MilePerHour = 0.44704;

    /// <summary>Pound, in kg (exact).</summary>
    public const double Pound = 0.45359237;

    /// <summary>Standard gravity, in m/s² (exact, 3rd CGPM 1901).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Pound-force, in N (exact).</summary>
    public const double PoundForce = Pound * Gravity;

    /// <summary>Slug, in kg: lbf·s²/ft.</summary>
    public const double Slug = PoundForce / Foot;

    /// <summary>Pound-force per square inch, in Pa.</summary>
    public const double Psi = PoundForce / (Inch * Inch);

    /// <summary>Mechanical horsepower, in W: 550 ft·lbf/s.</summary>
    public const double MechanicalHorsepower = 550 * Foot * PoundForce;

    /// <summary>Metric horsepower, in W: 75 kgf·m/s.</summary>
    public const double MetricHorsepower = 75 * Gravity;

    /// <summary>One revolution per minute, in rad/s.</summary>
    public const double Rpm = Math.PI / 30;

    /// <summary>One degree, in rad.</summary>
    public const double Degree = Math.PI / 180;

    public static double Meters(Length value) => value.Unit switch
    {
        LengthUnit.Meter => value.Value,
        LengthUnit.Millimeter => value.Value / 1000,
        LengthUnit.Inch => value.Value * Inch,
        LengthUnit.Foot => value.Value * Foot,
        _ => value.As(LengthUnit.Meter),
    };

    public static double SquareMeters(Area value) => value.Unit switch
    {
        AreaUnit.SquareMeter => value.Value,
        AreaUnit.SquareMillimeter => value.Value / 1e6,
        AreaUnit.SquareInch => value.Value * (Inch * Inch),
        _ => value.As(AreaUnit.SquareMeter),
    };

    public static double Pascals(Pressure value) => value.Unit switch
    {
        PressureUnit.Pascal => value.Value,
        PressureUnit.Megapascal => value.Value * 1e6,
        PressureUnit.PoundForcePerSquareInch => value.Value * Psi,
        PressureUnit.KilopoundForcePerSquareInch => value.Value * (1000 * Psi),
        _ => value.As(PressureUnit.Pascal),
    };

    /// <summary>A printed stress or strength, in Pa.</summary>
    public static double Pascals(Sourced value) => value.Unit switch
    {
        "ksi" => value.Value * (1000 * Psi),
        "psi" => value.Value * Psi,
        "MPa" => value.Value * 1e6,
        _ => throw new ArgumentException("A printed stress must be in ksi, psi or MPa; got " + value.Unit + ".", nameof(value)),
    };

    /// <summary>A printed force, in N.</summary>
    public static double Newtons(Sourced value) => value.Unit switch
    {
        "lbf" => value.Value * PoundForce,
        "N" => value.Value,
        "kN" => value.Value * 1000,
        _ => throw new ArgumentException("A printed force must be in lbf, N or kN; got " + value.Unit + ".", nameof(value)),
    };

    public static double Newtons(Force value) => value.Unit switch
    {
        ForceUnit.Newton => value.Value,
        ForceUnit.PoundForce => value.Value * PoundForce,
        _ => value.As(ForceUnit.Newton),
    };

    public static double NewtonMeters(Torque value) => value.Unit switch
    {
        TorqueUnit.NewtonMeter => value.Value,
        TorqueUnit.PoundForceFoot => value.Value * (PoundForce * Foot),
        TorqueUnit.PoundForceInch => value.Value * (PoundForce * Inch),
        _ => value.As(TorqueUnit.NewtonMeter),
    };

    public static double Watts(Power value) => value.Unit switch
    {
        PowerUnit.Watt => (double)value.Value,
        PowerUnit.Kilowatt => (double)value.Value * 1000,
        PowerUnit.MechanicalHorsepower => (double)value.Value * MechanicalHorsepower,
        PowerUnit.MetricHorsepower => (double)value.Value * MetricHorsepower,
        _ => (double)value.As(PowerUnit.Watt),
    };

    public static double RadiansPerSecond(RotationalSpeed value) => value.Unit switch
    {
        RotationalSpeedUnit.RadianPerSecond => value.Value,
        RotationalSpeedUnit.RevolutionPerMinute => value.Value * Rpm,
        RotationalSpeedUnit.RevolutionPerSecond => value.Value * (60 * Rpm),
        _ => value.As(RotationalSpeedUnit.RadianPerSecond),
    };

    public static double Radians(Angle value) => value.Unit switch
    {
        AngleUnit.Radian => value.Value,
        AngleUnit.Degree => value.Value * Degree,
        _ => value.As(AngleUnit.Radian),
    };

    public static double KilogramSquareMeters(MassMomentOfInertia value) => value.Unit switch
    {
        MassMomentOfInertiaUnit.KilogramSquareMeter => value.Value,
        MassMomentOfInertiaUnit.PoundSquareFoot => value.Value * (Pound * Foot * Foot),
        MassMomentOfInertiaUnit.PoundSquareInch => value.Value * (Pound * Inch * Inch),
        MassMomentOfInertiaUnit.SlugSquareFoot => value.Value * (Slug * Foot * Foot),
        MassMomentOfInertiaUnit.SlugSquareInch => value.Value * (Slug * Inch * Inch),
        _ => value.As(MassMomentOfInertiaUnit.KilogramSquareMeter),
    };

    public static double NewtonMetersPerRadian(RotationalStiffness value) => value.Unit switch
    {
        RotationalStiffnessUnit.NewtonMeterPerRadian => value.Value,
        RotationalStiffnessUnit.NewtonMeterPerDegree => value.Value / Degree,
        RotationalStiffnessUnit.PoundForceFeetPerRadian => value.Value * (PoundForce * Foot),
        RotationalStiffnessUnit.PoundForceFootPerDegrees => value.Value * (PoundForce * Foot) / Degree,
        _ => value.As(RotationalStiffnessUnit.NewtonMeterPerRadian),
    };

    public static double Kilograms(Mass value) => value.Unit switch
    {
        MassUnit.Kilogram => value.Value,
        MassUnit.Pound => value.Value * Pound,
        _ => value.As(MassUnit.Kilogram),
    };

    public static double Seconds(Duration value) => value.Unit switch
    {
        DurationUnit.Second => value.Value,
        DurationUnit.Minute => value.Value * 60,
        DurationUnit.Hour => value.Value * 3600,
        _ => value.As(DurationUnit.Second),
    };

    public static double MetersPerSecond(Speed value) => value.As(SpeedUnit.MeterPerSecond);

    public static double NewtonsPerMeter(ForcePerLength value) => value.Unit switch
    {
        ForcePerLengthUnit.NewtonPerMeter => value.Value,
        ForcePerLengthUnit.NewtonPerMillimeter => value.Value * 1000,
        ForcePerLengthUnit.PoundForcePerInch => value.Value * (PoundForce / Inch),
        _ => value.As(ForcePerLengthUnit.NewtonPerMeter),
    };

    public static double Joules(Energy value) => (double)value.As(EnergyUnit.Joule);

    public static double Kelvins(Temperature value) => value.Unit switch
    {
        TemperatureUnit.Kelvin => value.Value,
        TemperatureUnit.DegreeCelsius => value.Value + 273.15,
        TemperatureUnit.DegreeFahrenheit => (value.Value + 459.67) / 1.8,
        _ => value.As(TemperatureUnit.Kelvin),
    };

    public static double KelvinsOf(TemperatureDelta value) => value.As(TemperatureDeltaUnit.Kelvin);

    public static double WattsPerSquareMeter(HeatFlux value) => value.As(HeatFluxUnit.WattPerSquareMeter);

    public static double WattsPerMeterKelvin(ThermalConductivity value) => value.As(ThermalConductivityUnit.WattPerMeterKelvin);

    public static double WattsPerSquareMeterKelvin(HeatTransferCoefficient value) =>
        value.As(HeatTransferCoefficientUnit.WattPerSquareMeterKelvin);

    public static double KilogramsPerCubicMeter(Density value) => value.As(DensityUnit.KilogramPerCubicMeter);

    public static double JoulesPerKilogramKelvin(SpecificEntropy value) => value.As(SpecificEntropyUnit.JoulePerKilogramKelvin);

    public static double KilogramsPerSecond(MassFlow value) => value.Unit switch
    {
        MassFlowUnit.KilogramPerSecond => value.Value,
        MassFlowUnit.TonnePerHour => value.Value / 3.6,
        MassFlowUnit.KilogramPerHour => value.Value / 3600,
        MassFlowUnit.PoundPerHour => value.Value * (Pound / 3600),
        MassFlowUnit.ShortTonPerHour => value.Value * (2000 * Pound / 3600),
        _ => value.As(MassFlowUnit.KilogramPerSecond),
    };
}
