using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>Disc springs of the standard series A, B and C with the force printed at 0.75 of the cone height.</summary>
/// <remarks>
/// Series A is stiff (h0/t about 0.4), B middling (0.75), C soft (1.3): near 0.75 h0 a C spring holds its force through wear.
/// Dimensions in mm and forces in N, as printed in DIN 2093:1992. C 125 is left out, because its printed force is doubtful.
/// </remarks>
internal static class Din2093
{
    private static readonly Basis Copy = Basis.CommonPractice("DIN 2093:1992, read in secondary tables");
    private static readonly Basis Memory = Basis.FromMemory("DIN 2093:1992");

    /// <summary>All springs held here, by series and outer diameter.</summary>
    public static IReadOnlyList<Din2093Spring> All { get; } =
    [
        Row('A', 8, 4.2, 0.4, 0.4, 0.6, 210, Copy),
        Row('A', 10, 5.2, 0.5, 0.5, 0.75, 329, Copy),
        Row('A', 12.5, 6.2, 0.7, 0.7, 1, 673, Copy),
        Row('A', 16, 8.2, 0.9, 0.9, 1.25, 1000, Copy),
        Row('A', 18, 9.2, 1, 1, 1.4, 1250, Copy),
        Row('A', 20, 10.2, 1.1, 1.1, 1.55, 1530, Copy),
        Row('A', 25, 12.2, 1.5, 1.5, 2.05, 2910, Copy),
        Row('A', 28, 14.2, 1.5, 1.5, 2.15, 2850, Copy),
        Row('A', 31.5, 16.3, 1.75, 1.75, 2.45, 3900, Copy),
        Row('A', 40, 20.4, 2.25, 2.25, 3.15, 6540, Copy),
        Row('A', 45, 22.4, 2.5, 2.5, 3.5, 7720, Copy),
        Row('A', 50, 25.4, 3, 3, 4.1, 12000, Copy),
        Row('A', 63, 31, 3.5, 3.5, 4.9, 15000, Copy),
        Row('A', 71, 36, 4, 4, 5.6, 20500, Copy),
        Row('A', 80, 41, 5, 5, 6.7, 33700, Copy),
        Row('A', 100, 51, 6, 6, 8.2, 48000, Copy),
        Row('A', 112, 57, 6, 6, 8.5, 43800, Memory),
        Row('A', 125, 64, 8, 7.5, 10.6, 85900, Memory),
        Row('A', 160, 82, 10, 9.4, 13.5, 139000, Memory),
        Row('A', 180, 92, 10, 9.4, 14, 125000, Memory),
        Row('A', 200, 102, 12, 11.25, 16.2, 183000, Memory),
        Row('A', 250, 127, 14, 13.1, 19.6, 249000, Memory),
        Row('B', 8, 4.2, 0.3, 0.3, 0.55, 119, Memory),
        Row('B', 10, 5.2, 0.4, 0.4, 0.7, 213, Memory),
        Row('B', 14, 7.2, 0.5, 0.5, 0.9, 279, Memory),
        Row('B', 16, 8.2, 0.6, 0.6, 1.05, 412, Memory),
        Row('B', 18, 9.2, 0.7, 0.7, 1.2, 572, Memory),
        Row('B', 22.5, 11.2, 0.8, 0.8, 1.45, 710, Memory),
        Row('B', 25, 12.2, 0.9, 0.9, 1.6, 868, Memory),
        Row('B', 28, 14.2, 1, 1, 1.8, 1110, Memory),
        Row('B', 35.5, 18.3, 1.25, 1.25, 2.25, 1700, Memory),
        Row('B', 40, 20.4, 1.5, 1.5, 2.65, 2620, Copy),
        Row('B', 45, 22.4, 1.75, 1.75, 3.05, 3660, Copy),
        Row('B', 56, 28.5, 2, 2, 3.6, 4440, Copy),
        Row('B', 63, 31, 2.5, 2.5, 4.25, 7180, Copy),
        Row('B', 71, 36, 2.5, 2.5, 4.5, 6730, Copy),
        Row('B', 90, 46, 3.5, 3.5, 6, 14200, Copy),
        Row('B', 100, 51, 3.5, 3.5, 6.3, 13100, Copy),
        Row('B', 112, 57, 4, 4, 7.2, 17800, Memory),
        Row('B', 140, 72, 5, 5, 9, 27900, Memory),
        Row('B', 160, 82, 6, 6, 10.5, 41100, Memory),
        Row('B', 180, 92, 6, 6, 11.1, 37500, Memory),
        Row('B', 225, 112, 8, 7.5, 14.5, 70800, Memory),
        Row('B', 250, 127, 10, 9.4, 17, 119000, Memory),
        Row('C', 8, 4.2, 0.2, 0.2, 0.45, 39, Memory),
        Row('C', 12.5, 6.2, 0.35, 0.35, 0.8, 152, Memory),
        Row('C', 14, 7.2, 0.35, 0.35, 0.8, 123, Memory),
        Row('C', 16, 8.2, 0.4, 0.4, 0.9, 155, Memory),
        Row('C', 20, 10.2, 0.5, 0.5, 1.15, 254, Memory),
        Row('C', 22.5, 11.2, 0.6, 0.6, 1.4, 425, Memory),
        Row('C', 25, 12.2, 0.7, 0.7, 1.6, 601, Memory),
        Row('C', 31.5, 16.3, 0.8, 0.8, 1.85, 687, Memory),
        Row('C', 35.5, 18.3, 0.9, 0.9, 2.05, 831, Memory),
        Row('C', 40, 20.4, 1, 1, 2.3, 1020, Memory),
        Row('C', 50, 25.4, 1.25, 1.25, 2.85, 1550, Memory),
        Row('C', 56, 28.5, 1.5, 1.5, 3.45, 2620, Memory),
        Row('C', 63, 31, 1.8, 1.8, 4.15, 4240, Memory),
        Row('C', 80, 41, 2.25, 2.25, 5.2, 6610, Memory),
        Row('C', 90, 46, 2.5, 2.5, 5.7, 7680, Memory),
        Row('C', 100, 51, 2.7, 2.7, 6.2, 8610, Memory),
        Row('C', 140, 72, 3.8, 3.8, 8.7, 17200, Memory),
        Row('C', 160, 82, 4.3, 4.3, 9.9, 21800, Memory),
        Row('C', 200, 102, 5.5, 5.5, 12.5, 36100, Memory),
        Row('C', 225, 112, 6.5, 6.2, 13.6, 44600, Memory),
        Row('C', 250, 127, 7, 6.7, 14.8, 50500, Memory),
    ];

