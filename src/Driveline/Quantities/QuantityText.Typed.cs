using UnitsNet;

namespace Driveline.Quantities;

/// <content>One pair of methods for each quantity.</content>
public static partial class QuantityText
{
    /// <summary>Reads a torque, e.g. "650 lbf.ft". Units: N.m, kN.m, lbf.ft, lbf.in, kgf.m.</summary>
    /// <exception cref="FormatException">The text is not a torque; the message says why and what is accepted.</exception>
    public static Torque Torque(string text) => TryTorque(text, out Torque value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a torque if the text is one.</summary>
    /// <param name="text">What was written, e.g. "650 lbf.ft".</param>
    /// <param name="value">The torque; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryTorque(string? text, out Torque value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Torque, out double si, out problem);
        value = UnitsNet.Torque.FromNewtonMeters(si);
        return isRead;
    }

    /// <summary>Reads a length, e.g. "1 3/4 in". Units: m, mm, in, ft, cm.</summary>
    /// <exception cref="FormatException">The text is not a length; the message says why and what is accepted.</exception>
    public static Length Length(string text) => TryLength(text, out Length value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a length if the text is one.</summary>
    /// <param name="text">What was written, e.g. "1 3/4 in".</param>
    /// <param name="value">The length; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryLength(string? text, out Length value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Length, out double si, out problem);
        value = UnitsNet.Length.FromMeters(si);
        return isRead;
    }

    /// <summary>Reads a rotational speed, e.g. "540 rpm". Units: rad/s, rpm (also min-1, 1/min, r/min), rev/s.</summary>
    /// <exception cref="FormatException">The text is not a rotational speed; the message says why and what is accepted.</exception>
    public static RotationalSpeed RotationalSpeed(string text) => TryRotationalSpeed(text, out RotationalSpeed value, out string? problem)
        ? value : throw new FormatException(problem);

