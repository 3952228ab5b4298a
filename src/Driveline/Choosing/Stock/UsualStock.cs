using Driveline.Fasteners;

namespace Driveline.Choosing;

/// <summary>What hardware and farm shops usually carry: coarse threads, three grades of each system.</summary>
internal static class UsualStock
{
    private static readonly string[] InchSizes = ["1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "3/4"];

    private static readonly string[] MetricSizes = ["M6", "M8", "M10", "M12", "M14", "M16", "M20"];

    public static IReadOnlyList<StockItem> Items { get; } =
    [
        .. UnifiedThread.All.Where(t => t.Series == ThreadSeries.Unc && InchSizes.Contains(t.Size))
            .SelectMany(t => Each(t, SaeJ429.Grade2, SaeJ429.Grade5, SaeJ429.Grade8)),
        .. MetricThread.All.Where(t => MetricSizes.Contains(t.Designation))
            .SelectMany(t => Each(t, Iso898.Class4_6, Iso898.Class8_8, Iso898.Class10_9)),
    ];

    private static IEnumerable<StockItem> Each(ScrewThread thread, params BoltGrade[] grades) =>
        grades.Select(g => StockItem.Of(thread, g));
}
