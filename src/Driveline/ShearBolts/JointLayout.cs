namespace Driveline.ShearBolts;

/// <summary>How shear bolts sit in a driveline joint.</summary>
public enum JointLayout
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>One bolt across the shaft, cut at both sides of it; the radius is half the shaft diameter.</summary>
    ThroughShaft,

    /// <summary>Bolts parallel to the shaft on a bolt circle, one plane each.</summary>
    BoltCircle,

    /// <summary>One bolt at a radius, cut across in one plane, as in a flywheel lug.</summary>
    Tangential,
}
