namespace Driveline.Torsion;

/// <summary>A rotor as the builder keeps it: inertia in kg·m² (+∞ when held), held speed in rad/s.</summary>
internal readonly record struct RotorPart(string Name, double Inertia, double HeldSpeed);
