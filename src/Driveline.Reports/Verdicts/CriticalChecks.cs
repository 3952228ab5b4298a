using Driveline.Chains;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Reports.Verdicts;

/// <summary>The checks of a verdict on which its two answers hang: the worst guarded part, the device nearest to work.</summary>
internal static class CriticalChecks
{
    /// <summary>The part with the worst answer, then the least margin; null when no part has a known limit.</summary>
    public static PartCheck? Part(ProtectionVerdict verdict)
    {
        PartCheck? worst = null;
        foreach (PartCheck check in verdict.Parts)
        {
            if (check.Part.Limit is not null && (worst is null || IsWorse(check, worst)))
            {
                worst = check;
            }
        }

        return worst;
    }

    /// <summary>The device with the worst answer, then the least margin to work; null when there is none.</summary>
    public static DeviceCheck? Device(ProtectionVerdict verdict)
    {
        DeviceCheck? worst = null;
        foreach (DeviceCheck check in verdict.Devices)
        {
            if (worst is null || IsWorse(check, worst))
            {
                worst = check;
            }
        }

        return worst;
    }

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

    private static bool IsWorse(PartCheck a, PartCheck b)
    {
        int answer = (b.Guards == Answer.No).CompareTo(a.Guards == Answer.No);
        int guarded = (a.GuardedBy is not null).CompareTo(b.GuardedBy is not null);
        int margin = OrOpen(a.Margin).CompareTo(OrOpen(b.Margin));
        int torque = OrOpen(a.DamagedAtPto?.Expected?.NewtonMeters).CompareTo(OrOpen(b.DamagedAtPto?.Expected?.NewtonMeters));
        return (answer != 0 ? answer : guarded != 0 ? guarded : margin != 0 ? margin : torque) < 0;
    }

    private static bool IsWorse(DeviceCheck a, DeviceCheck b)
    {
        int answer = (b.Quiet == Answer.No).CompareTo(a.Quiet == Answer.No);
        return (answer != 0 ? answer : OrOpen(a.Margin).CompareTo(OrOpen(b.Margin))) < 0;
    }

    private static double OrOpen(double? value) => value ?? double.PositiveInfinity;
}
