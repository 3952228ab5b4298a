using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>One slip of a clutch: how long, how far, and how much heat.</summary>
/// <remarks>
/// Heat = torque × slip angle, always. Blocked load: P = T · ω until someone disengages. Start-up and two inertias:
/// t = Δω / ((T - Td)/J1 + (T - Tl)/J2), slip falls in a straight line, angle = Δω · t / 2; without outside torques
/// E = J1·J2·Δω² / (2·(J1 + J2)), whatever the torque; against a drive that holds its speed E = J·ω²/2.
/// When the denominator is not above zero the slip never ends by itself.
/// </remarks>
public sealed class SlipEvent
{
    private SlipEvent(double torqueNm, double slipRadPerS, double timeS, bool falling)
    {
        TorqueNm = torqueNm;
        SlipRadPerS = slipRadPerS;
        TimeS = timeS;
        IsFalling = falling;
        AngleRad = falling ? slipRadPerS * timeS / 2 : slipRadPerS * timeS;
    }

    /// <summary>Torque of the slipping clutch.</summary>
    public Torque Torque => Torque.FromNewtonMeters(TorqueNm);

    /// <summary>Slip speed at the start.</summary>
    public RotationalSpeed SlipSpeed => RotationalSpeed.FromRadiansPerSecond(SlipRadPerS);

    /// <summary>True when the slip speed falls to zero by itself; false when it stays.</summary>
    public bool IsFalling { get; }

    /// <summary>False when the slip goes on until someone disengages.</summary>
    public bool Ends => !double.IsPositiveInfinity(TimeS);

    /// <summary>How long it lasts; null when it never ends.</summary>
    public Duration? Duration => Ends ? UnitsNet.Duration.FromSeconds(TimeS) : null;

    /// <summary>Angle by which one side turns against the other; null when it never ends.</summary>
    public Angle? SlipAngle => Ends ? Angle.FromRadians(AngleRad) : null;

    /// <summary>Heat made; null when it never ends.</summary>
    public Energy? Energy => Ends ? UnitsNet.Energy.FromJoules(EnergyJ) : null;

    /// <summary>Heat made per time at the start, the highest of the slip.</summary>
    public Power PeakPower => Power.FromWatts(PowerW);

    internal double TorqueNm { get; }

    internal double SlipRadPerS { get; }

    internal double TimeS { get; }

    internal double AngleRad { get; }

    internal double EnergyJ
    {
        get
        {
            var log = default(NoSteps);
            return TorqueNm <= 0 ? 0 : SlipKernel.EnergyJ(TorqueNm, AngleRad, ref log);
        }
    }

    internal double PowerW
    {
        get
        {
            var log = default(NoSteps);
            return SlipKernel.PowerW(TorqueNm, SlipRadPerS, ref log);
        }
    }

    /// <summary>The output is blocked and the drive turns on until someone disengages.</summary>
    /// <param name="torque">Running slip torque; 0 or more.</param>
    /// <param name="speed">Speed of the drive at the clutch; 0 or more.</param>
    /// <param name="until">Time until someone disengages; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
    /// <example>600 N·m at 540 rpm for 2 s: 33.9 kW, 67.9 kJ.</example>
    internal static SlipEvent Blocked(Torque torque, RotationalSpeed speed, Duration until) => new(
        Nm(torque, nameof(torque)),
        Speed(speed, nameof(speed)),
        Guard.NotNegative(Si.Seconds(until), "Time until someone disengages", "s", nameof(until)),
        false);

    /// <summary>The output is blocked and nobody disengages.</summary>
    /// <param name="torque">Running slip torque; 0 or more.</param>
    /// <param name="speed">Speed of the drive at the clutch; 0 or more.</param>
    internal static SlipEvent Blocked(Torque torque, RotationalSpeed speed) =>
        new(Nm(torque, nameof(torque)), Speed(speed, nameof(speed)), double.PositiveInfinity, false);

