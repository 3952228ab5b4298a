using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <content>The results: peak, time, heat, and what to notice.</content>
public sealed partial class EngagementTorque
{
    private static readonly Band NoLoad = Band.Exactly(0);

    private static readonly Band NeverLess = new(0, double.PositiveInfinity, double.PositiveInfinity);

    private static readonly Basis Constant = Basis.CommonPractice("clutch that passes an even torque, drive held at its speed");

    /// <summary>
    /// Highest torque of the engagement at the first device: low, expected and high; no bound when the capacity is not known.
    /// </summary>
    /// <example>Capacity 1100 N·m exactly, abrupt: 1100 to 2200 N·m, expected 1100 N·m.</example>
    public TorqueBand Peak
    {
        get
        {
            if (Engagement.Peak is { } stated)
            {
                return stated;
            }

            NoSteps none = default;
            return TorqueBand.OfSi(PeakBand(ref none), PeakBasis());
        }
    }

    /// <summary>Torque of the clutch itself when the speeds meet: at most its capacity.</summary>
    public TorqueBand ClutchTorque
    {
        get
        {
            NoSteps none = default;
            return TorqueBand.OfSi(ClutchBand(ref none), PeakBasis());
        }
    }

    /// <summary>
    /// Peak of a clutch that does not slip at all, T_l + ω √(J k): an estimate, never a cap; null without inertia and stiffness.
    /// </summary>
    public TorqueBand? RigidPeak
    {
        get
        {
            if (Rotor is not { } rotor || Stiffness is not { } stiffness)
            {
                return null;
            }

            NoSteps none = default;
            Band load = Load?.SiBand ?? NoLoad, j = rotor.SiBand, k = stiffness.SiBand;
            var band = new Band(
                StrikeKernel.ImpactNm(load.Low, omega, j.Low, k.Low, ref none),
                StrikeKernel.ImpactNm(load.Expected, omega, j.Expected, k.Expected, ref none),
                StrikeKernel.ImpactNm(load.High, omega, j.High, k.High, ref none));
            BandBasis basis = BandBasis.Combine(rotor.Basis, stiffness.Basis);
            return TorqueBand.OfSi(band, Load is null ? basis : BandBasis.Combine(basis, Load.Basis));
        }
    }

    /// <summary>Time until the rotor turns with the PTO; no bound when it may never; null when the inertia is not known.</summary>
    /// <example>1.5 kg·m² to 540 min⁻¹ at 600 N·m without load: 0.1414 s.</example>
    public TimeBand? SynchronisingTime
    {
        get
        {
            NoSteps none = default;
            return Rotor is null ? null : TimeBand.OfSi(Times(ref none), HeatBasis());
        }
    }

    /// <summary>Heat in the clutch that slips; no bound when it may never stop; null when the inertia is not known.</summary>
    /// <example>1.5 kg·m² to 540 min⁻¹ without load: 2398 J.</example>
    public EnergyBand? SlipHeat
    {
        get
        {
            NoSteps none = default;
            return Rotor is null ? null : EnergyBand.OfSi(Heats(ref none), HeatBasis());
        }
    }

    /// <summary>
    /// Heating power at the first moment of slip, T_c · ω: it goes on while a stuck machine stands still; no bound without a known
    /// capacity.
    /// </summary>
    public PowerBand SlipPower => PowerBand.OfSi(Capacity.Times(omega), Engagement.Capacity?.Basis ?? BandBasis.Of(UnknownCapacity));

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            if (Engagement.Capacity is null && Engagement.Peak is null)
            {
                findings.Add(Finding.Of(LoadsFindings.EngagementCapacityNotKnown, Severity.Warning));
                if (RigidPeak is { } rigid)
                {
                    findings.Add(Finding.Of(LoadsFindings.EngagementRigidEstimate, Severity.Note)
                        .With("rigid", QuantityKind.Torque, rigid.SiBand.Expected));
                }
            }

