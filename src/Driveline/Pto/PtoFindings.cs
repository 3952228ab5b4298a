namespace Driveline.Pto;

/// <summary>Codes of what the PTO side reports.</summary>
public static class PtoFindings
{
    /// <summary>The steel of the tractor's stub is not known: its strength is a guess.</summary>
    public const string StubSteelNotKnown = "pto.stubSteelNotKnown";

    /// <summary>Editions of the standard and tractor manuals give different power limits for the type.</summary>
    public const string PowerLimitsDiffer = "pto.powerLimitsDiffer";

    /// <summary>The power is above the lowest limit known for the PTO type.</summary>
    public const string PowerAboveLowestLimit = "pto.powerAboveLowestLimit";

    /// <summary>The joint runs at a steeper angle than the strictest working practice.</summary>
    public const string JointAngleAbovePractice = "joint.angleAbovePractice";

    /// <summary>The joint runs at a steeper angle than every source allows for work.</summary>
    public const string JointAngleTooSteep = "joint.angleTooSteep";

    /// <summary>Whether the two joints are in phase is not known: the worse case is taken.</summary>
    public const string JointPhasingNotKnown = "joint.phasingNotKnown";

    /// <summary>The two joints do not cancel each other's ripple.</summary>
    public const string JointsDoNotCancel = "joint.doNotCancel";
}
