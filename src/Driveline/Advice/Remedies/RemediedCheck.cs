using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>Runs the check again with a remedy done, where the remedy changes something the model knows.</summary>
internal static class RemediedCheck
{
    /// <summary>The verdict with the remedy done; null when it changes nothing the model knows.</summary>
    public static ProtectionVerdict? Of(string remedy, ProtectionVerdict verdict) => remedy switch
    {
        Remedies.SpecifiedBolt => Specified(verdict),
        Remedies.ShankInPlane =>
            Joint(verdict, j => j.Bolt.PlaneThrough == PlaneThrough.Thread ? j.With(j.Bolt.With(PlaneThrough.Shank)) : null),
        Remedies.FreeHub => Joint(verdict, j => j.Hub == HubState.Free && !j.IsHubSeenTooLongAgo ? null : Freed(j)),
        Remedies.TrueHoles => Joint(verdict, j => j.HoleFit == HoleFit.Worn || j.StandOff is not null || j.IsLooseInHole
            ? j.WithTrueHole().WithHoleFit(HoleFit.Tight).WithStandOff(Length.Zero)
            : null),
        Remedies.EngageGently => Gentle(verdict),
        Remedies.SlipAndReset => Clutch(verdict, RemediedClutch.Freed),
        Remedies.SetSpringsAsManual or Remedies.LoosenSpringsToManual or Remedies.RightSprings =>
            Clutch(verdict, RemediedClutch.SetAsManual),
        Remedies.StrongerBolt => verdict.NeighbourGrades.FirstOrDefault(n => n.IsStronger)?.Verdict,
        _ => null,
    };

    private static ProtectionVerdict? Specified(ProtectionVerdict verdict)
    {
        FittedAgainstSpecified[] named = [.. verdict.Comparisons.Where(c => c.Specified is not null)];
        if (named.Length == 0)
        {
            return null;
        }

        // The bolt that differs from its own; without one the first that is named.
        FittedAgainstSpecified first = named.OrderBy(c => c.Device!.Kind == DeviceKind.ShearBolt ? 0 : 1)
            .ThenBy(c => c.Answer == FittedComparison.Same ? 1 : 0).First();
        return With(verdict, first.Device!, first.Specified!);
    }

    private static ProtectionVerdict? Joint(ProtectionVerdict verdict, Func<ShearBoltJoint, ShearBoltJoint?> mend) =>
        verdict.Devices.Select(d => d.Device).OfType<ShearBoltDevice>().FirstOrDefault() is { } fitted
            && mend(fitted.BreakTorque.Joint) is { } mended
            ? With(verdict, fitted, fitted.With(mended))
            : null;

    private static ProtectionVerdict? Clutch(ProtectionVerdict verdict, Func<SlipClutchDevice, ProtectionQuestion, SlipTorque?> mend) =>
        verdict.Devices.Select(d => d.Device).OfType<SlipClutchDevice>().FirstOrDefault() is { } fitted
            && mend(fitted, verdict.Question) is { } mended
            ? With(verdict, fitted, SlipClutchDevice.Of(fitted.Name, mended))
            : null;

    // A drag that was measured before the hub was freed is gone with it.
    private static ShearBoltJoint Freed(ShearBoltJoint joint) => joint.HubFriction is null
        ? joint.WithHub(HubState.Free)
        : joint.WithHub(HubState.Free)
            .WithHubFriction(TorqueBand.Exactly(Torque.Zero, Basis.Given("the hub freed until it turns by hand")));

    // Trips that were seen in work were seen with the old device.
    private static ProtectionVerdict With(ProtectionVerdict verdict, ProtectiveDevice fitted, ProtectiveDevice other) =>
        ProtectionCheck.Run(
        verdict.Question.WithChain(verdict.Question.Chain.With(fitted, other)).WithTripsInNormalWork(null), verdict.Policy);

    private static ProtectionVerdict? Gentle(ProtectionVerdict verdict)
    {
        Engagement engagement = verdict.Question.Engagement;
        return engagement.Manner == EngagementManner.Gentle ? null
            : ProtectionCheck.Run(verdict.Question.WithEngagement(Gentle(engagement)), verdict.Policy);
    }

    // A peak that was measured or simulated as it is engaged now says nothing of a gentle one.
    private static Engagement Gentle(Engagement now)
    {
        Engagement gentle = Engagement.Through(now.Clutch).WithManner(EngagementManner.Gentle);
        gentle = now.Capacity is { } capacity ? gentle.WithCapacity(capacity) : gentle;
        return now.PeakAtMost is { } bound ? gentle.WithPeakAtMost(bound) : gentle;
    }
}
