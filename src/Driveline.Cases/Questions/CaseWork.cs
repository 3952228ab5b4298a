using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The torques of normal work of a case, at the PTO.</summary>
/// <remarks>
/// Stated at an element they are referred: T_pto = T · i / (η · s), with i its speed over PTO speed, η the efficiencies before it and s its
/// share of the power. Where a ratio before it is not known, they are not known.
/// </remarks>
internal static class CaseWork
{
    /// <summary>Steady peaks as stated, else those of what a machine of its kind needs.</summary>
    public static WorkPeak? Peak(CaseFile file, DrivelineChain chain) => Stated(file, chain)
        ?? (Need(file) is { } need && file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed) is { } speed
            ? WorkPeak.FromNeed(
                need, speed,
                file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.PeakFactor) ?? PeakFactor.For(CaseQuestion.MachineOf(file)),
                Engine(file, speed))
            : null);

    /// <summary>The power that width or feed tell; null where torque or power of work is stated, or no row of the kind holds.</summary>
    public static PowerNeed? Need(CaseFile file)
    {
        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        CaseObject? implement = file.Facts.Get(CaseFileMembers.Implement);
        bool isStated = work is not null
            && (work.IsStated(WorkMembers.SteadyPeak) || work.IsStated(WorkMembers.SteadyMean) || work.IsStated(WorkMembers.MeanPower));
        return !isStated && PowerNeed.TryOf(
            CaseQuestion.MachineOf(file), implement?.Get(ImplementMembers.Width), implement?.Get(ImplementMembers.MassFlow),
            out PowerNeed? need) ? need : null;
    }

    /// <summary>Steady peaks as stated; else from the mean torque or the mean power with a peak factor, stated or usual.</summary>
    public static WorkPeak? Stated(CaseFile file, DrivelineChain chain)
    {
        MachineKind machine = CaseQuestion.MachineOf(file);
        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        if (AtPto(work, WorkMembers.SteadyPeak, chain) is { } peaks)
        {
            return WorkPeak.Stated(peaks);
        }

        if (Mean(file, chain) is { } mean)
        {
            return work!.Get(WorkMembers.PeakFactor) is { } factor ? WorkPeak.FromMean(mean, factor) : WorkPeak.FromMean(mean, machine);
        }

        if (work?.Get(WorkMembers.MeanPower) is { } power
            && file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed) is { } speed)
        {
            return work.Get(WorkMembers.PeakFactor) is { } factor ? WorkPeak.FromPower(power, speed, factor)
                : WorkPeak.FromPower(power, speed, machine);
        }

        return null;
    }

    /// <summary>The mean torque as stated.</summary>
    public static TorqueBand? Mean(CaseFile file, DrivelineChain chain) =>
        AtPto(file.Facts.Get(CaseFileMembers.Work), WorkMembers.SteadyMean, chain);

    /// <summary>What a strike finds: the mean torque of work, or its peaks when nothing else is known.</summary>
    public static TorqueBand? Load(CaseFile file, DrivelineChain chain, RotationalSpeed ptoSpeed) => Mean(file, chain)
        ?? (file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.MeanPower) is { } power ? PtoTorque.FromPower(power, ptoSpeed)
            : AtPto(file.Facts.Get(CaseFileMembers.Work), WorkMembers.SteadyPeak, chain));

    private static EngineSide? Engine(CaseFile file, RotationalSpeed ptoSpeed)
    {
        CaseObject? tractor = file.Facts.Get(CaseFileMembers.Tractor);
        Basis stated = Basis.Given("the case");
        EngineSide? engine = tractor?.Get(TractorMembers.PtoPower) is { } pto
            ? EngineSide.OfPtoPower(PowerBand.Exactly(pto, stated), ptoSpeed)
            : tractor?.Get(TractorMembers.EnginePower) is { } power ? EngineSide.OfEnginePower(PowerBand.Exactly(power, stated), ptoSpeed)
            : null;
        return tractor?.Get(TractorMembers.TorqueReserve) is { } reserve ? engine?.WithTorqueReserve(RatioBand.Exactly(reserve, stated))
            : engine;
    }

    private static TorqueBand? AtPto(CaseObject? work, BandMember<TorqueBand> member, DrivelineChain chain)
    {
        if (work?.Get(member) is not { } torque || work.Get(WorkMembers.At) is not { } place || IsPto(place))
        {
            return work?.Get(member);
        }

        return CasePlaces.OnlyNamed(chain, place) is { } named ? chain.ReferToPto(named, torque) : null;
    }

    /// <summary>True for the place that needs no referring.</summary>
    public static bool IsPto(string place) => string.Equals(place, "pto", StringComparison.OrdinalIgnoreCase);
}
