namespace Driveline.Pto;

/// <summary>How the two inner yokes of a shaft with two joints stand to each other.</summary>
internal enum JointPhasing
{
    /// <summary>Not known: the worse case is taken.</summary>
    NotKnown = 0,

    /// <summary>A quarter turn out of phase: the ripples add.</summary>
    QuarterTurnOut,

    /// <summary>In one plane: the ripples cancel at equal angles.</summary>
    InPhase,
}
