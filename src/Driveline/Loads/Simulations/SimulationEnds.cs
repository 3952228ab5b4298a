using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Which value of each band a run takes, and what becomes of the devices.</summary>
internal readonly struct SimulationEnds
{
    public SimulationEnds(
        SimulatedDevices devices, BandPoint device, BandPoint capacity, BandPoint stiffness, BandPoint rise, BandPoint load)
    {
        Devices = devices;
        Device = device;
        Capacity = capacity;
        Stiffness = stiffness;
        Rise = rise;
        Load = load;
    }

    public SimulatedDevices Devices { get; }

    public BandPoint Device { get; }

    public BandPoint Capacity { get; }

    public BandPoint Stiffness { get; }

    public BandPoint Rise { get; }

    public BandPoint Load { get; }

    /// <summary>True when no device acts and everything is as expected.</summary>
    public bool AreExpected => this is
    {
        Devices: SimulatedDevices.Blocked, Device: BandPoint.Expected, Capacity: BandPoint.Expected, Stiffness: BandPoint.Expected,
        Rise: BandPoint.Expected, Load: BandPoint.Expected,
    };

    /// <summary>The values that make the event mild (Low), as expected, or severe (High).</summary>
    /// <remarks>A severe strike finds the line loaded; a severe engagement finds it unloaded and is quick.</remarks>
    public static SimulationEnds Of(SimulatedDevices devices, BandPoint device, BandPoint severity, bool isStrike) =>
        new(devices, device, severity, severity, Opposite(severity), isStrike ? severity : Opposite(severity));

    /// <summary>The same at another value of every stiffness.</summary>
    public SimulationEnds WithStiffness(BandPoint stiffness) => new(Devices, Device, Capacity, stiffness, Rise, Load);

    private static BandPoint Opposite(BandPoint point) => point switch
    {
        BandPoint.Low => BandPoint.High,
        BandPoint.High => BandPoint.Low,
        _ => point,
    };
}
