namespace Driveline.Tests.Consistency;

/// <summary>One row that was run: what it checks, against which source, and how far off it was.</summary>
/// <param name="Capability">What is checked.</param>
/// <param name="Kind">How.</param>
/// <param name="Source">The printed source; the class's own comments when no row names it.</param>
/// <param name="Comparisons">Numbers compared.</param>
/// <param name="Deviation">Largest share by which one was off; null when no number was compared as such.</param>
internal sealed record ValidationRow(string Capability, ValidationKind Kind, string Source, int Comparisons, double? Deviation);
