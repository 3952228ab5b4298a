using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>One working limit for the angle of a PTO joint, as one source gives it.</summary>
internal sealed class JointAngleLimit
{
    internal JointAngleLimit(double degrees, bool wideAngle, bool continuous, Basis basis)
    {
        Printed = new Sourced(degrees, "°", basis);
        IsWideAngle = wideAngle;
        IsContinuous = continuous;
    }

    /// <summary>The angle in degrees as printed, with its basis.</summary>
    public Sourced Printed { get; }

    /// <summary>The angle.</summary>
    public Angle Angle => Angle.FromDegrees(Printed.Value);

    /// <summary>True for a wide-angle (constant-speed) joint, false for a standard one.</summary>
    public bool IsWideAngle { get; }

    /// <summary>True for continuous work, false for short periods.</summary>
    public bool IsContinuous { get; }

    /// <summary>Every limit held; sources disagree and all are kept.</summary>
    public static IReadOnlyList<JointAngleLimit> All { get; } = Array.AsReadOnly<JointAngleLimit>(
    [
        new(15, false, true, Basis.Published("operator manual, flail mower", "undated", "driveline section")),
        new(25, false, true, Basis.CommonPractice("driveline guide copied in a forum: standard joint, continuous")),
        new(35, false, true, Basis.Published("operator manual, loader wagon", "undated", "driveline section")),
        new(45, false, false, Basis.CommonPractice("driveline guide copied in a forum: standard joint, short periods at reduced output")),
        new(25, true, true, Basis.CommonPractice("driveline guide copied in a forum: wide-angle joint, continuous")),
        new(70, true, false, Basis.Published("operator manual, loader wagon", "undated", "driveline section")),
        new(80, true, false, Basis.CommonPractice("driveline guide copied in a forum: wide-angle joint, short periods")),
    ]);

    /// <inheritdoc/>
    public override string ToString() => Printed.ToString();
}
