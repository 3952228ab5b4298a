using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>The Unified threads held, with their stress areas as printed, in in².</summary>
internal static class UnifiedThreads
{
    private const string Copy = "Mechanical Engineering Design, 9th ed., Table 8-2, p. 413";

    private static readonly Basis TabledArea = Basis.Published("ANSI B1.1", "1974", "tensile-stress areas, UNC and UNF").ReadVia(Copy);

    private static readonly Basis TabledRoot =
        Basis.Published("ANSI B1.1", "1974", "minor-diameter areas, d − 1.299038 p").ReadVia(Copy);

    private static readonly Basis OffTheTable =
        Basis.CommonPractice("ASME B1.1 at 1-1/8 and 1-3/8 in, edition not stated").ReadVia("public thread tables that agree");

    public static readonly IReadOnlyList<UnifiedThread> All =
    [
        Thread("No. 10", 0.19, 24, ThreadSeries.Unc, 0.0175),
        Thread("1/4", 0.25, 20, ThreadSeries.Unc, 0.0318),
        Thread("5/16", 0.3125, 18, ThreadSeries.Unc, 0.0524),
        Thread("3/8", 0.375, 16, ThreadSeries.Unc, 0.0775),
        Thread("7/16", 0.4375, 14, ThreadSeries.Unc, 0.1063),
        Thread("1/2", 0.5, 13, ThreadSeries.Unc, 0.1419),
        Thread("9/16", 0.5625, 12, ThreadSeries.Unc, 0.182),
        Thread("5/8", 0.625, 11, ThreadSeries.Unc, 0.226),
        Thread("3/4", 0.75, 10, ThreadSeries.Unc, 0.334),
        Thread("7/8", 0.875, 9, ThreadSeries.Unc, 0.462),
        Thread("1", 1.0, 8, ThreadSeries.Unc, 0.606),
        Thread("1-1/8", 1.125, 7, ThreadSeries.Unc, 0.763),
        Thread("1-1/4", 1.25, 7, ThreadSeries.Unc, 0.969),
        Thread("1-3/8", 1.375, 6, ThreadSeries.Unc, 1.155),
        Thread("1-1/2", 1.5, 6, ThreadSeries.Unc, 1.405),
        Thread("No. 10", 0.19, 32, ThreadSeries.Unf, 0.02),
        Thread("1/4", 0.25, 28, ThreadSeries.Unf, 0.0364),
        Thread("5/16", 0.3125, 24, ThreadSeries.Unf, 0.058),
        Thread("3/8", 0.375, 24, ThreadSeries.Unf, 0.0878),
        Thread("7/16", 0.4375, 20, ThreadSeries.Unf, 0.1187),
        Thread("1/2", 0.5, 20, ThreadSeries.Unf, 0.1599),
        Thread("9/16", 0.5625, 18, ThreadSeries.Unf, 0.203),
        Thread("5/8", 0.625, 18, ThreadSeries.Unf, 0.256),
        Thread("3/4", 0.75, 16, ThreadSeries.Unf, 0.373),
        Thread("7/8", 0.875, 14, ThreadSeries.Unf, 0.509),
        Thread("1", 1.0, 12, ThreadSeries.Unf, 0.663),
        Thread("1-1/8", 1.125, 12, ThreadSeries.Unf, 0.856),
        Thread("1-1/4", 1.25, 12, ThreadSeries.Unf, 1.073),
        Thread("1-3/8", 1.375, 12, ThreadSeries.Unf, 1.315),
        Thread("1-1/2", 1.5, 12, ThreadSeries.Unf, 1.581),
    ];

    public static Basis AreaBasis(string size) => IsTabled(size) ? TabledArea : OffTheTable;

    public static Basis RootBasis(string size) => IsTabled(size) ? TabledRoot : OffTheTable;

    // The table goes from 1 to 1 1/4 to 1 1/2 in.
    private static bool IsTabled(string size) => size is not ("1-1/8" or "1-3/8");

    private static UnifiedThread Thread(string size, double diameterInch, int threadsPerInch, ThreadSeries series, double stressAreaIn2) =>
        new(size, diameterInch, threadsPerInch, series, stressAreaIn2, false);
}
