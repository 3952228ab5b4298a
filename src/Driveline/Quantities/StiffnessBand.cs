using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high torsional stiffness, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class StiffnessBand : QuantityBand
{
    private StiffnessBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public RotationalStiffness Low => RotationalStiffness.FromNewtonMetersPerRadian(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public RotationalStiffness? Expected => HasExpected ? RotationalStiffness.FromNewtonMetersPerRadian(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public RotationalStiffness? High => IsBounded ? RotationalStiffness.FromNewtonMetersPerRadian(SiBand.High) : null;

    private protected override string Unit => "N·m/rad";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static StiffnessBand Exactly(RotationalStiffness value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.NewtonMetersPerRadian(value), "Value", "N·m/rad", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static StiffnessBand Between(RotationalStiffness low, RotationalStiffness expected, RotationalStiffness high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static StiffnessBand Between(RotationalStiffness low, RotationalStiffness expected, RotationalStiffness high, BandBasis basis) =>
        new(
        new Band(
            Guard.NotNegative(Si.NewtonMetersPerRadian(low), "Low value", "N·m/rad", nameof(low)),
            Guard.NotNegative(Si.NewtonMetersPerRadian(expected), "Expected value", "N·m/rad", nameof(expected)),
            Guard.NotNegative(Si.NewtonMetersPerRadian(high), "High value", "N·m/rad", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static StiffnessBand AtLeast(RotationalStiffness low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.NewtonMetersPerRadian(low), "Low value", "N·m/rad", nameof(low)), double.PositiveInfinity,
            double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static StiffnessBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
