using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A slip or trip torque printed for one kind of machine, with the spring length printed beside it.</summary>
internal sealed class FactoryTorque
{
    private readonly double springLengthM;

    internal FactoryTorque(string machine, string device, TorqueBand torque, double springLengthM)
    {
        Machine = machine;
        Device = device;
        Torque = torque;
        this.springLengthM = springLengthM;
    }

    /// <summary>Kind of machine.</summary>
    public string Machine { get; }

    /// <summary>Kind of device.</summary>
    public string Device { get; }

    /// <summary>Printed torque, as set in the factory.</summary>
    public TorqueBand Torque { get; }

    /// <summary>Printed spring length; null when none is printed.</summary>
    public Length? SpringLength => double.IsNaN(springLengthM) ? null : Length.FromMeters(springLengthM);

    /// <inheritdoc/>
    public override string ToString() => Machine + ", " + Device + ": " + Torque;
}
