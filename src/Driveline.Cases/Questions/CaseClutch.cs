using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>A slip clutch of a case: the clutch, its condition, its slip torque, and its place in the driveline.</summary>
/// <remarks>
/// A lever reading counts as a slip torque only when the test is told to have slipped; with didNotSlip it is what the clutch
/// withstood. Without a date of the case no test counts. Dry faces count as clean in work, which is damp and hot at times.
/// </remarks>
public sealed class CaseClutch
{
    private const string UsualName = "slip clutch";

    // Any day will do: without a date of the case nothing counts from it.
    private static readonly DateTime NoDay = new(1900, 1, 1);

    private static readonly Basis FromCase = Basis.Given("the case");

    private CaseClutch(CaseObject facts, DiscClutch? clutch, ClutchCondition condition, SlipClutchDevice device, RotationalSpeed? speed)
    {
        Facts = facts;
        Clutch = clutch;
        Condition = condition;
        Device = device;
        Speed = speed;
    }

    internal CaseObject Facts { get; }

    /// <summary>The clutch, perhaps without its spring length; null while its faces or springs are not all stated.</summary>
    public DiscClutch? Clutch { get; }

    /// <summary>Its condition on the date of the case.</summary>
    public ClutchCondition Condition { get; }

    /// <summary>It as a device of the driveline.</summary>
    public SlipClutchDevice Device { get; private init; }

    /// <summary>Speed at the clutch in work; null when the PTO speed or a ratio is not known.</summary>
    public RotationalSpeed? Speed { get; private init; }

    /// <summary>The clutches of a case, in order from the tractor; with every fact that contradicts another.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    /// <exception cref="ArgumentException">Facts contradict each other; <see cref="CaseQuestion"/> lists them.</exception>
    public static IReadOnlyList<CaseClutch> AllOf(CaseFile file)
    {
        if (file is null)
        {
            throw new ArgumentNullException(nameof(file));
        }

        var errors = new List<CaseError>();
        var clutches = new List<CaseClutch>();
        CaseChain.Of(file, errors, clutches);
        return errors.Count == 0 ? clutches : throw new ArgumentException("The case contradicts itself: " + errors[0], nameof(file));
    }

    /// <summary>The cautions that stand first for the machine of a case; none for most.</summary>
    public static IReadOnlyList<Caution> CautionsOfMachine(CaseFile file) =>
        VerdictCautions.First(CaseQuestion.MachineOf(Guard.NotNull(file, nameof(file))));

    /// <summary>What the clutch is and does now.</summary>
    public ClutchReview Review()
    {
        ClutchReview review = ClutchReview.Of(Device);
        if (Speed is not { } speed || Device.Running is not { Expected: { } expected } running)
        {
            return review;
        }

        SlipEvent blocked = SlipEvent.Blocked(expected, speed);
        return ClutchHeat.PathOf(Facts, Clutch) is { } path
            ? review.WithBlockedSlip(
                blocked, SlipHeat.Of(SlipEvent.Blocked(running.High ?? expected, speed), path, Clutch!.Facing, ClutchHeat.Air))
            : review.WithBlockedSlip(blocked);
    }

    /// <summary>How to set it for a wanted slip torque, and what it is and does then.</summary>
    /// <param name="wanted">Expected torque while it slips; above 0.</param>
    /// <exception cref="InvalidOperationException">The faces and springs of the clutch are not all stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is zero, negative or not finite.</exception>
    public ClutchReview ReviewSetTo(Torque wanted)
    {
        DiscClutch clutch = Clutch?.CalibratedBy(Condition) ?? throw new InvalidOperationException(
            "To set a clutch, its outerDiameter, innerDiameter, faces and springs must be known; state them.");

        // A test before the nuts were turned is none of the clutch as set.
        ClutchCondition fresh = ConditionOf(Facts, null, false).WithWear(LengthBand.Exactly(Length.Zero, FromCase));
        ClutchSetting setting = Facts.Get(SlipClutchMembers.ThreadPitch) is { } pitch ? ClutchSetting.For(clutch, wanted, fresh, pitch)
            : ClutchSetting.For(clutch, wanted, fresh);
        if (setting.Predicted is not { } predicted)
        {
            return ClutchReview.Of(Device).WithSetting(setting);
        }

        CaseClutch set = new(Facts, setting.Clutch, fresh, SlipClutchDevice.Of(Device.Name, predicted), Speed);
        return set.With(ClutchHeat.Slips(set, Speed), Speed).Review().WithSetting(setting);
    }