    /// <summary>Reads a rotational speed if the text is one.</summary>
    /// <param name="text">What was written, e.g. "540 rpm".</param>
    /// <param name="value">The rotational speed; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryRotationalSpeed(string? text, out RotationalSpeed value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.RotationalSpeed, out double si, out problem);
        value = UnitsNet.RotationalSpeed.FromRadiansPerSecond(si);
        return isRead;
    }

    /// <summary>Reads a power, e.g. "35 hp". Units: W, kW, hp (mechanical, 550 ft·lbf/s), PS (metric).</summary>
    /// <exception cref="FormatException">The text is not a power; the message says why and what is accepted.</exception>
    public static Power Power(string text) => TryPower(text, out Power value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a power if the text is one.</summary>
    /// <param name="text">What was written, e.g. "35 hp".</param>
    /// <param name="value">The power; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryPower(string? text, out Power value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Power, out double si, out problem) && IsHeldAsDecimal(text, si, out problem);
        value = UnitsNet.Power.FromWatts(isRead ? si : 0);
        return isRead;
    }

    /// <summary>Reads a mass moment of inertia, e.g. "4.2 kg.m2". Units: kg.m2, lb.ft2, lb.in2, slug.ft2.</summary>
    /// <exception cref="FormatException">The text is not a mass moment of inertia; the message says why and what is accepted.</exception>
    public static MassMomentOfInertia Inertia(string text) => TryInertia(text, out MassMomentOfInertia value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a mass moment of inertia if the text is one.</summary>
    /// <param name="text">What was written, e.g. "4.2 kg.m2".</param>
    /// <param name="value">The mass moment of inertia; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryInertia(string? text, out MassMomentOfInertia value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Inertia, out double si, out problem);
        value = UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(si);
        return isRead;
    }

    /// <summary>Reads a stress, strength or pressure, e.g. "120 ksi". Units: Pa, MPa (also N/mm2), psi, ksi.</summary>
    /// <exception cref="FormatException">
    /// The text is not a stress, strength or pressure; the message says why and what is accepted.
    /// </exception>
    public static Pressure Stress(string text) => TryStress(text, out Pressure value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a stress, strength or pressure if the text is one.</summary>
    /// <param name="text">What was written, e.g. "120 ksi".</param>
    /// <param name="value">The stress, strength or pressure; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryStress(string? text, out Pressure value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Stress, out double si, out problem);
        value = UnitsNet.Pressure.FromPascals(si);
        return isRead;
    }

    /// <summary>Reads a force, e.g. "2.5 kN". Units: N, kN, lbf, kgf.</summary>
    /// <exception cref="FormatException">The text is not a force; the message says why and what is accepted.</exception>
    public static Force Force(string text) => TryForce(text, out Force value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a force if the text is one.</summary>
    /// <param name="text">What was written, e.g. "2.5 kN".</param>
    /// <param name="value">The force; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryForce(string? text, out Force value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Force, out double si, out problem);
        value = UnitsNet.Force.FromNewtons(si);
        return isRead;
    }

    /// <summary>Reads an angle, e.g. "25 deg". Units: rad, deg (also °).</summary>
    /// <exception cref="FormatException">The text is not an angle; the message says why and what is accepted.</exception>
    public static Angle Angle(string text) => TryAngle(text, out Angle value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads an angle if the text is one.</summary>
    /// <param name="text">What was written, e.g. "25 deg".</param>
    /// <param name="value">The angle; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryAngle(string? text, out Angle value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Angle, out double si, out problem);
        value = UnitsNet.Angle.FromRadians(si);
        return isRead;
    }

    /// <summary>Reads a mass, e.g. "120 kg". Units: kg, lb, t, g.</summary>
    /// <exception cref="FormatException">The text is not a mass; the message says why and what is accepted.</exception>
    public static Mass Mass(string text) => TryMass(text, out Mass value, out string? problem) ? value : throw new FormatException(problem);

    /// <summary>Reads a mass if the text is one.</summary>
    /// <param name="text">What was written, e.g. "120 kg".</param>
    /// <param name="value">The mass; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryMass(string? text, out Mass value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Mass, out double si, out problem);
        value = UnitsNet.Mass.FromKilograms(si);
        return isRead;
    }

    /// <summary>Reads a time, e.g. "1.5 h". Units: s, ms, min, h, d.</summary>
    /// <exception cref="FormatException">The text is not a time; the message says why and what is accepted.</exception>
    public static Duration Time(string text) => TryTime(text, out Duration value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a time if the text is one.</summary>
    /// <param name="text">What was written, e.g. "1.5 h".</param>
    /// <param name="value">The time; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryTime(string? text, out Duration value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Time, out double si, out problem);
        value = UnitsNet.Duration.FromSeconds(si);
        return isRead;
    }

    /// <summary>Reads an energy, e.g. "12 kJ". Units: J, kJ, ft.lbf.</summary>
    /// <exception cref="FormatException">The text is not an energy; the message says why and what is accepted.</exception>
    public static Energy Energy(string text) => TryEnergy(text, out Energy value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads an energy if the text is one.</summary>
    /// <param name="text">What was written, e.g. "12 kJ".</param>
    /// <param name="value">The energy; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryEnergy(string? text, out Energy value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Energy, out double si, out problem);
        value = UnitsNet.Energy.FromJoules(si);
        return isRead;
    }

    /// <summary>Reads a temperature, e.g. "180 degC". Units: K, degC (also °C), degF (also °F).</summary>
    /// <exception cref="FormatException">The text is not a temperature; the message says why and what is accepted.</exception>
    public static Temperature Temperature(string text) => TryTemperature(text, out Temperature value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a temperature if the text is one.</summary>
    /// <param name="text">What was written, e.g. "180 degC".</param>
    /// <param name="value">The temperature; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryTemperature(string? text, out Temperature value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Temperature, out double si, out problem);
        value = UnitsNet.Temperature.FromKelvins(si);
        return isRead;
    }

    /// <summary>Reads a travel speed, e.g. "6 km/h". Units: m/s, km/h, mph.</summary>
    /// <exception cref="FormatException">The text is not a travel speed; the message says why and what is accepted.</exception>
    public static Speed Speed(string text) => TrySpeed(text, out Speed value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a travel speed if the text is one.</summary>
    /// <param name="text">What was written, e.g. "6 km/h".</param>
    /// <param name="value">The travel speed; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TrySpeed(string? text, out Speed value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Speed, out double si, out problem);
        value = UnitsNet.Speed.FromMetersPerSecond(si);
        return isRead;
    }

    /// <summary>Reads a torsional stiffness, e.g. "20 kN.m/rad". Units: N.m/rad, kN.m/rad, N.m/deg, lbf.ft/deg.</summary>
    /// <exception cref="FormatException">The text is not a torsional stiffness; the message says why and what is accepted.</exception>
    public static RotationalStiffness TorsionalStiffness(string text) =>
        TryTorsionalStiffness(text, out RotationalStiffness value, out string? problem) ? value : throw new FormatException(problem);

    /// <summary>Reads a torsional stiffness if the text is one.</summary>
    /// <param name="text">What was written, e.g. "20 kN.m/rad".</param>
    /// <param name="value">The torsional stiffness; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryTorsionalStiffness(string? text, out RotationalStiffness value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.TorsionalStiffness, out double si, out problem);
        value = UnitsNet.RotationalStiffness.FromNewtonMetersPerRadian(si);
        return isRead;
    }

    /// <summary>Reads a spring rate, e.g. "50 N/mm". Units: N/m, N/mm, lbf/in.</summary>
    /// <exception cref="FormatException">The text is not a spring rate; the message says why and what is accepted.</exception>
    public static ForcePerLength SpringRate(string text) => TrySpringRate(text, out ForcePerLength value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a spring rate if the text is one.</summary>
    /// <param name="text">What was written, e.g. "50 N/mm".</param>
    /// <param name="value">The spring rate; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TrySpringRate(string? text, out ForcePerLength value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.SpringRate, out double si, out problem);
        value = UnitsNet.ForcePerLength.FromNewtonsPerMeter(si);
        return isRead;
    }

    /// <summary>Reads an area, e.g. "84.3 mm2". Units: m2, mm2, in2.</summary>
    /// <exception cref="FormatException">The text is not an area; the message says why and what is accepted.</exception>
    public static Area Area(string text) => TryArea(text, out Area value, out string? problem) ? value : throw new FormatException(problem);

    /// <summary>Reads an area if the text is one.</summary>
    /// <param name="text">What was written, e.g. "84.3 mm2".</param>
    /// <param name="value">The area; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryArea(string? text, out Area value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Area, out double si, out problem);
        value = UnitsNet.Area.FromSquareMeters(si);
        return isRead;
    }

    /// <summary>Reads a rate, e.g. "40 per hour". Units: 1/s, 1/min, 1/h (also per hour).</summary>
    /// <exception cref="FormatException">The text is not a rate; the message says why and what is accepted.</exception>
    public static Frequency Rate(string text) => TryRate(text, out Frequency value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a rate if the text is one.</summary>
    /// <param name="text">What was written, e.g. "40 per hour".</param>
    /// <param name="value">The rate; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryRate(string? text, out Frequency value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.Rate, out double si, out problem);
        value = UnitsNet.Frequency.FromHertz(si);
        return isRead;
    }

    /// <summary>Reads a mass flow, e.g. "12 t/h". Units: kg/s, kg/h, t/h, lb/h.</summary>
    /// <exception cref="FormatException">The text is not a mass flow; the message says why and what is accepted.</exception>
    public static MassFlow MassFlow(string text) => TryMassFlow(text, out MassFlow value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a mass flow if the text is one.</summary>
    /// <param name="text">What was written, e.g. "12 t/h".</param>
    /// <param name="value">The mass flow; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryMassFlow(string? text, out MassFlow value, out string? problem)
    {
        bool isRead = TryParse(text, Dimension.MassFlow, out double si, out problem);
        value = UnitsNet.MassFlow.FromKilogramsPerSecond(si);
        return isRead;
    }

    /// <summary>Reads a plain number or a percentage, e.g. "1.47" or "40 %" (0.40).</summary>
    /// <exception cref="FormatException">The text is not a number; the message says why.</exception>
    public static double Number(string text) => TryNumber(text, out double value, out string? problem) ? value
        : throw new FormatException(problem);

    /// <summary>Reads a plain number or a percentage if the text is one.</summary>
    /// <param name="text">What was written, e.g. "40 %".</param>
    /// <param name="value">The number; 0 when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    public static bool TryNumber(string? text, out double value, out string? problem) =>
        TryParse(text, Dimension.Number, out value, out problem);

    /// <summary>Reads a torsional damping, e.g. "12 N.m.s/rad", in N·m·s/rad.</summary>
    /// <exception cref="FormatException">The text is not a torsional damping; the message says why and what is accepted.</exception>
    public static double TorsionalDampingNewtonMeterSeconds(string text) =>
        TryParse(text, Dimension.TorsionalDamping, out double si, out string? problem) ? si : throw new FormatException(problem);

    // UnitsNet holds power as a decimal, which ends near 7.9e28.
    private static bool IsHeldAsDecimal(string? text, double watts, out string? problem)
    {
        problem = Math.Abs(watts) < 7e28 ? null : "“" + Clean(text) + "” is not a power: its number is too large.";
        return problem is null;
    }
}
