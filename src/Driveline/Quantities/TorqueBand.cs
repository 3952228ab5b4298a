using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high torque, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class TorqueBand : QuantityBand<Torque>
{
    private TorqueBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "N·m";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static TorqueBand Exactly(Torque value, Basis basis) => new(Band.Stated(Si.NewtonMeters(value), "N·m"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TorqueBand Between(Torque low, Torque expected, Torque high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TorqueBand Between(Torque low, Torque expected, Torque high, BandBasis basis) =>
        new(Band.Stated(Si.NewtonMeters(low), Si.NewtonMeters(expected), Si.NewtonMeters(high), "N·m"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static TorqueBand AtLeast(Torque low, Basis basis) => new(Band.StatedAtLeast(Si.NewtonMeters(low), "N·m"), BandBasis.Of(basis));

    internal static TorqueBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Torque Of(double si) => Torque.FromNewtonMeters(si);
}
