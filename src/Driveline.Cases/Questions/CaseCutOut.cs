using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;

namespace Driveline.Cases.Questions;

/// <summary>A cut-out clutch of a case in its place. A trip counts like a slip test: dated, and since the last storage.</summary>
internal static class CaseCutOut
{
    private static readonly Basis FromCase = Basis.Given("the case");

    public static CutOutDevice Device(CutOutFacts facts, DateTime? day)
    {
        CutOutClutch clutch = facts.Trip is { } trip ? CutOutClutch.Of(facts.Kind, trip) : CutOutClutch.Of(facts.Kind);
        clutch = facts.AfterTrip is { } share ? clutch.WithAfterTrip(share) : clutch;
        clutch = facts.ReengagesBelow is { } speed ? clutch.WithReengagement(speed, FromCase) : clutch;
        CutOutDevice device = CutOutDevice.Of(facts.Name ?? "cut-out clutch", clutch);
        if (day is not { } today || facts.LastTrip is not { } last)
        {
            return device;
        }

        ClutchCondition condition = ClutchCondition.AsOf(today).WithSlipTest(SlipTest.Slipped(last));
        return device.With(facts.LastStorage is { } ended ? condition.WithStorage(ended) : condition);
    }
}
