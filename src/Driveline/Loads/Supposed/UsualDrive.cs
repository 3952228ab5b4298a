using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Usual values of the tractor's side and of speed ratios, as wide bands.</summary>
internal static class UsualDrive
{
    // Rim speed of the blades of a rotary cutter, m/s.
    private const double SlowTip = 63;
    private const double FastTip = 76;

    private static readonly Basis Clutches = Basis.FromMemory("PTO clutches pass 1.2 to 2.5 times the torque of the PTO's power");

    private static readonly Basis Drivers = Basis.FromMemory("time in which drivers and switches engage a PTO");

    private static readonly Basis Loads = Basis.FromMemory("machines in work take 0.2 to 0.8 of the torque of the PTO's power");

    private static readonly Basis Tips = Basis.CommonPractice("rim speed of rotary cutters, 63 to 76 m/s");

    private static readonly Basis Speeds = Basis.CommonPractice("usual speed of such a rotor in trade articles");

    /// <summary>Capacity of the PTO clutch, T = 1.2 to 2.5 · P / ω; null without a power.</summary>
    public static TorqueBand? Capacity(UsualMachine machine, double radPerS) => Share(machine, radPerS, 1.2, 2.5, Clutches);

    /// <summary>Torque of work before a strike, T = 0.2 to 0.8 · P / ω; null without a power.</summary>
    public static TorqueBand? Load(UsualMachine machine, double radPerS) => Share(machine, radPerS, 0.2, 0.8, Loads);

    /// <summary>Time of an engagement: 1 to 5 s by a gentle driver, else 0.05 to 1.5 s.</summary>
    public static TimeBand Rise(bool isGentle) => isGentle
        ? TimeBand.OfSi(Geometric(1, 5), BandBasis.Of(Drivers)) : TimeBand.OfSi(Geometric(0.05, 1.5), BandBasis.Of(Drivers));

    /// <summary>
    /// Speed ratio of the only gearbox before a rotor; null when nothing is known of the kind, or no gearbox turns that PTO speed into its.
    /// </summary>
    public static RatioBand? Ratio(UsualMachine machine, double radPerS) => (machine.Kind, machine.WidthM) switch
    {
        (MachineKind.RotaryCutter, { } w and >= 1.1 and <= 2.2) =>
            OfGearbox(2 * SlowTip / w / radPerS, 2 * FastTip / w / radPerS, Tips),
        (MachineKind.FlailMower, _) => Speed(1800, 3000, radPerS),
        (MachineKind.RotaryTiller, _) => Speed(150, 280, radPerS),
        (MachineKind.PostHoleAuger, _) => Speed(150, 220, radPerS),
        _ => null,
    };

    private static RatioBand? Speed(double lowRpm, double highRpm, double radPerS)
    {
        double rpm = radPerS * 30 / Math.PI;
        return OfGearbox(lowRpm / rpm, highRpm / rpm, Speeds);
    }

    // A part's ratio lies from 0.01 to 100.
    private static RatioBand? OfGearbox(double low, double high, Basis basis) =>
        low >= 0.01 && high <= 100 ? RatioBand.OfSi(Geometric(low, high), BandBasis.Of(basis)) : null;

    private static TorqueBand? Share(UsualMachine machine, double radPerS, double low, double high, Basis basis) =>
        machine.PtoPowerW / radPerS is { } nm ? TorqueBand.OfSi(Geometric(low * nm, high * nm), BandBasis.Of(basis)) : null;

    private static Band Geometric(double low, double high) => new(low, Math.Sqrt(low * high), high);
}
