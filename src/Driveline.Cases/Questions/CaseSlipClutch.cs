using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>A slip clutch as a case states it.</summary>
/// <remarks>A lever reading is one of a slip only when the test is told to have slipped; with didNotSlip it is what it withstood.</remarks>
internal static class CaseSlipClutch
{
    private const string UsualName = "slip clutch";

    private static readonly Basis FromCase = Basis.Given("the case");

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

        FittedClutch fitted = (day is { } today ? FittedClutch.AsOf(name, today) : FittedClutch.Undated(name))
            .At(facts.Place)
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
        return facts.Get(SlipClutchMembers.SlipTime) is { } time ? fitted.WithSlipTime(time) : fitted;
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

    private static SlipTest? Test(CaseObject facts)
    {
        if (facts.Get(SlipClutchMembers.LastSlipTest) is not { } day)
        {
            return null;
        }

        Torque? byLever = facts.Get(SlipClutchMembers.LeverForce) is { } force && facts.Get(SlipClutchMembers.LeverArm) is { } arm
            ? Torque.FromNewtonMeters(Si.Newtons(force) * Si.Meters(arm))
            : null;
        return facts.Get(SlipClutchMembers.SlipTestResult) switch
        {
            SlipTestOutcome.Slipped when facts.Get(SlipClutchMembers.LeverTorque) is { } torque =>
                facts.Get(SlipClutchMembers.BreakawayTorque) is { } first ? SlipTest.Measured(day, torque).WithBreakaway(first)
                    : SlipTest.Measured(day, torque),
            SlipTestOutcome.Slipped when byLever is not null && facts.Get(SlipClutchMembers.BreakawayForce) is { } start => SlipTest.Lever(
                day, start, facts.Get(SlipClutchMembers.LeverForce)!.Value, facts.Get(SlipClutchMembers.LeverArm)!.Value),
            SlipTestOutcome.Slipped when byLever is not null =>
                SlipTest.Lever(day, facts.Get(SlipClutchMembers.LeverForce)!.Value, facts.Get(SlipClutchMembers.LeverArm)!.Value),
            SlipTestOutcome.Slipped => SlipTest.Slipped(day),
            SlipTestOutcome.DidNotSlip when facts.Get(SlipClutchMembers.LeverTorque) is { } withstood =>
                SlipTest.DidNotSlip(day, withstood),
            SlipTestOutcome.DidNotSlip when byLever is { } held => SlipTest.DidNotSlip(day, TorqueBand.Exactly(held, FromCase)),
            SlipTestOutcome.DidNotSlip => SlipTest.DidNotSlip(day),
            _ => SlipTest.NotRecorded(day),
        };
    }
}
