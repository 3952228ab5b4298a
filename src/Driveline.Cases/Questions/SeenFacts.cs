using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Protection;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>Answers to the advice's questions that the rest of a case gives already, so that nobody is asked twice.</summary>
internal static class SeenFacts
{
    /// <summary>Every answer that the case gives outside its complaint.</summary>
    public static IEnumerable<Fact> Of(CaseFile file, ProtectionQuestion? question, DeckReading? deck)
    {
        CaseObject facts = file.Facts;
        FittedBolt[] bolts =
        [
            .. CaseElements.All(facts.Get(CaseFileMembers.Driveline), ElementMembers.ShearBolt).Select(b => BoltFacts.Fitted(b, file.Date)),
        ];
        Fact?[] seen =
        [
            question is null || facts.Get(CaseFileMembers.Driveline).Count == 0 ? null : SeenDriveline.Device(question, bolts.Length > 0),
            .. SeenDriveline.OfBolts(bolts),
            .. question is null ? [] : SeenDriveline.AgainstManual(question),
            SeenDriveline.Manner(
                facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.Engagement)?.Get(EngagementMembers.Manner) ?? default),
            SeenDriveline.PtoClutch(
                facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoClutch)?.Get(PtoClutchMembers.Kind) ?? default),
            SeenDriveline.Joint(
                [.. facts.Get(CaseFileMembers.Driveline).Select(e => e.Get(ElementMembers.Angle)).OfType<Angle>()]),
            BetweenBreaks(file),
            SeenDriveline.Jams(CaseQuestion.MachineOf(file)),
            SeenDriveline.Struck(facts.Get(CaseFileMembers.Strike)?.Get(StrikeMembers.What) ?? default),
            .. question is null ? [] : SeenDriveline.OfClutch(question),
            deck?.AttitudeFact,
            deck?.HeightFact,
        ];
        return seen.OfType<Fact>();
    }

    // Counted hours and breaks are the answer to how many hours lie between two.
    private static Fact? BetweenBreaks(CaseFile file) =>
        HistoryMembers.HistoryOf(file.Facts.Get(CaseFileMembers.History)) is { Breaks: > 0 } history
            ? ComplaintMembers.Facts["hoursBetweenBreaks"].FactOf(history.Hours / history.Breaks)
            : null;
}
