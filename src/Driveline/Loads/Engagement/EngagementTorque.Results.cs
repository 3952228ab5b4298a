using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <content>The results: peak, time, heat, and what to notice.</content>
internal sealed partial class EngagementTorque
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
}