    /// <summary>The spring of a series and outer diameter.</summary>
    /// <param name="series">'A', 'B' or 'C'.</param>
    /// <param name="outerDiameter">Outer diameter De.</param>
    /// <exception cref="ArgumentException">No such spring is held; the message lists those of the series.</exception>
    public static Din2093Spring Find(char series, Length outerDiameter) => TryFind(series, outerDiameter, out Din2093Spring? spring)
        ? spring!
        : throw new ArgumentException(NotHeldText(series), nameof(outerDiameter));

    /// <summary>The spring of a series and outer diameter, to 0.01 mm.</summary>
    public static bool TryFind(char series, Length outerDiameter, [NotNullWhen(true)] out Din2093Spring? spring)
    {
        double m = Quantities.Si.Meters(outerDiameter);
        spring = All.FirstOrDefault(s => s.Series == series && Math.Abs(s.Spring.OuterM - m) < 1e-5);
        return spring is not null;
    }

    private static Din2093Spring Row(char series, double de, double di, double t, double reduced, double l0, double forceN, Basis basis)
    {
        DiscSpring spring = DiscSpring.Of(
            Length.FromMillimeters(de), Length.FromMillimeters(di), Length.FromMillimeters(t), Length.FromMillimeters(l0));
        return new Din2093Spring(
            series, reduced < t ? spring.WithReducedThickness(Length.FromMillimeters(reduced)) : spring, forceN, basis);
    }

    internal static string NotHeldText(char series) =>
        FormattableString.Invariant($"Series {series} disc spring of that outer diameter is not held here; held: ")
        + string.Join(", ", All.Where(s => s.Series == series).Select(s => FormattableString.Invariant($"{s.Spring.OuterM * 1000:G4} mm")))
            + ".";
}
