namespace Driveline.Chains;

/// <summary>Codes of what is not known about a device in its place.</summary>
public static class DeviceFindings
{
    /// <summary>In how many planes each bolt shears is not known.</summary>
    public const string ShearPlanesNotKnown = "shearPlanesNotKnown";

    /// <summary>Whether the faces at the shear plane touch is not known.</summary>
    public const string StandOffNotKnown = "standOffNotKnown";

    /// <summary>The steel of the shaft that the bolt goes through is not known.</summary>
    public const string ShaftAtCrossHoleNotKnown = "shaftAtCrossHoleNotKnown";
}
