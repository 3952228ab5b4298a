using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high torque, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class TorqueBand : QuantityBand
{
    private TorqueBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public Torque Low => Torque.FromNewtonMeters(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public Torque? Expected => HasExpected ? Torque.FromNewtonMeters(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public Torque? High => IsBounded ? Torque.FromNewtonMeters(SiBand.High) : null;

    private protected override string Unit => "N·m";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static TorqueBand Exactly(Torque value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.NewtonMeters(value), "Value", "N·m", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TorqueBand Between(Torque low, Torque expected, Torque high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TorqueBand Between(Torque low, Torque expected, Torque high, BandBasis basis) => new(
        new Band(
            Guard.NotNegative(Si.NewtonMeters(low), "Low value", "N·m", nameof(low)),
            Guard.NotNegative(Si.NewtonMeters(expected), "Expected value", "N·m", nameof(expected)),
            Guard.NotNegative(Si.NewtonMeters(high), "High value", "N·m", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static TorqueBand AtLeast(Torque low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.NewtonMeters(low), "Low value", "N·m", nameof(low)), double.PositiveInfinity,
            double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static TorqueBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
