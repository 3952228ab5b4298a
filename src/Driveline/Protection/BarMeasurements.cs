using Driveline.Chains;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>Which measurement settles what bars a device's Yes.</summary>
internal static class BarMeasurements
{
    public static string For(string findingCode, DeviceKind device) => findingCode switch
    {
        ShearBoltFindings.HubSeized or ShearBoltFindings.HubStiff or ShearBoltFindings.HubFreedomNotKnown => Measurements.HubTurn,
        ShearBoltFindings.PlaneNotKnown or ShearBoltFindings.NeckNotKnown or DeviceFindings.ShearPlanesNotKnown => Measurements.PlaneThrough,
        ShearBoltFindings.NoAssuredMaximum or ShearBoltFindings.SpecialStrengthNotKnown => Measurements.BoltHardness,
        DeviceFindings.StandOffNotKnown => Measurements.HoleFit,
        DeviceFindings.ShaftAtCrossHoleNotKnown => Measurements.ShaftSteelAtHole,
        _ => device == DeviceKind.SlipClutch ? Measurements.SlipTest : Measurements.IdentifyDevice,
    };
}
