using Driveline.Chains;
using Driveline.Clutches;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>Which measurement settles what bars a device's Yes.</summary>
internal static class BarMeasurements
{
    public static string For(string findingCode, DeviceKind device) => findingCode switch
    {
        ShearBoltFindings.HubSeized => Measurements.FreeHub,
        ShearBoltFindings.HubStiff or ShearBoltFindings.HubFreedomNotKnown => Measurements.HubTurn,
        ShearBoltFindings.PlaneNotKnown or ShearBoltFindings.NeckNotKnown or DeviceFindings.ShearPlanesNotKnown => Measurements.PlaneThrough,
        ShearBoltFindings.NoAssuredMaximum or ShearBoltFindings.SpecialStrengthNotKnown => Measurements.BoltHardness,
        DeviceFindings.StandOffNotKnown or ShearBoltFindings.LooseInHole => Measurements.HoleFit,
        DeviceFindings.ShaftAtCrossHoleNotKnown => Measurements.ShaftSteelAtHole,
        ClutchFindings.SpringLengthNotKnown or ClutchFindings.SpringsSolid or ClutchFindings.SpringsMayBeSolid or ClutchFindings.ShorterThanSolid
            or ClutchFindings.SpringsLoose or ClutchFindings.WearNotKnown or ClutchFindings.WornOut or ClutchFindings.SurfaceNotKnown
            or DeviceFindings.ClutchNotDescribed or DeviceFindings.FacingNotKnown => Measurements.ClutchSprings,
        DeviceFindings.SlipsPerHourNotKnown or DeviceFindings.SlipHeatNotKnown or DeviceFindings.SlipsTooHot => Measurements.SlipsInWork,
        DeviceFindings.CutOutNotProven => Measurements.SlipTest,
        _ => device == DeviceKind.SlipClutch ? Measurements.SlipTest : Measurements.IdentifyDevice,
    };
}
