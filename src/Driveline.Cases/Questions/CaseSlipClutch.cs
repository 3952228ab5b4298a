using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;

namespace Driveline.Cases.Questions;

/// <summary>A slip clutch as a case states it.</summary>
internal static class CaseSlipClutch
{
    private const string UsualName = "slip clutch";

    /// <summary>The fitted clutch; null, with an error, when its facts contradict each other.</summary>
    public static FittedClutch? Of(CaseObject facts, DateTime? day, List<CaseError> errors)
    {
        string name = facts.Get(SlipClutchMembers.Name) ?? UsualName;
        SpringPack? springs = CaseSprings.Of(facts.Get(SlipClutchMembers.Springs));
        if (springs is not null && facts.Get(SlipClutchMembers.NutTurns) is { } turns
            && facts.Si(SlipClutchMembers.ThreadPitch) is { } pitchM
            && DiscClutch.TurnsProblem(springs, turns, pitchM) is { } problem)
        {
            errors.Add(facts.Contradiction(SlipClutchMembers.NutTurns, problem));
            return null;
        }

        FittedClutch fitted = FittedClutch.Open(name, day).At(facts.Place)
            .WithSurface(facts.Get(SlipClutchMembers.Surface))
            .WithRunIn(facts.Get(SlipClutchMembers.RunIn))
            .WithClimate(facts.Get(SlipClutchMembers.Climate));
        fitted = ClutchOf(facts, springs) is { } clutch ? fitted.With(clutch) : fitted;
        fitted = facts.Get(SlipClutchMembers.StatedTorque) is { } stated ? fitted.WithStatedTorque(stated) : fitted;
        fitted = facts.Get(SlipClutchMembers.Wear) is { } wear ? fitted.WithWear(wear) : fitted;
        fitted = facts.Get(SlipClutchMembers.LastStorage) is not { } ended ? fitted
            : facts.Get(SlipClutchMembers.StoredMonths) is { } months ? fitted.WithStorage(ended, months)
            : fitted.WithStorage(ended);
        fitted = facts.Get(SlipClutchMembers.SlipTestResult) == SlipTestOutcome.DidNotSlip ? fitted.FoundStuck() : fitted;
        fitted = Test(facts) is { } test ? fitted.WithSlipTest(test) : fitted;
        fitted = facts.Get(SlipClutchMembers.ThreadPitch) is { } pitch ? fitted.WithThreadPitch(pitch) : fitted;
        fitted = facts.Get(SlipClutchMembers.PlateThickness) is { } plate ? fitted.WithPlateThickness(plate) : fitted;
        fitted = facts.Get(SlipClutchMembers.SlipsPerHour) is { } perHour ? fitted.WithSlipsInWork(perHour) : fitted;
        return (facts.Get(SlipClutchMembers.SlipTime) is { } time ? fitted.WithSlipTime(time) : fitted).Closed();
    }

    private static DiscClutch? ClutchOf(CaseObject facts, SpringPack? springs)
    {
        if (facts.Get(SlipClutchMembers.OuterDiameter) is not { } outer || facts.Get(SlipClutchMembers.InnerDiameter) is not { } inner
            || facts.Get(SlipClutchMembers.Faces) is not { } faces || springs is null)
        {
            return null;
        }

        DiscClutch clutch = DiscClutch.Of(outer, inner, faces, facts.Get(SlipClutchMembers.Facing) ?? Facings.NotKnown, springs);
        return facts.Get(SlipClutchMembers.SpringLength) is { } length ? clutch.WithSpringLength(length)
            : facts.Get(SlipClutchMembers.NutTurns) is { } turns && facts.Get(SlipClutchMembers.ThreadPitch) is { } pitch
                ? clutch.WithNutTurns(turns, pitch)
            : clutch;
    }

    private static SlipTest? Test(CaseObject facts) => facts.Get(SlipClutchMembers.LastSlipTest) is not { } day ? null : new SlipReading
    {
        Outcome = facts.Get(SlipClutchMembers.SlipTestResult),
        Torque = facts.Get(SlipClutchMembers.LeverTorque),
        Breakaway = facts.Get(SlipClutchMembers.BreakawayTorque),
        Force = facts.Get(SlipClutchMembers.LeverForce),
        BreakawayForce = facts.Get(SlipClutchMembers.BreakawayForce),
        Arm = facts.Get(SlipClutchMembers.LeverArm),
    }.On(day);
}
