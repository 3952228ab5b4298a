using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Loads;
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

    private CaseClutch(SlipClutchFacts facts, DiscClutch? clutch, ClutchCondition condition, SlipClutchDevice device, RotationalSpeed? speed)
    {
        Facts = facts;
        Clutch = clutch;
        Condition = condition;
        Device = device;
        Speed = speed;
    }

    /// <summary>What the case states of it.</summary>
    public SlipClutchFacts Facts { get; }

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

    /// <summary>Codes of the cautions that stand first for the machine of a case; none for most.</summary>
    public static IReadOnlyList<string> CautionsOfMachine(CaseFile file) =>
        VerdictCautions.First(Guard.NotNull(file, nameof(file)).Implement?.Kind ?? MachineKind.NotKnown);

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
            ? review.WithBlockedSlip(blocked, SlipHeat.Of(SlipEvent.Blocked(running.High ?? expected, speed), path, Clutch!.Facing, ClutchHeat.Air))
            : review.WithBlockedSlip(blocked);
    }

    /// <summary>How to set it for a wanted slip torque, and what it is and does then.</summary>
    /// <param name="wanted">Expected torque while it slips; above 0.</param>
    /// <exception cref="InvalidOperationException">The faces and springs of the clutch are not all stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is zero, negative or not finite.</exception>
    public ClutchReview ReviewSetTo(Torque wanted)
    {
        DiscClutch clutch = Clutch ?? throw new InvalidOperationException(
            "To set a clutch, its outerDiameter, innerDiameter, faces and springs must be known; state them.");

        // A test before the nuts were turned is none of the clutch as set.
        ClutchCondition fresh = ConditionOf(Facts, null, false).WithWear(LengthBand.Exactly(Length.Zero, FromCase));
        ClutchSetting setting = Facts.ThreadPitch is { } pitch ? ClutchSetting.For(clutch, wanted, fresh, pitch) : ClutchSetting.For(clutch, wanted, fresh);
        if (setting.Predicted is not { } predicted)
        {
            return ClutchReview.Of(Device).WithSetting(setting);
        }

        CaseClutch set = new(Facts, setting.Clutch, fresh, SlipClutchDevice.Of(Device.Name, predicted), Speed);
        return set.With(ClutchHeat.Slips(set, Speed), Speed).Review().WithSetting(setting);
    }

    /// <summary>The clutch that the facts describe, its heat left out.</summary>
    internal static CaseClutch Of(SlipClutchFacts facts, DateTime? day)
    {
        SpringPack? springs = CaseSprings.Of(facts.Springs);
        DiscClutch? clutch = ClutchOf(facts, springs);
        ClutchCondition condition = ConditionOf(facts, day, true);
        SlipTorque torque = TorqueOf(facts, clutch, condition);
        SlipClutchDevice device = SlipClutchDevice.Of(facts.Name ?? UsualName, torque);
        device = GoodOrder(clutch, condition) is { } good ? device.WithGoodOrder(good) : device;
        return new CaseClutch(facts, clutch, condition, day is null ? device.Undated() : device, null);
    }

    internal CaseClutch With(SlipClutchDevice device, RotationalSpeed? speed) => new(Facts, Clutch, Condition, device, speed);

    private static DiscClutch? ClutchOf(SlipClutchFacts facts, SpringPack? springs)
    {
        if (facts.OuterDiameter is not { } outer || facts.InnerDiameter is not { } inner || facts.Faces is not { } faces || springs is null)
        {
            return null;
        }

        DiscClutch clutch = DiscClutch.Of(outer, inner, faces, ClutchTexts.Facing(facts.Facing) ?? Facings.NotKnown, springs);
        return facts.SpringLength is { } length ? clutch.WithSpringLength(length)
            : facts.NutTurns is { } turns && facts.ThreadPitch is { } pitch ? clutch.WithNutTurns(turns, pitch)
            : clutch;
    }

    private static ClutchCondition ConditionOf(SlipClutchFacts facts, DateTime? day, bool withTest)
    {
        ClutchCondition condition = ClutchCondition.AsOf(day ?? Later(facts))
            .WithRunIn(facts.RunIn)
            .WithSurface(facts.Surface == SurfaceState.Dry ? SurfaceState.CleanInWork : facts.Surface)
            .WithClimate(facts.Climate);
        condition = facts.Wear is { } wear ? condition.WithWear(wear) : condition;
        if (facts.LastStorage is { } ended && (day is not null || ended > facts.LastSlipTest))
        {
            condition = facts.StoredMonths is { } months ? condition.WithStorage(ended, months) : condition.WithStorage(ended);
        }

        if (!withTest)
        {
            return condition;
        }

        if (facts.SlipTestResult == SlipTestOutcome.DidNotSlip)
        {
            condition = condition.Stuck();
        }

        return Test(facts) is { } test ? condition.WithSlipTest(test) : condition;
    }

    // A day after everything told, so that no test is of that day.
    private static DateTime Later(SlipClutchFacts facts)
    {
        DateTime test = facts.LastSlipTest ?? NoDay;
        DateTime storage = facts.LastStorage ?? NoDay;
        return (test > storage ? test : storage).AddDays(1);
    }

    private static SlipTest? Test(SlipClutchFacts facts)
    {
        if (facts.LastSlipTest is not { } day)
        {
            return null;
        }

        Torque? byLever = facts.LeverForce is { } force && facts.LeverArm is { } arm
            ? Torque.FromNewtonMeters(Quantities.Si.Newtons(force) * Quantities.Si.Meters(arm))
            : null;
        return facts.SlipTestResult switch
        {
            SlipTestOutcome.Slipped when facts.LeverTorque is { } torque => SlipTest.Measured(day, torque),
            SlipTestOutcome.Slipped when byLever is not null => SlipTest.Lever(day, facts.LeverForce!.Value, facts.LeverArm!.Value),
            SlipTestOutcome.Slipped => SlipTest.Slipped(day),
            SlipTestOutcome.DidNotSlip when facts.LeverTorque is { } withstood => SlipTest.DidNotSlip(day, withstood),
            SlipTestOutcome.DidNotSlip when byLever is { } held => SlipTest.DidNotSlip(day, TorqueBand.Exactly(held, FromCase)),
            SlipTestOutcome.DidNotSlip => SlipTest.DidNotSlip(day),
            _ => SlipTest.NotRecorded(day),
        };
    }

    private static SlipTorque TorqueOf(SlipClutchFacts facts, DiscClutch? clutch, ClutchCondition condition)
    {
        bool isMeasured = condition.LastSlipTest?.Running is not null;
        return clutch?.SpringLength is not null ? SlipTorque.Of(clutch, condition)
            : isMeasured ? SlipTorque.OfMeasured(condition)
            : facts.StatedTorque is { } stated ? SlipTorque.OfStated(stated, condition)
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
