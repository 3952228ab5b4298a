using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>The ISO metric threads held, with their nominal stress areas as printed, in mm².</summary>
internal static class MetricThreads
{
    public static readonly Basis FormulaBasis =
        Basis.Published("ISO 898-1", "2013", "stress area formula; ISO 724 basic profile").ReadVia("a university course page");

    public static readonly IReadOnlyList<MetricThread> All =
    [
        Thread(3, 0.5, ThreadSeries.MetricCoarse, 5.03),
        Thread(3.5, 0.6, ThreadSeries.MetricCoarse, 6.78),
        Thread(4, 0.7, ThreadSeries.MetricCoarse, 8.78),
        Thread(5, 0.8, ThreadSeries.MetricCoarse, 14.2),
        Thread(6, 1, ThreadSeries.MetricCoarse, 20.1),
        Thread(7, 1, ThreadSeries.MetricCoarse, 28.9),
        Thread(8, 1.25, ThreadSeries.MetricCoarse, 36.6),
        Thread(10, 1.5, ThreadSeries.MetricCoarse, 58.0),
        Thread(12, 1.75, ThreadSeries.MetricCoarse, 84.3),
        Thread(14, 2, ThreadSeries.MetricCoarse, 115),
        Thread(16, 2, ThreadSeries.MetricCoarse, 157),
        Thread(18, 2.5, ThreadSeries.MetricCoarse, 192),
        Thread(20, 2.5, ThreadSeries.MetricCoarse, 245),
        Thread(22, 2.5, ThreadSeries.MetricCoarse, 303),
        Thread(24, 3, ThreadSeries.MetricCoarse, 353),
        Thread(27, 3, ThreadSeries.MetricCoarse, 459),
        Thread(30, 3.5, ThreadSeries.MetricCoarse, 561),
        Thread(33, 3.5, ThreadSeries.MetricCoarse, 694),
        Thread(36, 4, ThreadSeries.MetricCoarse, 817),
        Thread(39, 4, ThreadSeries.MetricCoarse, 976),
        Thread(8, 1, ThreadSeries.MetricFine, 39.2),
        Thread(10, 1, ThreadSeries.MetricFine, 64.5),
        Thread(10, 1.25, ThreadSeries.MetricFine, 61.2),
        Thread(12, 1.25, ThreadSeries.MetricFine, 92.1),
        Thread(12, 1.5, ThreadSeries.MetricFine, 88.1),
        Thread(14, 1.5, ThreadSeries.MetricFine, 125),
        Thread(16, 1.5, ThreadSeries.MetricFine, 167),
        Thread(18, 1.5, ThreadSeries.MetricFine, 216),
        Thread(20, 1.5, ThreadSeries.MetricFine, 272),
        Thread(22, 1.5, ThreadSeries.MetricFine, 333),
        Thread(24, 2, ThreadSeries.MetricFine, 384),
        Thread(27, 2, ThreadSeries.MetricFine, 496),
        Thread(30, 2, ThreadSeries.MetricFine, 621),
        Thread(33, 2, ThreadSeries.MetricFine, 761),
        Thread(36, 3, ThreadSeries.MetricFine, 865),
    ];

    private static readonly Basis CoarseBasis =
        Basis.Published("ISO 898-1", "2013", "Table 4, nominal stress area").ReadVia("three public copies that agree");

    private static readonly Basis FineBasis =
        Basis.FromMemory("ISO 898-1:2013, Table 6, nominal stress areas of fine-pitch threads");

    public static Basis PublishedBasis(ThreadSeries series) => series == ThreadSeries.MetricCoarse ? CoarseBasis : FineBasis;

    private static MetricThread Thread(double diameterMm, double pitchMm, ThreadSeries series, double publishedMm2) =>
        new(diameterMm, pitchMm, series, publishedMm2, false);
}
