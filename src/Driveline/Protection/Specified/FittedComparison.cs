namespace Driveline.Protection;

/// <summary>How what is fitted compares with what the manual specifies.</summary>
public enum FittedComparison
{
    /// <summary>Not known: one of the two is not identified or not stated.</summary>
    NotKnown = 0,

    /// <summary>It acts at a lower torque.</summary>
    Weaker,

    /// <summary>It acts at the same torque, within the policy's tolerance.</summary>
    Same,

    /// <summary>It acts at a higher torque: a change of the machine.</summary>
    Stronger,
}
