using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Power and torque that the engine can hold at the PTO.</summary>
/// <remarks>
/// From power: P_pto = P_engine · r and T = P_pto / ω, r PTO power over engine power. From torque: T_pto = T_engine · i · η,
/// i engine speed over PTO speed. Loaded down slowly the engine holds (1 + reserve) times its rated torque before it stalls;
/// the reserve must be stated. Short peaks are not capped by the engine but by the PTO clutch: see
/// <see cref="StrikeEstimate"/> and <see cref="EngagementTorque"/>. Immutable.
/// </remarks>
internal sealed class EngineSide
{
    private readonly bool ratioAssumed;

    private EngineSide(TorqueBand rated, RatioBand? reserve, bool ratioAssumed)
    {
        RatedTorque = rated;
        TorqueReserve = reserve;
        this.ratioAssumed = ratioAssumed;
    }

    /// <summary>
    /// What the reserve of a modern diesel is remembered to be: 0.20 to 0.50, expected 0.35. For orientation, never used unasked.
    /// </summary>
    public static RatioBand RememberedTorqueReserve { get; } =
        RatioBand.Between(0.20, 0.35, 0.50, Basis.FromMemory("torque reserve of modern diesels, 20 to 50 %, low confidence"));

    /// <summary>Torque at the PTO at rated engine power.</summary>
    public TorqueBand RatedTorque { get; }

    /// <summary>Share by which the engine can exceed its rated torque; null when not stated.</summary>
    public RatioBand? TorqueReserve { get; }

    /// <summary>
    /// Highest torque the engine holds before it stalls, T · (1 + reserve); no bound above the rated torque when the reserve is not stated.
    /// </summary>
    public TorqueBand StallTorque => TorqueReserve is { } reserve
        ? TorqueBand.OfSi(RatedTorque.SiBand.Times(Band.Exactly(1) + reserve.SiBand), BandBasis.Combine(RatedTorque.Basis, reserve.Basis))
        : TorqueBand.OfSi(
            new Band(RatedTorque.SiBand.Low, double.PositiveInfinity, double.PositiveInfinity),
            RatedTorque.Basis.With(Basis.FromMemory("torque reserve, not stated")));

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            if (ratioAssumed)
            {
                findings.Add(Finding.Of(LoadsFindings.PtoPowerRatiosDiffer, Severity.Note)
                    .With("lowest", QuantityKind.Number, PtoPowerRatios.Band.Low)
                    .With("highest", QuantityKind.Number, PtoPowerRatios.Band.SiBand.High));
            }

            if (TorqueReserve is null)
            {
                findings.Add(Finding.Of(LoadsFindings.TorqueReserveNotStated, Severity.Note));
            }

            return findings;
        }
    }

    /// <summary>From the PTO power and speed.</summary>
    /// <param name="ptoPower">Power at the PTO.</param>
    /// <param name="ptoSpeed">PTO speed; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static EngineSide OfPtoPower(PowerBand ptoPower, RotationalSpeed ptoSpeed) =>
        new(PtoTorque.FromPower(ptoPower, ptoSpeed), null, false);

    /// <summary>From the engine's power, by every ratio of PTO to engine power held here.</summary>
    /// <param name="enginePower">Engine power.</param>
    /// <param name="ptoSpeed">PTO speed; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static EngineSide OfEnginePower(PowerBand enginePower, RotationalSpeed ptoSpeed) =>
        new(PtoTorque.FromPower(PtoPower(enginePower, PtoPowerRatios.Band), ptoSpeed), null, true);

    /// <summary>From the engine's power by a stated ratio.</summary>
    /// <param name="enginePower">Engine power.</param>
    /// <param name="ratio">PTO power over engine power; above 0 to 1.</param>
    /// <param name="ptoSpeed">PTO speed; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio or the speed is out of its range.</exception>
    public static EngineSide OfEnginePower(PowerBand enginePower, RatioBand ratio, RotationalSpeed ptoSpeed) =>
        new(PtoTorque.FromPower(PtoPower(enginePower, ratio), ptoSpeed), null, false);

    /// <summary>From the engine's torque.</summary>
    /// <param name="engineTorque">Torque of the engine.</param>
    /// <param name="speedRatio">Engine speed over PTO speed; 0.1 to 100.</param>
    /// <param name="efficiency">Efficiency to the PTO; above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio or the efficiency is out of its range.</exception>
    /// <example>784 N·m, 1.864, no loss: 1461 N·m.</example>
    public static EngineSide OfEngineTorque(TorqueBand engineTorque, double speedRatio, RatioBand efficiency)
    {
        Guard.NotNull(engineTorque, nameof(engineTorque));
        double i = Guard.Within(speedRatio, 0.1, 100, "Engine speed over PTO speed", string.Empty, nameof(speedRatio));
        Band share = Share(efficiency, "Efficiency", nameof(efficiency));
        Band engine = engineTorque.SiBand;
        NoSteps none = default;
        var band = new Band(
            PtoNm(engine.Low, i, share.Low, ref none), PtoNm(engine.Expected, i, share.Expected, ref none),
                PtoNm(engine.High, i, share.High, ref none));
        return new EngineSide(TorqueBand.OfSi(band, BandBasis.Combine(engineTorque.Basis, efficiency.Basis)), null, false);
    }

    /// <summary>Power at the PTO, P_pto = P_engine · r.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not above 0 to 1.</exception>
    /// <example>125 hp, 0.86: 80.16 kW.</example>
    public static PowerBand PtoPower(PowerBand enginePower, RatioBand ratio)
    {
        Guard.NotNull(enginePower, nameof(enginePower));
        return PowerBand.OfSi(
            enginePower.SiBand.Times(Share(ratio, "PTO power over engine power", nameof(ratio))),
                BandBasis.Combine(enginePower.Basis, ratio.Basis));
    }

    /// <summary>The same with the share by which the engine can exceed its rated torque.</summary>
    /// <param name="reserve">0 or more, e.g. 0.35.</param>
    public EngineSide WithTorqueReserve(RatioBand reserve) => new(RatedTorque, Guard.NotNull(reserve, nameof(reserve)), ratioAssumed);

    internal static double PtoNm<S>(double engineNm, double speedRatio, double efficiency, ref S log)
        where S : struct, ISteps
    {
        double nm = engineNm * speedRatio * efficiency;
        log.Add(LoadsSteps.PtoTorque, nm);
        return nm;
    }

    internal static Band Share(RatioBand ratio, string quantity, string parameter)
    {
        Band share = Guard.NotNull(ratio, parameter).SiBand;
        return share.Low > 0 && share.High <= 1
            ? share
            : throw Guard.OutOfRange(quantity, "above 0 to 1", share.Low > 0 ? share.High : share.Low, string.Empty, parameter);
    }
}
