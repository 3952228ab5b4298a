using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Speed of a blade's tip: v = r · ω_pto · i.</summary>
/// <remarks>
/// Published for agricultural rotary cutters: more than 67.1 m/s is typical (150 mph). Lawn and turf mowers are remembered
/// with a limit of 96.5 m/s, which does not hold for farm cutters. Below about 20 m/s a cut takes more energy.
/// </remarks>
internal sealed class TipSpeed
{
    private readonly double metersPerSecond;

    private TipSpeed(double metersPerSecond) => this.metersPerSecond = metersPerSecond;

    /// <summary>The least that is typical of agricultural rotary cutters.</summary>
    public static Sourced TypicalCutter { get; } =
        new(67.1, "m/s", Basis.CommonPractice("state extension page on rotary cutters, undated: more than 150 mph"));

    /// <summary>The limit of lawn and turf mowers: not a limit of farm cutters.</summary>
    public static Sourced LawnMowerLimit { get; } =
        new(96.5, "m/s", Basis.CommonPractice("19 000 ft/min by the safety standards of lawn mowers, as two public pages say"));

    /// <summary>Below about this speed the energy of a cut rises.</summary>
    public static Sourced LeastForCutting { get; } =
        new(20, "m/s", Basis.Published("Banno and Ogawa, J. Jpn Soc. Agric. Mach. 40(4):517-525", "1979", "abstract"));

    /// <summary>The speed of the tip.</summary>
    public Speed Speed => Speed.FromMetersPerSecond(metersPerSecond);

    /// <summary>Tip speed of a cutting circle behind a gearbox.</summary>
    /// <param name="cuttingDiameter">Diameter of the cutting circle; above 0.</param>
    /// <param name="ptoSpeed">PTO speed; 0 or more.</param>
    /// <param name="ratio">Rotor speed over PTO speed; 0.01 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    /// <example>60 in, 540 min⁻¹, 1:1.47: 63.34 m/s.</example>
    public static TipSpeed Of(Length cuttingDiameter, RotationalSpeed ptoSpeed, double ratio)
    {
        NoSteps none = default;
        return new TipSpeed(RotorKernel.TipMetersPerSecond(
            Guard.Positive(Si.Meters(cuttingDiameter), "Diameter of the cutting circle", "m", nameof(cuttingDiameter)) / 2,
            Guard.NotNegative(Si.RadiansPerSecond(ptoSpeed), "PTO speed", "rad/s", nameof(ptoSpeed)),
            Guard.Within(ratio, 0.01, 100, "Speed ratio", string.Empty, nameof(ratio)),
            ref none));
    }

    /// <summary>A stated or measured tip speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is negative or not finite.</exception>
    public static TipSpeed Stated(Speed speed) =>
        new(Guard.NotNegative(Si.MetersPerSecond(speed), "Tip speed", "m/s", nameof(speed)));

    /// <summary>What to notice: a tip faster than lawn mowers may have, or too slow to cut well.</summary>
    public IReadOnlyList<Finding> Check() =>
        metersPerSecond > LawnMowerLimit.Value
            ? [Of(LoadsFindings.TipFasterThanLawnLimit, LawnMowerLimit.Value)]
            : metersPerSecond < LeastForCutting.Value ? [Of(LoadsFindings.TipTooSlowToCut, LeastForCutting.Value)] : [];

    /// <inheritdoc/>
    public override string ToString() => Significant.Digits(metersPerSecond, 4) + " m/s";

    private Finding Of(string code, double compared) => Finding.Of(code, Severity.Note)
        .With("speed", QuantityKind.Number, metersPerSecond)
        .With("compared", QuantityKind.Number, compared)
        .With("speedMph", QuantityKind.Number, metersPerSecond / Si.MilePerHour)
        .With("comparedMph", QuantityKind.Number, compared / Si.MilePerHour);
}
