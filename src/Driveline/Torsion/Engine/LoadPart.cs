namespace Driveline.Torsion;

/// <summary>A viscous load or an applied torque as the builder keeps it, SI at the rotor's own speed.</summary>
internal readonly record struct LoadPart(
    string Name, int Rotor, double Coefficient, double Torque, double Start, double Rise, bool IsViscous);
