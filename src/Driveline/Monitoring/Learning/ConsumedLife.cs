using Driveline.Fatigue;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>The share of its fatigue life that a part has used up in what was seen: Miner's sum over the counted ranges.</summary>
/// <remarks>
/// D = Σ n/N (Palmgren and Miner), the ranges still open as half cycles. Low and high take every range one class narrower and
/// wider, which rounding can at most be off. High is unbounded when a torque lay beyond the full scale, or above what the curve
/// holds for. The curves are lower bounds, so that most parts last longer; life used before the first sample is not in it.
/// </remarks>
public sealed class ConsumedLife
{
    private ConsumedLife(FatigueDetail detail, RatioBand damage, IReadOnlyList<Finding> findings)
    {
        Detail = detail;
        Damage = damage;
        Findings = findings;
    }

    /// <summary>The place.</summary>
    public FatigueDetail Detail { get; }

    /// <summary>Share of the life, 1 is all of it.</summary>
    public RatioBand Damage { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The detail and the share of its life that is used.</summary>
    public override string ToString() => Detail.Name + ": " + Damage;

    internal static ConsumedLife Of(FatigueDetail detail, RainflowStream cycles, double highestNm)
    {
        var findings = new List<Finding>();
        if (cycles.Clipped > 0)
        {
            findings.Add(Finding.Of(MonitoringFindings.BeyondScale, Severity.Warning)
                .With("samples", QuantityKind.Count, cycles.Clipped).With("scale", QuantityKind.Torque,
                    cycles.ClassNm * RainflowStream.Half));
        }

        bool holds = !(highestNm > detail.HoldsToNm);
        if (!holds)
        {
            findings.Add(Finding.Of(MonitoringFindings.AboveCurve, Severity.Warning)
                .With("part", detail.Name).With("peak", QuantityKind.Torque, highestNm).With("limit", QuantityKind.Torque,
                    detail.HoldsToNm));
        }

        double[] counted = cycles.CountedWithHalves();
        double low = Sum(detail, counted, cycles.ClassNm, -1);
        var band = new Band(
            low,
            holds ? Sum(detail, counted, cycles.ClassNm, 0) : double.PositiveInfinity,
            holds && cycles.Clipped == 0 ? Sum(detail, counted, cycles.ClassNm, 1) : double.PositiveInfinity);
        return new ConsumedLife(detail, RatioBand.OfSi(band, BandBasis.Of(detail.Basis)), findings.AsReadOnly());
    }

    private static double Sum(FatigueDetail detail, double[] counted, double classNm, int wider)
    {
        double[] ranges = new double[counted.Length];
        for (int k = 1; k < ranges.Length; k++)
        {
            ranges[k] = (k + wider) * classNm * detail.PaPerNm;
        }

        return Miner.Damage(detail.Curve, ranges, counted);
    }
}
