using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Pto;

namespace Driveline.Cases.Questions;

/// <summary>Answers to the advice's questions that the rest of a case gives already, so that nobody is asked twice.</summary>
internal static class SeenFacts
{
    /// <summary>Every answer that the case gives outside its complaint.</summary>
    public static IEnumerable<Fact> Of(CaseFile file, ProtectionQuestion? question, DeckReading? deck)
    {
        Fact?[] seen =
        [
            Device(file, question), .. OfBolt(file), .. AgainstManual(question), Manner(file), PtoClutch(file),
                Joint(file), BetweenBreaks(file), Jams(file), Struck(file), .. OfClutch(question),
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

    private static IReadOnlyList<Fact> OfBolt(CaseFile file) =>
        FirstBolt(file) is { } bolt ? SeenBolt.Of(BoltFacts.Fitted(bolt, file.Date)) : [];

    // Of several clutches nobody knows which is meant.
    private static IReadOnlyList<Fact> OfClutch(ProtectionQuestion? question)
    {
        SlipClutchDevice[] clutches = [.. question?.Chain.Devices.OfType<SlipClutchDevice>() ?? []];
        return clutches.Length == 1 ? SeenClutch.Of(clutches[0]) : [];
    }

    private static IReadOnlyList<Fact> AgainstManual(ProtectionQuestion? question) =>
        question?.Chain.Devices.OfType<ShearBoltDevice>()
            .FirstOrDefault(d => question.SpecifiedFor(d) is ShearBoltDevice) is { } device
        && question.SpecifiedFor(device) is ShearBoltDevice specified
            ? SeenBolt.AgainstManual(device.BreakTorque.Joint.Bolt, specified.BreakTorque.Joint.Bolt)
            : [];

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

    // Counted hours and breaks are the answer to how many hours lie between two.
    private static Fact? BetweenBreaks(CaseFile file) =>
        HistoryMembers.HistoryOf(file.Facts.Get(CaseFileMembers.History)) is { Breaks: > 0 } history
            ? ComplaintMembers.Facts["hoursBetweenBreaks"].FactOf(history.Hours / history.Breaks)
            : null;

    // Augers in the ground and snow blowers jam as they work.
    private static Fact? Jams(CaseFile file) => CaseQuestion.MachineOf(file) is MachineKind.PostHoleAuger or MachineKind.SnowBlower
        ? OwnerFacts.Jams.PartOfTheWork
        : null;
}
