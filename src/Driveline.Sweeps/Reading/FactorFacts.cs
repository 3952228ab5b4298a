namespace Driveline.Sweeps.Reading;

/// <summary>A factor as it was read; null when something is wrong with it.</summary>
internal sealed record FactorFacts(string? Path, Factor? Factor);
