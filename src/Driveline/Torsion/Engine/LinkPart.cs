namespace Driveline.Torsion;

/// <summary>A shaft, coupling, obstacle or friction load as the builder keeps it.</summary>
internal readonly record struct LinkPart(string Name, int From, int To, Shaft? Shaft, Coupling? Coupling, Obstacle? Obstacle);
