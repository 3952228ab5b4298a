using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>One row of a grade's table: the sizes it covers and the strength it promises there.</summary>
internal sealed class GradeRange
{
    private static readonly Basis MiddleOfHardness =
        Basis.CommonPractice("a maker aims at the middle of the permitted hardness");

    private static readonly Basis MiddleOfStrength =
        Basis.CommonPractice("a maker aims at the middle of the specified minimum and maximum strength");

    private readonly Sourced tensileMinimum;
    private readonly Sourced? tensileMaximum;
    private readonly Sourced? proof;
    private readonly Sourced? yield;
    private readonly HardnessRange? hardness;
    private readonly Sourced? worstHardness;

    private GradeRange(
        SizeRange sizes, Sourced tensileMinimum, Sourced? tensileMaximum, Sourced? proof, Sourced? yield,
        HardnessRange? hardness, Sourced? worstHardness, Basis basis, Basis hardnessBasis, IReadOnlyList<SourceConflict> conflicts)
    {
        Sizes = sizes;
        this.tensileMinimum = tensileMinimum;
        this.tensileMaximum = tensileMaximum;
        this.proof = proof;
        this.yield = yield;
        this.hardness = hardness;
        this.worstHardness = worstHardness;
        Basis = basis;
        HardnessBasis = hardnessBasis;
        Conflicts = conflicts;
        Strength = new GradeStrength(sizes.Text, TensileBand(), tensileMinimum, proof, yield, hardness, basis);
    }

    /// <summary>The sizes it covers.</summary>
    public SizeRange Sizes { get; }

    /// <summary>What it promises there.</summary>
    public GradeStrength Strength { get; }

    /// <summary>Basis of the row.</summary>
    public Basis Basis { get; }

    /// <summary>Basis of its hardness: that of the row, unless it was read elsewhere.</summary>
    public Basis HardnessBasis { get; }

    /// <summary>Numbers of this row on which sources disagree.</summary>
    public IReadOnlyList<SourceConflict> Conflicts { get; }

    /// <summary>The size range.</summary>
    public override string ToString() => Sizes.Text;

    internal static GradeRange Of(
        SizeRange sizes, string unit, double? proof, double? yield, double tensileMinimum, HardnessRange? hardness, Basis basis) => new(
        sizes,
        new Sourced(tensileMinimum, unit, basis),
        null,
        proof is { } p ? new Sourced(p, unit, basis) : null,
        yield is { } y ? new Sourced(y, unit, basis) : null,
        hardness,
        null,
        basis,
        basis,
        []);

    /// <summary>The same row whose hardness was read in another document.</summary>
    internal GradeRange WithHardnessOf(Basis other) =>
        new(Sizes, tensileMinimum, tensileMaximum, proof, yield, hardness, worstHardness, Basis, other, Conflicts);

    internal GradeRange WithMaximum(Sourced maximum) =>
        new(Sizes, tensileMinimum, maximum, proof, yield, hardness, worstHardness, Basis, HardnessBasis, Conflicts);

    /// <summary>The same row with a maximum hardness that older or other copies allow, used for the high end.</summary>
    internal GradeRange WithWorstHardness(Sourced value) =>
        new(Sizes, tensileMinimum, tensileMaximum, proof, yield, hardness, value, Basis, HardnessBasis, Conflicts);

    internal GradeRange WithConflict(string subject, Sourced used, Sourced other) =>
        new(Sizes, tensileMinimum, tensileMaximum, proof, yield, hardness, worstHardness, Basis, HardnessBasis,
            [.. Conflicts, new SourceConflict(subject, used, other)]);

    private StressBand TensileBand()
    {
        double low = Si.Pascals(tensileMinimum);
        (double high, Basis highBasis, BandEnd highEnd) = High();
        (double expected, Basis expectedBasis) = Expected(low, high, highBasis);
        return StressBand.OfSi(
            new Band(low, Math.Min(Math.Max(expected, low), high), high),
            new BandBasis(tensileMinimum.Basis, expectedBasis, highBasis, BandEnd.Limit, highEnd));
    }

    private (double Pa, Basis Basis, BandEnd End) High()
    {
        if (tensileMaximum is not null)
        {
            return (Si.Pascals(tensileMaximum), tensileMaximum.Basis, BandEnd.Limit);
        }

        if (hardness is not null)
        {
            Hardness most = worstHardness is null ? hardness.Maximum : Hardness.Of(hardness.Maximum.Scale, worstHardness.Value);
            if (HardnessTables.TryPreferred(most, out double pa, out Basis? table))
            {
                Basis row = worstHardness is null ? HardnessBasis : worstHardness.Basis;
                return (pa, Basis.Weakest(row, table), BandEnd.Interval95);
            }
        }

        return (double.PositiveInfinity, Basis, BandEnd.Interval95);
    }

    private (double Pa, Basis Basis) Expected(double low, double high, Basis highBasis)
    {
        if (hardness is not null && HardnessTables.TryPreferred(hardness.Middle, out double pa, out Basis? table))
        {
            return (pa, Basis.Weakest(MiddleOfHardness, table));
        }

        return double.IsPositiveInfinity(high)
            ? (high, Basis)
            : ((low + high) / 2, Basis.Weakest(MiddleOfStrength, highBasis));
    }
}
