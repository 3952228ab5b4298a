using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>PTO power over engine power, as the sources give it; they disagree and all are kept.</summary>
internal static class PtoPowerRatios
{
    /// <summary>Every value: 0.86, 0.922, 0.80 and 0.90 (one source's range), 0.90.</summary>
    public static IReadOnlyList<Sourced> All { get; } = Array.AsReadOnly<Sourced>(
    [
        new(0.86, "1",
            Basis.CommonPractice("Introduction to Agricultural Engineering Technology, 86 % rule, edition not shown").ReadVia("web copy")),
        new(0.922, "1", Basis.CommonPractice("repower article on one tractor's official test: 94 PTO hp of 102 engine hp")),
        new(0.80, "1", Basis.CommonPractice("farm trade magazine: 10 to 20 % less than the engine")),
        new(0.90, "1", Basis.CommonPractice("farm trade magazine: 10 to 20 % less than the engine")),
        new(0.90, "1", Basis.FromMemory("ASABE D497 power relationships")),
    ]);

    /// <summary>From the lowest to the highest of them, expected 0.86; the basis is the weakest of all.</summary>
    public static RatioBand Band { get; } = Spread();

    private static RatioBand Spread()
    {
        Basis weakest = Basis.Weakest(All.Select(r => r.Basis));
        return RatioBand.Between(
            All.Min(r => r.Value),
            All[0].Value,
            All.Max(r => r.Value),
            new BandBasis(weakest, weakest, weakest, BandEnd.Interval95, BandEnd.Interval95));
    }
}
