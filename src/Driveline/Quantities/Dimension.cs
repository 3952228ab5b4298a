namespace Driveline.Quantities;

/// <summary>What a written quantity measures; each has one SI unit and the units people write it in.</summary>
internal enum Dimension
{
    NotKnown = 0,
    Number,
    Torque,
    Length,
    RotationalSpeed,
    Power,
    Inertia,
    Stress,
    Force,
    Angle,
    Mass,
    Time,
    Energy,
    Temperature,
    Speed,
    TorsionalStiffness,
    SpringRate,
    TorsionalDamping,
    Area,
    Rate,
    MassFlow,
    HeatCapacity,
    SpecificHeat,
    HeatTransfer,
}
