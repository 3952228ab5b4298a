using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Pto;
using Driveline.ShearBolts;

namespace Driveline.Cases.Questions;

/// <summary>Answers to the advice's questions that the rest of a case gives already, so that nobody is asked twice.</summary>
internal static class SeenFacts
{
    private const double SizeTolerance = 0.02;
    private const double GradeTolerance = 0.1;

    /// <summary>Expected tensile strength below which a manual's grade is a low one, which bolts without marks usually are.</summary>
    private const double LowGradePa = 700e6;

    /// <summary>Every answer that the case gives outside its complaint.</summary>
    public static IEnumerable<Fact> Of(CaseFile file, ProtectionQuestion? question, DeckReading? deck)
    {
        Fact?[] seen =
        [
            Device(file, question), .. OfBolt(FirstBolt(file), file.Date), .. AgainstManual(question), Manner(file), PtoClutch(file),
                Joint(file), Jams(file), Struck(file), .. SeenClutchFacts.Of(file, question),
            deck?.AttitudeFact, deck?.HeightFact,
        ];
        return seen.OfType<Fact>();
    }

    private static Fact? Device(CaseFile file, ProtectionQuestion? question)
    {
        if (file.Facts.Get(CaseFileMembers.Driveline).Count == 0 || question is null)
        {
            return null;
        }

        var kinds = new HashSet<DeviceKind>(question.Chain.Devices.Select(d => d.Kind).Where(k => k != DeviceKind.NotKnown));
        if (FirstBolt(file) is not null)
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

    private static CaseObject? FirstBolt(CaseFile file) =>
        CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline), ElementMembers.ShearBolt).FirstOrDefault();

    private static IEnumerable<Fact?> OfBolt(CaseObject? bolt, DateTime? today)
    {
        if (bolt is null)
        {
            yield break;
        }

        yield return bolt.Get(ShearBoltMembers.Hub) switch
        {
            HubState.Free => OwnerFacts.HubTurns.Freely,
            HubState.Stiff => OwnerFacts.HubTurns.Stiffly,
            HubState.Seized => OwnerFacts.HubTurns.NotAtAll,
            _ => null,
        };
        yield return bolt.Get(ShearBoltMembers.PlaneThrough) switch
        {
            PlaneThrough.Shank => OwnerFacts.PlaneThrough.Shank,
            PlaneThrough.Thread => OwnerFacts.PlaneThrough.Thread,
            _ => null,
        };
        yield return bolt.Get(ShearBoltMembers.StandOff) is { Meters: > 0 } ? OwnerFacts.Holes.StandApart
            : bolt.Get(ShearBoltMembers.HoleFit) == HoleFit.Worn ? OwnerFacts.Holes.Oval
            : bolt.Get(ShearBoltMembers.HoleFit) == HoleFit.Tight ? OwnerFacts.Holes.Round
            : null;
        if (bolt.Get(ShearBoltMembers.LastTrip) is { } trip && today is { } day)
        {
            double days = (day - trip).TotalDays;
            yield return days <= 31 ? OwnerFacts.LastTrip.ThisMonth
                : days <= 366 ? OwnerFacts.LastTrip.ThisYear : OwnerFacts.LastTrip.LongerAgo;
        }
    }

    private static IEnumerable<Fact?> AgainstManual(ProtectionQuestion? question)
    {
        if (question?.Chain.Devices.OfType<ShearBoltDevice>()
            .FirstOrDefault(d => question.SpecifiedFor(d) is ShearBoltDevice) is not { } device
            || question.SpecifiedFor(device) is not ShearBoltDevice specified)
        {
            yield break;
        }

        ShearBolt fitted = device.BreakTorque.Joint.Bolt;
        ShearBolt manual = specified.BreakTorque.Joint.Bolt;
        yield return Grade(fitted.Material, manual.Material);
        double ratio = Narrowest(fitted) / Narrowest(manual);
        yield return ratio < 1 - SizeTolerance ? OwnerFacts.BoltSize.Smaller
            : ratio > 1 + SizeTolerance ? OwnerFacts.BoltSize.Larger
            : OwnerFacts.BoltSize.AsManual;
    }

    private static Fact? Grade(FastenerMaterial fitted, FastenerMaterial manual)
    {
        if (fitted.Tensile is not { HasExpected: true } seen || manual.Tensile is not { HasExpected: true } wanted || !manual.IsIdentified)
        {
            return null;
        }

        if (!fitted.IsIdentified)
        {
            bool isUnmarked = fitted.Equals(FastenerMaterial.UnmarkedInchBolt) || fitted.Equals(FastenerMaterial.UnmarkedMetricBolt);
            return !isUnmarked ? null
                : GradeFacts.Compare(BoltMark.NoMark, wanted.SiBand.Expected < LowGradePa ? BoltMark.Low : BoltMark.Medium);
        }

        double ratio = seen.SiBand.Expected / wanted.SiBand.Expected;
        return ratio < 1 - GradeTolerance ? OwnerFacts.GradeAgainstManual.Softer
            : ratio > 1 + GradeTolerance ? OwnerFacts.GradeAgainstManual.Stronger
            : OwnerFacts.GradeAgainstManual.Same;
    }

    private static double Narrowest(ShearBolt bolt) => (bolt.NeckDiameter ?? bolt.Diameter).Meters;

    private static Fact? Manner(CaseFile file) =>
        file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.Engagement)?.Get(EngagementMembers.Manner) switch
        {
            EngagementManner.Gentle => OwnerFacts.EngagementManner.Slowly,
            EngagementManner.Abrupt => OwnerFacts.EngagementManner.Abruptly,
            _ => null,
        };

    private static Fact? PtoClutch(CaseFile file) =>
        file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoClutch)?.Get(PtoClutchMembers.Kind) switch
        {
            PtoClutchKind.HandLever => OwnerFacts.PtoClutch.HandLever,
            PtoClutchKind.Hydraulic => OwnerFacts.PtoClutch.Hydraulic,
            PtoClutchKind.Electric => OwnerFacts.PtoClutch.Electric,
            PtoClutchKind.None => OwnerFacts.PtoClutch.None,
            _ => null,
        };

    // Large: above what the strictest source allows for continuous work.
    private static Fact? Joint(CaseFile file)
    {
        UnitsNet.Angle[] angles =
            [.. file.Facts.Get(CaseFileMembers.Driveline).Select(e => e.Get(ElementMembers.Angle)).OfType<UnitsNet.Angle>()];
        return angles.Length == 0 ? null
            : Array.Exists(angles, a => UniversalJoint.At(a).CheckContinuousWork().Count > 0) ? OwnerFacts.JointAngleInWork.Large
            : OwnerFacts.JointAngleInWork.Small;
    }

    private static Fact? Struck(CaseFile file) => file.Facts.Get(CaseFileMembers.Strike)?.Get(StrikeMembers.What) switch
    {
        StrikePlace.Blade => OwnerFacts.WhatStruck.Blade,
        StrikePlace.Pan => OwnerFacts.WhatStruck.Pan,
        StrikePlace.Deck => OwnerFacts.WhatStruck.Deck,
        _ => null,
    };

    // Augers in the ground and snow blowers jam as they work.
    private static Fact? Jams(CaseFile file) => CaseQuestion.MachineOf(file) is MachineKind.PostHoleAuger or MachineKind.SnowBlower
        ? OwnerFacts.Jams.PartOfTheWork
        : null;
}