    /// <summary>A rotor is brought from rest to the speed of a drive that holds it.</summary>
    /// <param name="torque">Running slip torque; 0 or more.</param>
    /// <param name="rotor">Inertia behind the clutch, referred to it; above 0.</param>
    /// <param name="speed">Speed of the drive; 0 or more.</param>
    /// <param name="load">Torque that resists the rotor meanwhile; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    /// <example>44.33 N·m, 7.2 kg·m², 300 rpm, no load: 5.10 s, 3553 J.</example>
    internal static SlipEvent StartUp(Torque torque, MassMomentOfInertia rotor, RotationalSpeed speed, Torque load) => Falling(
        torque, Speed(speed, nameof(speed)), double.PositiveInfinity, Inertia(rotor, nameof(rotor)), 0, Nm(load, nameof(load)));

    /// <summary>Two inertias are brought to one speed by the clutch, with outside torques on both.</summary>
    /// <param name="torque">Running slip torque; 0 or more.</param>
    /// <param name="drive">Inertia of the faster side, J1; above 0.</param>
    /// <param name="driven">Inertia of the slower side, J2; above 0.</param>
    /// <param name="slip">Speed difference at the start; 0 or more.</param>
    /// <param name="drivingTorque">Outside torque that drives the faster side, Td; below zero when it brakes it.</param>
    /// <param name="load">Torque that resists the slower side, Tl; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    internal static SlipEvent TwoInertias(
        Torque torque, MassMomentOfInertia drive, MassMomentOfInertia driven, RotationalSpeed slip, Torque drivingTorque, Torque load)
    {
        double td = Si.NewtonMeters(drivingTorque);
        Guard.Within(td, -1e7, 1e7, "Driving torque", "N·m", nameof(drivingTorque));
        return Falling(
            torque, Speed(slip, nameof(slip)), Inertia(drive, nameof(drive)), Inertia(driven, nameof(driven)), td, Nm(load, nameof(load)));
    }

    /// <summary>The calculation, line by line.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        StepList log = StepList.New();
        log.Add(ClutchInputs.SlipTorque, TorqueNm);
        log.Add(ClutchInputs.SlipSpeed, SlipRadPerS);
        SlipKernel.PowerW(TorqueNm, SlipRadPerS, ref log);
        if (Ends)
        {
            log.Add(IsFalling ? ClutchSteps.SlipTime : ClutchInputs.Until, TimeS);
            log.Add(IsFalling ? ClutchSteps.SlipAngleFalling : ClutchSteps.SlipAngleBlocked, AngleRad);
            SlipKernel.EnergyJ(TorqueNm, AngleRad, ref log);
        }

        return log.Lines;
    }

    /// <inheritdoc/>
    public override string ToString() => Ends
        ? FormattableString.Invariant($"{TorqueNm:G4} N·m slipping for {TimeS:G4} s: {EnergyJ:G4} J")
        : FormattableString.Invariant($"{TorqueNm:G4} N·m slipping without end: {PowerW:G4} W");

    private static SlipEvent Falling(Torque torque, double slip, double drive, double driven, double driveNm, double loadNm)
    {
        double nm = Nm(torque, nameof(torque));
        var log = default(NoSteps);
        double time = SlipKernel.TimeS(slip, nm, drive, driven, driveNm, loadNm, ref log);
        return new SlipEvent(nm, slip, time, !double.IsPositiveInfinity(time));
    }

    private static double Nm(Torque torque, string parameter) => Guard.NotNegative(Si.NewtonMeters(torque), "Torque", "N·m", parameter);

    private static double Speed(RotationalSpeed speed, string parameter) =>
        Guard.NotNegative(Si.RadiansPerSecond(speed), "Speed", "rad/s", parameter);

    private static double Inertia(MassMomentOfInertia inertia, string parameter) =>
        Guard.Positive(Si.KilogramSquareMeters(inertia), "Inertia", "kg·m²", parameter);
}
