using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A friction-disc slip clutch in its place in the driveline.</summary>
/// <remarks>
/// Whether it guards is judged by its breakaway, whether it stays quiet by its running torque. Slipping when the PTO is let in or
/// at an obstruction is its job while the heat stays within the limits of its linings. A torque that nobody has measured on this
/// clutch rests on table values of friction and gives at most a Maybe. Stuck plates and solid springs are states without an
/// expected torque; an unknown spring length without a measurement leaves the torque not known.
/// </remarks>
public sealed class SlipClutchDevice : ProtectiveDevice
{
    private readonly TorqueBand? inGoodOrder;
    private readonly bool hasSlips;
    private readonly double slipsPerHour;
    private readonly SlipHeat? slipHeat;
    private readonly SlipHeat? engagementHeat;
    private readonly bool isUndated;

    private SlipClutchDevice(
        string name, SlipTorque slipTorque, TorqueBand? inGoodOrder, bool hasSlips, double slipsPerHour, SlipHeat? slipHeat,
            SlipHeat? engagementHeat, bool isUndated)
        : base(name)
    {
        SlipTorque = slipTorque;
        this.inGoodOrder = inGoodOrder;
        this.hasSlips = hasSlips;
        this.slipsPerHour = slipsPerHour;
        this.slipHeat = slipHeat;
        this.engagementHeat = engagementHeat;
        this.isUndated = isUndated;
        Findings = SlipClutchJudgement.Of(name, slipTorque, hasSlips, slipsPerHour, slipHeat, isUndated);
    }

    /// <summary>The slip torque, with its own findings, condition and calculation sheet.</summary>
    public SlipTorque SlipTorque { get; }

    /// <summary>How often it slips in work, per hour; null when not known.</summary>
    public double? SlipsPerHour => hasSlips ? slipsPerHour : null;

    /// <inheritdoc/>
    public override DeviceKind Kind => DeviceKind.SlipClutch;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway => IsIdentified || IsStuck ? SlipTorque.Breakaway : null;

    /// <inheritdoc/>
    public override TorqueBand? Running => IsIdentified ? SlipTorque.Running : null;

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => AfterTrip.TorqueHeld;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; }

    /// <inheritdoc/>
    public override TorqueBand? InGoodOrder => inGoodOrder ?? Running;

    /// <inheritdoc/>
    public override bool IsIdentified => SlipTorque.Source != SlipTorqueSource.NotKnown;

    /// <inheritdoc/>
    public override bool IsStuck => SlipTorque.Condition.KnownStuck || (IsIdentified && SlipTorque.Breakaway.Expected is null);

    /// <inheritdoc/>
    public override bool StandsEngagement => engagementHeat is not null && SlipClutchJudgement.IsWithinLimits(engagementHeat);

    /// <inheritdoc/>
    public override IReadOnlyList<CalculationLine> Sheet() => SlipTorque.Sheet();

    /// <summary>A slip clutch in its place, under a name by which people know it; how often it slips is not known.</summary>
    public static SlipClutchDevice Of(string name, SlipTorque slipTorque) =>
        new(name, Guard.NotNull(slipTorque, nameof(slipTorque)), null, false, 0, null, null, false);

    /// <summary>
    /// The same clutch with the torque at which it slips when clean and free, for comparison with what the manual specifies.
    /// </summary>
    public SlipClutchDevice WithGoodOrder(TorqueBand torque) =>
        new(Name, SlipTorque, Guard.NotNull(torque, nameof(torque)), hasSlips, slipsPerHour, slipHeat, engagementHeat, isUndated);

    /// <summary>The same clutch, never seen to slip in work.</summary>
    public SlipClutchDevice WithoutSlipsInWork() => new(Name, SlipTorque, inGoodOrder, true, 0, null, engagementHeat, isUndated);

    /// <summary>The same clutch, slipping in work at a rate of which the heat is not known.</summary>
    /// <param name="perHour">Slips an hour; 0 or more.</param>
    public SlipClutchDevice WithSlipsInWork(double perHour) => new(
        Name, SlipTorque, inGoodOrder, true, Guard.NotNegative(perHour, "Slips per hour", "1/h", nameof(perHour)), null, engagementHeat,
            isUndated);

    /// <summary>The same clutch, slipping in work again and again.</summary>
    /// <param name="perHour">Slips an hour; 0 or more.</param>
    /// <param name="hottest">One such slip, from the temperature at which the clutch is after many of them.</param>
    public SlipClutchDevice WithSlipsInWork(double perHour, SlipHeat hottest) => new(
        Name, SlipTorque, inGoodOrder, true, Guard.NotNegative(perHour, "Slips per hour", "1/h", nameof(perHour)),
            Guard.NotNull(hottest, nameof(hottest)), engagementHeat, isUndated);

    /// <summary>
    /// The same clutch with the heat of the slip while the PTO is let in; within the limits of the linings, that slip is its job.
    /// </summary>
    public SlipClutchDevice WithEngagementHeat(SlipHeat heat) =>
        new(Name, SlipTorque, inGoodOrder, hasSlips, slipsPerHour, slipHeat, Guard.NotNull(heat, nameof(heat)), isUndated);

    /// <summary>The same clutch, judged without knowing which day it is: no slip test counts, however young it looks.</summary>
    public SlipClutchDevice Undated() => new(Name, SlipTorque, inGoodOrder, hasSlips, slipsPerHour, slipHeat, engagementHeat, true);
}
