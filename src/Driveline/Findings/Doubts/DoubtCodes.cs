namespace Driveline.Findings;

/// <summary>Codes of the sources of doubt about a torque.</summary>
internal static class DoubtCodes
{
    /// <summary>Strength of a bolt of which the grade is known.</summary>
    public const string Grade = "doubt.grade";

    /// <summary>Strength of any other bolt or pin, as its hardness, its marks or its material tell.</summary>
    public const string Material = "doubt.material";

    /// <summary>Share of the tensile strength that holds in shear.</summary>
    public const string ShearRatio = "doubt.shearRatio";

    /// <summary>Thickness of the shank, pin or neck in the plane.</summary>
    public const string Section = "doubt.section";

    /// <summary>How much of a thread in the plane carries.</summary>
    public const string ThreadInPlane = "doubt.threadInPlane";

    /// <summary>Which part of the bolt is cut.</summary>
    public const string Plane = "doubt.plane";

    /// <summary>Diameter of a neck that nobody measured.</summary>
    public const string Neck = "doubt.neck";

    /// <summary>How the bolts share the load.</summary>
    public const string HoleFit = "doubt.holeFit";

    /// <summary>Bending of the bolt by a gap.</summary>
    public const string Gap = "doubt.gap";

    /// <summary>Drag of hub and faces beside the bolt.</summary>
    public const string Drag = "doubt.drag";

    /// <summary>A hub that may not turn.</summary>
    public const string Hub = "doubt.hub";

    /// <summary>Friction of the facings while they slip.</summary>
    public const string Friction = "doubt.friction";

    /// <summary>Force of the springs at their length.</summary>
    public const string Springs = "doubt.springs";

    /// <summary>Length of the springs as set.</summary>
    public const string SpringLength = "doubt.springLength";

    /// <summary>Wear of the linings.</summary>
    public const string Wear = "doubt.wear";

    /// <summary>Where on the faces the force bears.</summary>
    public const string RunIn = "doubt.runIn";

    /// <summary>Torque of the first slip over that while slipping.</summary>
    public const string Breakaway = "doubt.breakaway";

    /// <summary>Error of a lever reading.</summary>
    public const string Reading = "doubt.reading";

    /// <summary>State of the faces since a reading or a document.</summary>
    public const string Faces = "doubt.faces";

    /// <summary>A torque that is stated as it is.</summary>
    public const string Stated = "doubt.stated";
}
