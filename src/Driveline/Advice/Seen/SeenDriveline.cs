using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Pto;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>Answers to the questions of an advice that the driveline, its work and its machine give.</summary>
internal static class SeenDriveline
{
    /// <summary>
    /// The kind of device, when all are of one kind; no device only when every part is listed. A bolt may be listed that is not identified.
    /// </summary>
    public static Fact? Device(ProtectionQuestion question, bool listsBolt)
    {
        var kinds = new HashSet<DeviceKind>(question.Chain.Devices.Select(d => d.Kind).Where(k => k != DeviceKind.NotKnown));
        if (listsBolt)
        {
            kinds.Add(DeviceKind.ShearBolt);
        }

        return kinds.Count > 1 || (kinds.Count == 0 && (question.Chain.Devices.Count > 0 || !question.PartsComplete)) ? null
            : kinds.SingleOrDefault() switch
            {
                DeviceKind.ShearBolt => OwnerFacts.Device.ShearBolt,
                DeviceKind.SlipClutch => OwnerFacts.Device.SlipClutch,
                DeviceKind.CutOut => OwnerFacts.Device.CutOut,
                _ => OwnerFacts.Device.None,
            };
    }

    /// <summary>What is seen of the bolts: of several only what holds of each, since nobody knows which is meant.</summary>
    public static IReadOnlyList<Fact> OfBolts(IReadOnlyList<FittedBolt> bolts) => bolts.Count == 0 ? []
        : [.. bolts.Select(SeenBolt.Of).Aggregate((all, next) => [.. all.Where(next.Contains)])];

    /// <summary>How the fitted bolts compare with the manual's: of several only what holds of each.</summary>
    public static IReadOnlyList<Fact> AgainstManual(ProtectionQuestion question)
    {
        IReadOnlyList<Fact>[] each =
        [
            .. question.Chain.Devices.OfType<ShearBoltDevice>().Select(d => question.SpecifiedFor(d) is ShearBoltDevice specified
                ? SeenBolt.AgainstManual(d.BreakTorque.Joint.Bolt, specified.BreakTorque.Joint.Bolt) : []),
        ];
        return each.Length == 0 ? [] : each.Aggregate((all, next) => [.. all.Where(next.Contains)]);
    }

    /// <summary>What is seen of the slip clutch; of several nobody knows which is meant.</summary>
    public static IReadOnlyList<Fact> OfClutch(ProtectionQuestion question)
    {
        SlipClutchDevice[] clutches = [.. question.Chain.Devices.OfType<SlipClutchDevice>()];
        return clutches.Length == 1 ? SeenClutch.Of(clutches[0]) : [];
    }

    /// <summary>Large: one is above what the strictest source allows for continuous work.</summary>
    public static Fact? Joint(IReadOnlyList<Angle> angles) => angles.Count == 0 ? null
        : angles.Any(a => UniversalJoint.At(a).CheckContinuousWork().Count > 0) ? OwnerFacts.JointAngleInWork.Large
        : OwnerFacts.JointAngleInWork.Small;

    public static Fact? Manner(EngagementManner manner) => manner switch
    {
        EngagementManner.Gentle => OwnerFacts.EngagementManner.Slowly,
        EngagementManner.Abrupt => OwnerFacts.EngagementManner.Abruptly,
        _ => null,
    };

    public static Fact? PtoClutch(PtoClutchKind kind) => kind switch
    {
        PtoClutchKind.HandLever => OwnerFacts.PtoClutch.HandLever,
        PtoClutchKind.Hydraulic => OwnerFacts.PtoClutch.Hydraulic,
        PtoClutchKind.Electric => OwnerFacts.PtoClutch.Electric,
        PtoClutchKind.None => OwnerFacts.PtoClutch.None,
        _ => null,
    };

    public static Fact? Struck(StrikePlace place) => place switch
    {
        StrikePlace.Blade => OwnerFacts.WhatStruck.Blade,
        StrikePlace.Pan => OwnerFacts.WhatStruck.Pan,
        StrikePlace.Deck => OwnerFacts.WhatStruck.Deck,
        _ => null,
    };

    /// <summary>Augers in the ground and snow blowers jam as they work.</summary>
    public static Fact? Jams(MachineKind machine) => machine is MachineKind.PostHoleAuger or MachineKind.SnowBlower
        ? OwnerFacts.Jams.PartOfTheWork
        : null;
}