    /// <summary>The clutch that the facts describe, its heat left out; null, with an error, when they contradict each other.</summary>
    internal static CaseClutch? Of(CaseObject facts, DateTime? day, List<CaseError> errors)
    {
        SpringPack? springs = CaseSprings.Of(facts.Get(SlipClutchMembers.Springs));
        if (springs is not null && facts.Get(SlipClutchMembers.NutTurns) is { } turns
            && facts.Si(SlipClutchMembers.ThreadPitch) is { } pitchM
            && DiscClutch.TurnsProblem(springs, turns, pitchM) is { } problem)
        {
            errors.Add(facts.Contradiction(SlipClutchMembers.NutTurns, problem));
            return null;
        }

        DiscClutch? clutch = ClutchOf(facts, springs);
        ClutchCondition condition = ConditionOf(facts, day, true);
        SlipTorque torque = TorqueOf(facts, clutch, condition);
        SlipClutchDevice device = SlipClutchDevice.Of(facts.Get(SlipClutchMembers.Name) ?? UsualName, torque);
        device = GoodOrder(clutch, condition) is { } good ? device.WithGoodOrder(good) : device;
        return new CaseClutch(facts, clutch, condition, day is null ? device.Undated() : device, null);
    }

    internal CaseClutch With(SlipClutchDevice device, RotationalSpeed? speed) => new(Facts, Clutch, Condition, device, speed);

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

    private static ClutchCondition ConditionOf(CaseObject facts, DateTime? day, bool withTest)
    {
        ClutchCondition condition = ClutchCondition.AsOf(day ?? Later(facts))
            .WithRunIn(facts.Get(SlipClutchMembers.RunIn))
            .WithSurface(
                facts.Get(SlipClutchMembers.Surface) == SurfaceState.Dry ? SurfaceState.CleanInWork : facts.Get(SlipClutchMembers.Surface))
            .WithClimate(facts.Get(SlipClutchMembers.Climate));
        condition = facts.Get(SlipClutchMembers.Wear) is { } wear ? condition.WithWear(wear) : condition;
        if (facts.Get(SlipClutchMembers.LastStorage) is { } ended && (day is not null || ended > facts.Get(SlipClutchMembers.LastSlipTest)))
        {
            condition = facts.Get(SlipClutchMembers.StoredMonths) is { } months ? condition.WithStorage(ended, months)
                : condition.WithStorage(ended);
        }

        if (!withTest)
        {
            return condition;
        }

        if (facts.Get(SlipClutchMembers.SlipTestResult) == SlipTestOutcome.DidNotSlip)
        {
            condition = condition.Stuck();
        }

        return Test(facts) is { } test ? condition.WithSlipTest(test) : condition;
    }

    // A day after everything told, so that no test is of that day.
    private static DateTime Later(CaseObject facts)
    {
        DateTime test = facts.Get(SlipClutchMembers.LastSlipTest) ?? NoDay;
        DateTime storage = facts.Get(SlipClutchMembers.LastStorage) ?? NoDay;
        return (test > storage ? test : storage).AddDays(1);
    }

    private static SlipTest? Test(CaseObject facts)
    {
        if (facts.Get(SlipClutchMembers.LastSlipTest) is not { } day)
        {
            return null;
        }

        Torque? byLever = facts.Get(SlipClutchMembers.LeverForce) is { } force && facts.Get(SlipClutchMembers.LeverArm) is { } arm
            ? Torque.FromNewtonMeters(Quantities.Si.Newtons(force) * Quantities.Si.Meters(arm))
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

    private static SlipTorque TorqueOf(CaseObject facts, DiscClutch? clutch, ClutchCondition condition)
    {
        bool isMeasured = condition.LastSlipTest?.Running is not null;
        return clutch?.SpringLength is not null ? SlipTorque.Of(clutch, condition)
            : isMeasured ? SlipTorque.OfMeasured(condition)
            : facts.Get(SlipClutchMembers.StatedTorque) is { } stated ? SlipTorque.OfStated(stated, condition)
            : clutch is not null ? SlipTorque.Of(clutch, condition)
            : SlipTorque.NotKnown(condition);
    }

    private static TorqueBand? GoodOrder(DiscClutch? clutch, ClutchCondition condition)
    {
        if (condition.LastSlipTest?.Running is { } measured)
        {
            return measured;
        }

        if (clutch?.SpringLength is null)
        {
            return null;
        }

        ClutchCondition clean = ClutchCondition.AsOf(condition.Day).WithSurface(SurfaceState.Dry).WithRunIn(condition.RunIn);
        return SlipTorque.Of(clutch, condition.Wear is { } wear ? clean.WithWear(wear) : clean).Running;
    }
}
