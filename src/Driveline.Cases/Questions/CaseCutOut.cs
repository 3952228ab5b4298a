using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;

namespace Driveline.Cases.Questions;

/// <summary>A cut-out clutch of a case in its place. Without a date of the case no trip counts.</summary>
internal static class CaseCutOut
{
    private static readonly Basis FromCase = Basis.Given("the case");

    public static CutOutDevice Device(CaseObject facts, DateTime? day)
    {
        CutOutClutch clutch = facts.Get(CutOutMembers.Trip) is { } trip ? CutOutClutch.Of(facts.Get(CutOutMembers.Kind), trip)
            : CutOutClutch.Of(facts.Get(CutOutMembers.Kind));
        clutch = facts.Get(CutOutMembers.AfterTrip) is { } share ? clutch.WithAfterTrip(share) : clutch;
        clutch = facts.Get(CutOutMembers.ReengagesBelow) is { } speed ? clutch.WithReengagement(speed, FromCase) : clutch;
        CutOutDevice device = CutOutDevice.Of(facts.Get(CutOutMembers.Name) ?? "cut-out clutch", clutch).At(facts.Place);
        return day is { } today && facts.Get(CutOutMembers.LastTrip) is { } last
            ? device.WithLastTrip(last, facts.Get(CutOutMembers.LastStorage), today)
            : device;
    }
}
