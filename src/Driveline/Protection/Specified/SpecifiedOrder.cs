using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>Whether a fitted device is in working order, so far as somebody has looked.</summary>
internal static class SpecifiedOrder
{
    /// <summary>Facts that margins need, and working order does not.</summary>
    private static readonly HashSet<string> OfMargins = new(StringComparer.Ordinal)
    {
        ShearBoltFindings.NoAssuredMaximum,
        ShearBoltFindings.SpringPinNoMaximum,
        ShearBoltFindings.HoleFitNotKnown,
        DeviceFindings.ShaftAtCrossHoleNotKnown,
        DeviceFindings.SlipTorqueNotMeasured,
        DeviceFindings.ClutchNotDescribed,
        DeviceFindings.FacingNotKnown,
        DeviceFindings.SlipsPerHourNotKnown,
        DeviceFindings.SlipHeatNotKnown,
        ClutchFindings.WearNotKnown,
        ClutchFindings.SpringLengthNotKnown,
    };

    private static readonly HashSet<string> OfHubAndHoles = new(StringComparer.Ordinal)
    {
        ShearBoltFindings.HubSeized,
        ShearBoltFindings.HubStiff,
        ShearBoltFindings.HubFreedomNotKnown,
        ShearBoltFindings.HubFreedomTooOld,
        ShearBoltFindings.HolesWorn,
        ShearBoltFindings.HoleWornAroundBolt,
    };

    public static void Add(ProtectiveDevice device, List<Finding> speaksFor, List<Finding> against, List<Finding> open)
    {
        IReadOnlyList<Finding> own = device.Findings;
        for (int k = 0; k < own.Count; k++)
        {
            if (own[k].IsBarring(Bars.Both) && !OfMargins.Contains(own[k].Code))
            {
                (MissingFacts.Is(own[k]) ? open : against).Add(own[k]);
            }
        }

        for (int k = 0; k < own.Count; k++)
        {
            if (own[k].Code is ClutchFindings.Oiled or ClutchFindings.Glazed or ShearBoltFindings.HolesWorn)
            {
                against.Add(own[k]);
            }
        }

        switch (device)
        {
            case ShearBoltDevice bolt:
                OfBolt(bolt, speaksFor, open);
                break;
            case StatedDevice { AsIfLaidOut: { } laid }:
                OfUnlaid(laid, speaksFor, against, open);
                break;
            case SlipClutchDevice clutch when clutch.SlipTorque.Condition.MayBeTrustedToSlip:
                speaksFor.Add(Finding.Named(SpecifiedFindings.SlipTested, Severity.Note, device.Name));
                break;
            case SlipClutchDevice or CutOutDevice:
                break;
            default:
                open.Add(Finding.Named(SpecifiedFindings.OrderNotKnown, Severity.Note, device.Name).BarringNothing()
                    .WithSettledBy(device.Kind == DeviceKind.ShearBolt ? Measurements.HubTurn : Measurements.SlipTest));
                break;
        }
    }

    // Of a bolt whose layout nobody knows: what hub and holes show.
    private static void OfUnlaid(ShearBoltDevice laid, List<Finding> speaksFor, List<Finding> against, List<Finding> open)
    {
        foreach (Finding finding in laid.Findings.Where(f => OfHubAndHoles.Contains(f.Code)))
        {
            (MissingFacts.Is(finding) ? open : against).Add(finding);
        }

        OfBolt(laid, speaksFor, open);
    }

    private static void OfBolt(ShearBoltDevice bolt, List<Finding> speaksFor, List<Finding> open)
    {
        ShearBoltJoint joint = bolt.BreakTorque.Joint;
        if (joint is { Hub: HubState.Free, IsHubSeenTooLongAgo: false })
        {
            speaksFor.Add(Finding.Named(SpecifiedFindings.HubTurns, Severity.Note, bolt.Name));
        }

        if (joint.HoleFit == HoleFit.Tight)
        {
            speaksFor.Add(Finding.Named(SpecifiedFindings.HolesRound, Severity.Note, bolt.Name));
        }
        else if (joint.HoleFit == HoleFit.NotKnown)
        {
            open.Add(Finding.Named(SpecifiedFindings.HolesNotKnown, Severity.Note, bolt.Name).BarringNothing()
                .WithSettledBy(Measurements.HoleFit));
        }
    }
}
