using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>A friction-disc slip clutch in its place in the driveline.</summary>
/// <remarks>
/// Whether it guards is judged by its breakaway, whether it stays quiet by its running torque. Slipping when the PTO is engaged or
/// at an obstruction is its job while the heat stays within the limits of its linings. A torque that nobody has measured on this
/// clutch rests on table values of friction and gives at most a Maybe. Stuck plates and solid springs are states without an
/// expected torque; an unknown spring length without a measurement leaves the torque not known.
/// </remarks>
public sealed class SlipClutchDevice : ProtectiveDevice
{
    private TorqueBand? inGoodOrder;
    private double slipsPerHour = double.NaN;
    private SlipHeat? slipHeat;
    private SlipHeat? engagementHeat;
    private bool isUndated;
    private IReadOnlyList<Finding>? findings;

    private SlipClutchDevice(string name, SlipTorque slipTorque, FittedClutch? fitted)
        : base(name)
    {
        SlipTorque = slipTorque;
        Fitted = fitted;
    }

    /// <summary>The clutch as it was seen; null when only its torque was given.</summary>
    public FittedClutch? Fitted { get; }

    /// <summary>Its speed in work, from its place in the driveline; null when not known.</summary>
    public RotationalSpeed? SpeedInWork { get; private set; }

    /// <summary>The slip torque, with its own findings, condition and calculation sheet.</summary>
    public SlipTorque SlipTorque { get; }

    /// <summary>How often it slips in work, per hour; null when not known.</summary>
    public double? SlipsPerHour => double.IsNaN(slipsPerHour) ? null : slipsPerHour;

    /// <inheritdoc/>
    public override FactPlace? Place => Fitted?.Place;

    /// <inheritdoc/>
    public override DeviceKind Kind => DeviceKind.SlipClutch;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway => IsIdentified || IsStuck ? SlipTorque.Breakaway : null;

    /// <inheritdoc/>
    public override TorqueBand? Running => IsIdentified ? SlipTorque.Running : null;

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => AfterTrip.TorqueHeld;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
        findings ??= [.. SlipClutchJudgement.Of(Name, SlipTorque, SlipsPerHour, slipHeat, isUndated).Select(f => f.At(Place))];

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

    /// <inheritdoc/>
    public override IReadOnlyDictionary<string, BandBasis> SheetBases() => SlipTorque.SheetBases();

    /// <inheritdoc/>
    public override IReadOnlyList<TorqueDoubt> Doubts() => IsIdentified ? SlipTorque.Doubts() : [];

    /// <summary>A slip clutch in its place, under a name by which people know it; how often it slips is not known.</summary>
    public static SlipClutchDevice Of(string name, SlipTorque slipTorque) => new(name, Guard.NotNull(slipTorque, nameof(slipTorque)), null);

    /// <summary>
    /// The same clutch with the torque at which it slips when clean and free, for comparison with what the manual specifies.
    /// </summary>
    internal SlipClutchDevice WithGoodOrder(TorqueBand torque)
    {
        Guard.NotNull(torque, nameof(torque));
        return Changed(d => d.inGoodOrder = torque);
    }

    /// <summary>The same clutch, never seen to slip in work.</summary>
    internal SlipClutchDevice WithoutSlipsInWork() => Slipping(0, null);

    /// <summary>The same clutch, slipping in work at a rate of which the heat is not known.</summary>
    /// <param name="perHour">Slips an hour; 0 or more.</param>
    internal SlipClutchDevice WithSlipsInWork(double perHour) =>
        Slipping(Guard.NotNegative(perHour, "Slips per hour", "1/h", nameof(perHour)), null);

    /// <summary>The same clutch, slipping in work again and again.</summary>
    /// <param name="perHour">Slips an hour; 0 or more.</param>
    /// <param name="hottest">One such slip, from the temperature at which the clutch is after many of them.</param>
    internal SlipClutchDevice WithSlipsInWork(double perHour, SlipHeat hottest) => Slipping(
        Guard.NotNegative(perHour, "Slips per hour", "1/h", nameof(perHour)), Guard.NotNull(hottest, nameof(hottest)));

    /// <summary>
    /// The same clutch with the heat of the slip while the PTO is engaged; within the limits of the linings, that slip is its job.
    /// </summary>
    internal SlipClutchDevice WithEngagementHeat(SlipHeat heat)
    {
        Guard.NotNull(heat, nameof(heat));
        return Changed(d => d.engagementHeat = heat);
    }

    /// <summary>The same clutch, judged without knowing which day it is: no slip test counts, however young it looks.</summary>
    internal SlipClutchDevice Undated() => Changed(d => d.isUndated = true);

    /// <summary>A fitted clutch by all that was seen of it.</summary>
    internal static SlipClutchDevice Of(FittedClutch fitted)
    {
        var device = new SlipClutchDevice(fitted.Name, fitted.Judged(), fitted)
        {
            inGoodOrder = fitted.GoodOrder(),
            isUndated = fitted.Day is null,
        };
        return ClutchInPlace.Slipping(device);
    }

    /// <summary>The same clutch in the same place with its springs set anew.</summary>
    internal SlipClutchDevice SetTo(SlipTorque predicted) => ClutchInPlace.Slipping(
        new SlipClutchDevice(Name, predicted, Fitted!.With(predicted.Clutch!)) { SpeedInWork = SpeedInWork });

    internal SlipClutchDevice WithSpeedInWork(RotationalSpeed? speed) => Changed(d => d.SpeedInWork = speed);

    private SlipClutchDevice Slipping(double perHour, SlipHeat? heat) => Changed(d =>
    {
        d.slipsPerHour = perHour;
        d.slipHeat = heat;
    });

    private SlipClutchDevice Changed(Action<SlipClutchDevice> change)
    {
        var copy = (SlipClutchDevice)MemberwiseClone();
        change(copy);
        copy.findings = null;
        return copy;
    }
}
