using Driveline.Provenance;

namespace Driveline.Quantities;

/// <summary>Low, expected and high value of a quantity, each with its basis. Expected and high may be unbounded.</summary>
/// <remarks>0 ≤ low ≤ expected ≤ high. Immutable; equality compares SI values and bases.</remarks>
public abstract class QuantityBand : IEquatable<QuantityBand>
{
    private protected QuantityBand(Band si, BandBasis basis)
    {
        SiBand = si;
        Basis = Guard.NotNull(basis, nameof(basis));
    }

    /// <summary>Where the three values come from and what the ends mean.</summary>
    public BandBasis Basis { get; }

    /// <summary>True when the high value is known.</summary>
    public bool IsBounded => SiBand.IsBounded;

    /// <summary>True when the expected value is known.</summary>
    public bool HasExpected => SiBand.HasExpected;

    /// <summary>The weakest basis of the three values.</summary>
    public Basis WeakestBasis => Basis.Weakest;

    internal Band SiBand { get; }

    private protected abstract string Unit { get; }

    private protected virtual double PerUnit => 1;

    /// <inheritdoc/>
    public bool Equals(QuantityBand? other) =>
        other is not null && other.GetType() == GetType() && SiBand.Equals(other.SiBand) && Basis.Equals(other.Basis);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as QuantityBand);

    /// <inheritdoc/>
    public override int GetHashCode() => SiBand.GetHashCode();

    /// <summary>The band in one line of English with its unit, four significant digits, invariant culture.</summary>
    public override string ToString() => SiBand.Low.Equals(SiBand.High)
        ? Format(SiBand.Low) + " " + Unit
        : Format(SiBand.Low) + " to " + Format(SiBand.High) + " " + Unit + ", expected " + Format(SiBand.Expected) + " " + Unit;

    private string Format(double si) =>
        double.IsPositiveInfinity(si) ? "unbounded" : Significant.Digits(si / PerUnit, 4);
}
