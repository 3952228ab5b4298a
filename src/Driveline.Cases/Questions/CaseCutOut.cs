using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;

namespace Driveline.Cases.Questions;

/// <summary>A cut-out clutch of a case in its place. A trip counts like a slip test: dated, and since the last storage.</summary>
internal static class CaseCutOut
{
    private static readonly Basis FromCase = Basis.Given("the case");

    public static CutOutDevice Device(CaseObject facts, DateTime? day)
    {
        CutOutClutch clutch = facts.Get(CutOutMembers.Trip) is { } trip ? CutOutClutch.Of(facts.Get(CutOutMembers.Kind), trip)
            : CutOutClutch.Of(facts.Get(CutOutMembers.Kind));
        clutch = facts.Get(CutOutMembers.AfterTrip) is { } share ? clutch.WithAfterTrip(share) : clutch;
        clutch = facts.Get(CutOutMembers.ReengagesBelow) is { } speed ? clutch.WithReengagement(speed, FromCase) : clutch;
        CutOutDevice device = CutOutDevice.Of(facts.Get(CutOutMembers.Name) ?? "cut-out clutch", clutch);
        if (day is not { } today || facts.Get(CutOutMembers.LastTrip) is not { } last)
        {
            return device;
        }

        ClutchCondition condition = ClutchCondition.AsOf(today).WithSlipTest(SlipTest.Slipped(last));
        return device.With(facts.Get(CutOutMembers.LastStorage) is { } ended ? condition.WithStorage(ended) : condition);
    }
}
