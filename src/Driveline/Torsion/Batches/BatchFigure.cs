namespace Driveline.Torsion;

/// <summary>What a column of a batch changes.</summary>
internal enum BatchFigure
{
    /// <summary>Inertia of a rotor, kg·m².</summary>
    Inertia,

    /// <summary>Stiffness of a shaft, N·m/rad.</summary>
    Stiffness,

    /// <summary>Damping of a shaft, N·m·s/rad.</summary>
    Damping,

    /// <summary>Torque at which a coupling breaks or begins to slip, N·m.</summary>
    TripTorque,

    /// <summary>Speed of all rotors at the start, as the first one's, rad/s.</summary>
    Speed,
}