            if (Engagement.Manner == EngagementManner.Gentle && Engagement.Clutch is PtoClutchKind.Hydraulic or PtoClutchKind.Electric)
            {
                findings.Add(Finding.Of(LoadsFindings.EngagementNotFeatherable, Severity.Warning));
            }

            AddSwing(findings);
            AddSynchronising(findings);
            return findings;
        }
    }

    private static Basis UnknownCapacity { get; } = Basis.FromMemory("capacity of the PTO clutch, not known");

    private Band Capacity => Engagement.Capacity?.SiBand ?? NeverLess;

    private void AddSwing(List<Finding> findings)
    {
        NoSteps none = default;
        double factor = FactorHigh(ref none);
        if (Engagement.Capacity is { } capacity && Engagement.Peak is null && factor > 1.05)
        {
            findings.Add(Finding.Of(LoadsFindings.EngagementMayOvershoot, Severity.Note)
                .With("capacity", QuantityKind.Torque, capacity.SiBand.High)
                .With("factor", QuantityKind.Number, factor)
                .With("peak", QuantityKind.Torque, Peak.SiBand.High));
        }
    }

    private void AddSynchronising(List<Finding> findings)
    {
        if (Rotor is null)
        {
            findings.Add(Finding.Of(LoadsFindings.EngagementRotorNotKnown, Severity.Note));
        }

        if (Load is not { } load)
        {
            findings.Add(Finding.Of(LoadsFindings.EngagementLoadNotKnown, Severity.Note));
        }
        else if (Engagement.Capacity is { } capacity)
        {
            bool never = capacity.SiBand.Expected <= load.SiBand.Expected;
            if (never || capacity.SiBand.Low <= load.SiBand.High)
            {
                findings.Add(Finding.Of(
                    never ? LoadsFindings.EngagementNeverSynchronises : LoadsFindings.EngagementMayNotSynchronise,
                    never ? Severity.Danger : Severity.Warning)
                    .With("capacity", QuantityKind.Torque, never ? capacity.SiBand.Expected : capacity.SiBand.Low)
                    .With("load", QuantityKind.Torque, never ? load.SiBand.Expected : load.SiBand.High)
                    .With("power", QuantityKind.Power, SlipPower.SiBand.Expected));
            }
        }
    }

    // A band whose ends come from the clutch torque, then the swing of the line on top.
    private Band PeakBand<S>(ref S log)
        where S : struct, ISteps
    {
        Band clutch = ClutchBand(ref log);
        Band load = Load?.SiBand ?? NoLoad;
        double low = EngagementKernel.PeakNm(clutch.Low, 1, load.Low, ref log);
        double expected = EngagementKernel.PeakNm(clutch.Expected, FactorExpected(ref log), load.Expected, ref log);

        // T_l + f (T_c − T_l) falls with T_l at f > 1: the high end takes the lowest load, but never less than the highest load.
        double high = Math.Max(EngagementKernel.PeakNm(clutch.High, FactorHigh(ref log), load.Low, ref log), load.High);
        expected = Math.Max(low, expected);
        return new Band(low, expected, Math.Max(expected, high));
    }

    private Band ClutchBand<S>(ref S log)
        where S : struct, ISteps
    {
        Band capacity = Capacity, load = Load?.SiBand ?? NoLoad;
        if (Rise is not { } rise || Rotor is not { } rotor)
        {
            // Only a sudden bite is sure to reach the capacity; any other may end sooner.
            double low = Engagement.Manner == EngagementManner.Abrupt ? capacity.Low : Math.Min(load.Low, capacity.Low);
            return new Band(low, capacity.Expected, capacity.High);
        }

        Band t = rise.SiBand, j = rotor.SiBand;
        return new Band(
            t.IsBounded ? EngagementKernel.RampNm(j.Low, omega, capacity.Low, t.High, load.Low, ref log) : Math.Min(load.Low, capacity.Low),
            t.HasExpected ? EngagementKernel.RampNm(j.Expected, omega, capacity.Expected, t.Expected, load.Expected, ref log)
                : capacity.Expected,
            EngagementKernel.RampNm(j.High, omega, capacity.High, t.Low, load.High, ref log));
    }

    private double FactorExpected<S>(ref S log)
        where S : struct, ISteps =>
        HalfPhase(expected: true) is { } x ? EngagementKernel.RampFactor(x, ref log) : 1;

    private double FactorHigh<S>(ref S log)
        where S : struct, ISteps
    {
        double factor = Engagement.IsFeathered ? 1
            : HalfPhase(expected: false) is { } x ? Math.Min(SuddenFactor, 1 + (1 / x))
            : SuddenFactor;
        log.Add(LoadsSteps.RampFactor, factor);
        return factor;
    }

    // x = ω_n t_r / 2 from the lowest natural frequency √(k / J) and the shortest rise.
    private double? HalfPhase(bool expected)
    {
        if (Rise is not { } rise || Rotor is not { } rotor || Stiffness is not { } stiffness)
        {
            return null;
        }

        double t = expected ? rise.SiBand.Expected : rise.SiBand.Low;
        double k = expected ? stiffness.SiBand.Expected : stiffness.SiBand.Low;
        double j = expected ? rotor.SiBand.Expected : rotor.SiBand.High;
        double x = Math.Sqrt(k / j) * t / 2;
        return Guard.IsFinite(x) && x > 0 ? x : null;
    }

    private Band Times<S>(ref S log)
        where S : struct, ISteps
    {
        Band j = Rotor!.SiBand, capacity = Capacity, load = Load?.SiBand ?? NeverLess, rise = RiseDelay();
        double low = EngagementKernel.SyncSeconds(DriveLow, j.Low, omega, capacity.High, 0, load.Low, ref log);
        double loadExpected = Load is null ? 0 : load.Expected;
        double expected = capacity.HasExpected
            ? EngagementKernel.SyncSeconds(double.PositiveInfinity, j.Expected, omega, capacity.Expected, 0, loadExpected, ref log)
            : double.PositiveInfinity;
        double high = EngagementKernel.SyncSeconds(double.PositiveInfinity, j.High, omega, capacity.Low, 0, load.High, ref log);

        // Even the weakest load and the strongest clutch may never meet: the low end is then no assured time at all.
        low = Guard.IsFinite(low) ? low : 0;
        expected = Math.Max(low, expected + rise.Expected);
        return new Band(low, expected, Math.Max(expected, high + rise.High));
    }

    private Band Heats<S>(ref S log)
        where S : struct, ISteps
    {
        Band j = Rotor!.SiBand, load = Load?.SiBand ?? NeverLess, rise = RiseDelay();
        NoSteps none = default;
        Band t = Times(ref none);
        double loadExpected = Load is null ? 0 : load.Expected;
        double low = EngagementKernel.SlipJoules(DriveLow, j.Low, omega, load.Low, omega * t.Low / 2, ref log);
        double expected = EngagementKernel.SlipJoules(
            double.PositiveInfinity, j.Expected, omega, loadExpected, omega * (t.Expected + rise.Expected) / 2, ref log);
        double high = EngagementKernel.SlipJoules(
            double.PositiveInfinity, j.High, omega, load.High, omega * (t.High + rise.High) / 2, ref log);
        expected = Math.Max(low, expected);
        return new Band(low, expected, Math.Max(expected, high));
    }

    // A slowing engine only lowers the low end of time and heat.
    private double DriveLow => EngineInertia is { } engine ? engine.SiBand.Low : double.PositiveInfinity;

    private Band RiseDelay() => Rise is { } rise ? new Band(0, rise.SiBand.Expected, rise.SiBand.High) : NoLoad;

    private BandBasis PeakBasis()
    {
        BandBasis basis = Engagement.Capacity?.Basis ?? BandBasis.Of(UnknownCapacity);
        basis = Load is null ? basis : BandBasis.Combine(basis, Load.Basis);
        return Rise is null || Rotor is null ? basis : BandBasis.Combine(BandBasis.Combine(basis, Rise.Basis), Rotor.Basis);
    }

    private BandBasis HeatBasis() => BandBasis.Combine(PeakBasis(), Rotor!.Basis).With(Constant);
}
