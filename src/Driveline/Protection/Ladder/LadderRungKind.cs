namespace Driveline.Protection;

/// <summary>What a rung of the torque ladder stands for.</summary>
public enum LadderRungKind
{
    /// <summary>The peaks of normal work.</summary>
    Work = 0,

    /// <summary>Engaging the PTO.</summary>
    Engagement,

    /// <summary>A device acts.</summary>
    Trip,

    /// <summary>A part is damaged.</summary>
    Damage,
}
