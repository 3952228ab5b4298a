using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high torsional stiffness, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class StiffnessBand : QuantityBand<RotationalStiffness>
{
    private StiffnessBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "N·m/rad";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static StiffnessBand Exactly(RotationalStiffness value, Basis basis) =>
        new(Band.Stated(Si.NewtonMetersPerRadian(value), "N·m/rad"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static StiffnessBand Between(RotationalStiffness low, RotationalStiffness expected, RotationalStiffness high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static StiffnessBand Between(RotationalStiffness low, RotationalStiffness expected, RotationalStiffness high, BandBasis basis) =>
        new(Band.Stated(Si.NewtonMetersPerRadian(low), Si.NewtonMetersPerRadian(expected), Si.NewtonMetersPerRadian(high), "N·m/rad"),
            basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static StiffnessBand AtLeast(RotationalStiffness low, Basis basis) =>
        new(Band.StatedAtLeast(Si.NewtonMetersPerRadian(low), "N·m/rad"), BandBasis.Of(basis));

    internal static StiffnessBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override RotationalStiffness Of(double si) => RotationalStiffness.FromNewtonMetersPerRadian(si);
}
