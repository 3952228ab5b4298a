namespace Driveline.Cases;

/// <summary>What the driveline meets in a strike.</summary>
internal enum StrikeKind
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>It stops dead: rock, or a driveline that seizes.</summary>
    Rigid,

    /// <summary>It gives way at a torque and stays deformed: wood, soil, crop.</summary>
    Yielding,

    /// <summary>It pushes back like a spring.</summary>
    Springy,

    /// <summary>The blades swing back first; then it stops dead, or gives way when that torque is stated.</summary>
    SwingBack,
}
