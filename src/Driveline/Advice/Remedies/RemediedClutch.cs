using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Protection;

namespace Driveline.Advice;

/// <summary>The slip torque of a clutch once it is free, set, and seen to slip on that day.</summary>
/// <remarks>
/// Oil and glaze stay: no slip takes them off. What slips in the field is damp and hot at times, so clean faces are never taken as dry.
/// </remarks>
internal static class RemediedClutch
{
    /// <summary>
    /// Freed, slipped and set: to the manual's torque; without that as it was measured, else as its springs are set. Null when none is
    /// known.
    /// </summary>
    public static SlipTorque? Freed(SlipClutchDevice fitted, ProtectionQuestion question) =>
        SetAsManual(fitted, question) ?? AsItIs(fitted.SlipTorque);

    /// <summary>Set to the torque that the manual names and slipped; null when that is not known or has no high end.</summary>
    public static SlipTorque? SetAsManual(SlipClutchDevice fitted, ProtectionQuestion question) =>
        question.SpecifiedFor(fitted) is { Kind: DeviceKind.SlipClutch, InGoodOrder: { IsBounded: true } torque }
            ? SlipTorque.OfStated(torque, InGoodOrder(fitted.SlipTorque.Condition))
            : null;

    private static SlipTorque? AsItIs(SlipTorque now)
    {
        ClutchCondition good = InGoodOrder(now.Condition);
        if (now.Condition.LastSlipTest is { Outcome: SlipTestOutcome.Slipped, Running: { } read })
        {
            ClutchCondition measured = good.WithSlipTest(SlipTest.Measured(good.Day, read));
            return now.Clutch is null ? SlipTorque.OfMeasured(measured) : SlipTorque.Of(now.Clutch, measured);
        }

        // Solid or loose springs are no setting to go back to.
        return now.Clutch is { SpringLength: not null } clutch && SlipTorque.Of(clutch, good) is { Breakaway.IsBounded: true } slip
            && slip.Running.SiBand.Low > 0
            ? slip
            : null;
    }

    private static ClutchCondition InGoodOrder(ClutchCondition told)
    {
        ClutchCondition good = ClutchCondition.AsOf(told.Day)
            .WithRunIn(told.RunIn)
            .WithSurface(told.Surface is SurfaceState.Oiled or SurfaceState.Glazed or SurfaceState.NotKnown ? told.Surface
                : SurfaceState.CleanInWork)
            .WithSlipTest(SlipTest.Slipped(told.Day));
        return told.Wear is { } wear ? good.WithWear(wear) : good;
    }
}
