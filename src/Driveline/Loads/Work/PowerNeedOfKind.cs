using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>The power that all rows held of one kind of machine give together.</summary>
internal static class PowerNeedOfKind
{
    /// <summary>By every row whose width and feed rate are known; null when there is none.</summary>
    public static PowerNeed? Of(MachineKind kind, double meters, double kgPerS)
    {
        PowerNeed[] needs = kind == MachineKind.Other
            ? []
            : [.. ImplementPower.For(kind)
                .Where(r => (r.NeedsWidth || r.NeedsFeed) && (!r.NeedsWidth || meters > 0) && (!r.NeedsFeed || kgPerS > 0))
                .Select(r => PowerNeed.Of(r, r.NeedsWidth ? meters : 0, r.NeedsFeed ? kgPerS : 0))];
        return needs.Length > 1 ? Union(needs, meters, kgPerS) : needs.FirstOrDefault();
    }

    private static PowerNeed Union(PowerNeed[] needs, double widthM, double feedKgPerS)
    {
        double low = needs.Min(n => n.Power.SiBand.Low);
        double expected = needs.Average(n => n.Power.SiBand.Expected);
        double high = needs.Max(n => n.Power.SiBand.High);
        BandBasis basis = needs.Select(n => n.Power.Basis).Aggregate(BandBasis.Combine);
        Finding spread = Finding.Of(LoadsFindings.PowerSourcesDiffer, Severity.Note)
            .With("lowest", QuantityKind.Power, low)
            .With("highest", QuantityKind.Power, high);
        Finding[] findings =
        [
            spread, .. needs.SelectMany(n => n.Findings).Where(f => f.Code != LoadsFindings.PowerScaledByWidth).Distinct(),
        ];
        return new PowerNeed(null, widthM, feedKgPerS, PowerBand.OfSi(new Band(low, expected, high), basis), findings);
    }
}
