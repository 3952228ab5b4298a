namespace Driveline.Fasteners;

/// <summary>Every bolt grade held, of every standard.</summary>
internal static class BoltGrades
{
    /// <summary>SAE J429, ISO 898-1, ASTM and ISO 3506-1, in that order.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } = [.. SaeJ429.All, .. Iso898.All, .. AstmBolts.All, .. Iso3506.All];

    /// <summary>The grades held of one standard, e.g. "SAE J429"; empty when there is none.</summary>
    public static IReadOnlyList<BoltGrade> Of(string standard) => All.Where(g => g.Standard == standard).ToList();
}
