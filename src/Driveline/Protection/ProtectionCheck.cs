using Driveline.Chains;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>
/// Asks the two questions of a driveline: does the protection act before something expensive breaks, and is it quiet in normal work?
/// </summary>
/// <remarks>
/// Guards, for each part at its own position: Yes when damaged-at low exceeds trip high (times the policy's margin); No when
/// the expected trip exceeds the expected damage torque; else Maybe. Quiet, for each device at its own position: Yes when
/// trip low exceeds work peak high; No when the expected trip is below the expected work peak, or trips are seen in normal
/// work, or the engagement is expected to trip it; else Maybe, as for a bolt that yields at each work peak. A missing fact bars a Yes; a
/// default nobody stated gives neither Yes nor No.
/// Stored energy passes a device that stands before it: such a part is guarded only by what lies between the two.
/// Hours of work in which nothing acted count for quiet beside the numbers (<see cref="BreakHistory"/>), never for guards.
/// A device that never lets go, such as a bolt on a seized hub, counts as none: No for each part that no other one guards.
/// </remarks>
public static class ProtectionCheck
{
    /// <summary>Runs the check with the default policy.</summary>
    public static ProtectionVerdict Run(ProtectionQuestion question) => Run(question, ProtectionPolicy.Default);

    /// <summary>Runs the check.</summary>
    public static ProtectionVerdict Run(ProtectionQuestion question, ProtectionPolicy policy)
    {
        Guard.NotNull(question, nameof(question));
        Guard.NotNull(policy, nameof(policy));
        ChainNode[] nodes = question.Chain.Nodes;
        Span<Reach> reach = nodes.Length <= GuardReach.MostOnStack ? stackalloc Reach[nodes.Length] : new Reach[nodes.Length];
        GuardReach.Find(nodes, reach);

        int partCount = 0;
        int deviceCount = 0;
        for (int k = 0; k < nodes.Length; k++)
        {
            partCount += nodes[k].Element is Part ? 1 : 0;
            deviceCount += nodes[k].Element is ProtectiveDevice ? 1 : 0;
        }

        var parts = new PartCheck[partCount];
        var devices = new DeviceCheck[deviceCount];
        int part = 0;
        int device = 0;
        for (int k = 0; k < nodes.Length; k++)
        {
            if (nodes[k].Part is { } asPart)
            {
                parts[part++] = new PartCheck(question.Chain, k, asPart,
                    Guards(asPart, in reach[k], nodes, deviceCount, question.PartsComplete, policy), in reach[k]);
            }
            else if (nodes[k].Device is { } asDevice)
            {
                Band? work = question.Work is { } peak ? nodes[k].FromPto(peak.Torque.SiBand) : null;
                devices[device++] = new DeviceCheck(
                    question.Chain, k, asDevice, Quiet(asDevice, work, question, deviceCount, policy), work, question.PeaksPerHour);
            }
        }

        return new ProtectionVerdict(question, policy, parts, devices);
    }

    private static Answer Guards(Part part, in Reach reach, ChainNode[] nodes, int devices, bool partsComplete, ProtectionPolicy policy)
    {
        if (devices == 0)
        {
            return partsComplete ? Answer.No : Answer.NotKnown;
        }

        if (reach is { HasUnknown: false, Device: >= 0 } && nodes[reach.Device].Device!.NeverLetsGo)
        {
            return Answer.No;
        }

        if (part.Limit is not { } limit)
        {
            return Answer.NotKnown;
        }

        Band damaged = limit.DamagedAt.SiBand;
        if (!reach.Band.HasExpected && reach.HasUnknown)
        {
            return Answer.NotKnown;
        }

        // What is known never to act passes every part, also one of which only the least is known. A device whose expected torque is
        // not known might act earlier: that bars a No, not the bound of a known one.
        if (reach.Band.Expected > damaged.Expected || !reach.Band.HasExpected)
        {
            return limit.IsAssumed || reach.MayActEarlier ? Answer.Maybe : Answer.No;
        }

        double leastNm = reach.Band.High * policy.MinimumGuardMargin;
        bool isBelow = damaged.Low > leastNm;
        bool isRated = limit.Rated is { } rated && Si.NewtonMeters(rated) > leastNm;   // its rating alone, without any factor
        bool isBarred = (limit.IsAssumed && !isRated) || reach.IsBarred || reach.RestsOnEfficiency || reach.PassesInertia;
        return isBelow && !isBarred ? Answer.Yes : Answer.Maybe;
    }

    private static Answer Quiet(
        ProtectiveDevice device, Band? workAtDevice, ProtectionQuestion question, int devices, ProtectionPolicy policy)
    {
        if (question.TripsInNormalWork == true && devices == 1)
        {
            return Answer.No;
        }

        if (device.Running is not { } running || workAtDevice is not { HasExpected: true } work)
        {
            return Answer.NotKnown;
        }

        Band trip = running.SiBand;
        bool isAssumed = question.Work!.IsAssumed;
        if (trip.Expected < work.Expected)
        {
            return isAssumed ? Answer.Maybe : Answer.No;
        }

        bool isAbove = trip.Low > work.High * policy.MinimumWorkMargin;
        bool isBarred = isAssumed || device.QuietBars.Count > 0 || device.BarsUnder(work.High).Count > 0;
        return isAbove && !isBarred ? Answer.Yes : Answer.Maybe;
    }
}
