using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Which value of each band a run takes, and what becomes of the devices.</summary>
internal readonly struct SimulationEnds
{
    public SimulationEnds(SimulatedDevices devices, BandPoint device, BandPoint line)
        : this(devices, device, line, line, line, line)
    {
    }

    public SimulationEnds(SimulatedDevices devices, BandPoint device, BandPoint capacity, BandPoint stiffness, BandPoint rise, BandPoint load)
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
}
