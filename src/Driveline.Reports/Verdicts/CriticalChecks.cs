using Driveline.Chains;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Reports.Verdicts;

/// <summary>The checks of a verdict on which its two answers hang: the worst guarded part, the device nearest to work.</summary>
internal static class CriticalChecks
{
    /// <summary>The part with the worst answer, then the least margin; null when no part has a known limit.</summary>
    public static PartCheck? Part(ProtectionVerdict verdict) => verdict.Parts
        .Where(p => p.Part.Limit is not null)
        .OrderBy(p => p.Guards == Answer.No ? 0 : 1)
        .ThenBy(p => p.GuardedBy is null ? 0 : 1)
        .ThenBy(p => p.Margin ?? double.PositiveInfinity)
        .ThenBy(p => p.DamagedAtPto?.Expected?.NewtonMeters ?? double.PositiveInfinity)
        .FirstOrDefault();

    /// <summary>The device with the worst answer, then the least margin to work; null when there is none.</summary>
    public static DeviceCheck? Device(ProtectionVerdict verdict) => verdict.Devices
        .OrderBy(d => d.Quiet == Answer.No ? 0 : 1)
        .ThenBy(d => d.Margin ?? double.PositiveInfinity)
        .FirstOrDefault();

    /// <summary>The torque at which a device acts in running work, referred to the PTO; null when not known.</summary>
    public static TorqueBand? RunningAtPto(ProtectionVerdict verdict, DeviceCheck check) =>
        check.Device.Running is { } running ? verdict.Question.Chain.ReferToPto(check.Device, running) : null;

    /// <summary>The torque at which something acts for a part, referred to the PTO; null when not known.</summary>
    public static TorqueBand? ActsAtPto(ProtectionVerdict verdict, PartCheck check) =>
        check.ActsAt is { } acts ? verdict.Question.Chain.ReferToPto(check.Part, acts) : null;

    /// <summary>What the case leaves out: names of parts and devices without a torque, in order from the tractor.</summary>
    public static IEnumerable<Element> WithoutTorque(ProtectionVerdict verdict) => verdict.Devices
        .Where(d => d.TripAtPto is null).Select(d => (Element)d.Device)
        .Concat(verdict.Parts.Where(p => p.DamagedAtPto is null && !(p.Part.StoresEnergy && p.Part.Limit is null)).Select(p => p.Part));
}
