using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Torque at the PTO by what the engine reports of itself: an upper bound, for wheels and hydraulics share the engine.</summary>
/// <remarks>
/// T_pto = (actual − friction − parasitic) · T_ref · n_engine / n_pto · η, shares of the reference torque T_ref. The low end is
/// 0: all of it may go elsewhere. Reports come 10 to 50 times a second, too seldom to show a strike.
/// </remarks>
internal sealed class EngineTorqueReading
{
    private readonly double share;
    private readonly double referenceNm;
    private readonly double engineRadPerS;

    private EngineTorqueReading(double share, double referenceNm, double engineRadPerS)
    {
        this.share = share;
        this.referenceNm = referenceNm;
        this.engineRadPerS = engineRadPerS;
    }

    /// <summary>One reading.</summary>
    /// <param name="actualPercent">Actual engine torque, % of the reference torque; −125 to 125.</param>
    /// <param name="frictionPercent">Nominal friction torque, %; −125 to 125.</param>
    /// <param name="parasiticPercent">Estimated losses to fan, pumps and alternator, %; −125 to 125.</param>
    /// <param name="reference">Reference torque of the engine; above 0.</param>
    /// <param name="engineSpeed">Engine speed; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    public static EngineTorqueReading Of(
        double actualPercent, double frictionPercent, double parasiticPercent, Torque reference, RotationalSpeed engineSpeed)
    {
        double percent = Percent(actualPercent, "Actual torque", nameof(actualPercent))
            - Percent(frictionPercent, "Friction torque", nameof(frictionPercent))
            - Percent(parasiticPercent, "Parasitic losses", nameof(parasiticPercent));
        return new EngineTorqueReading(
            Math.Max(0, percent) / 100,
            Guard.Positive(Si.NewtonMeters(reference), "Reference torque", "N·m", nameof(reference)),
            Guard.Positive(Si.RadiansPerSecond(engineSpeed), "Engine speed", "rad/s", nameof(engineSpeed)));
    }

    /// <summary>Torque at the PTO: 0 to the bound, expected the bound.</summary>
    /// <param name="ptoSpeed">PTO speed; above 0.</param>
    /// <param name="efficiency">Efficiency to the PTO; above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    /// <example>38 %, 13 % and 0 % of 800 N·m at 1605.5 min⁻¹, PTO 540 min⁻¹, no loss: 594.6 N·m.</example>
    public TorqueBand AtPto(RotationalSpeed ptoSpeed, RatioBand efficiency)
    {
        double pto = Guard.Positive(Si.RadiansPerSecond(ptoSpeed), "PTO speed", "rad/s", nameof(ptoSpeed));
        Band eta = EngineSide.Share(efficiency, "Efficiency", nameof(efficiency));
        NoSteps none = default;
        double ratio = engineRadPerS / pto;
        double expected = EngineSide.PtoNm(share * referenceNm, ratio, eta.Expected, ref none);
        double high = EngineSide.PtoNm(share * referenceNm, ratio, eta.High, ref none);
        return TorqueBand.OfSi(new Band(0, expected, high), efficiency.Basis.With(Basis.Given("engine torque as reported")));
    }

    private static double Percent(double value, string quantity, string parameter) =>
        Guard.Within(value, -125, 125, quantity, "%", parameter);
}
