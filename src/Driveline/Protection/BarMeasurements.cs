using Driveline.Chains;

namespace Driveline.Protection;

/// <summary>Which measurement settles what bars a device's Yes.</summary>
internal static class BarMeasurements
{
    public static string For(string findingCode, DeviceKind device) => findingCode switch
    {
        _ => device == DeviceKind.ShearBolt ? Measurements.IdentifyDevice : Measurements.SlipTest,
    };
}
