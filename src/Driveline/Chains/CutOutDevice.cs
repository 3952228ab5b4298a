using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A ratchet, cam or radial-pin clutch in its place in the driveline: a trip band, and what it does after the trip.</summary>
/// <remarks>
/// It can rust or jam like any moving part, so its guard is certain only when it was seen to trip since the machine last stood.
/// A kind that is not known bars a Yes too.
/// </remarks>
public sealed class CutOutDevice : ProtectiveDevice
{
    private CutOutDevice(string name, CutOutClutch clutch, bool isProven, FactPlace? place)
        : base(name)
    {
        Clutch = clutch;
        IsProven = isProven;
        Place = place;
        var findings = new List<Finding>(clutch.Findings);
        if (clutch.Kind == CutOutKind.NotKnown)
        {
            findings.Add(Finding.NotKnown(DeviceFindings.CutOutKindNotKnown).Barring(Bars.Guards).WithSettledBy(Measurements.IdentifyDevice)
                .With("name", name).WithBecause(ClutchFact.Kind));
        }

        if (!isProven)
        {
            findings.Add(Finding.Of(DeviceFindings.CutOutNotProven, Severity.Danger).Barring(Bars.Guards)
                .WithSettledBy(Measurements.SlipTest).With("name", name).WithBecause(ClutchFact.LastTrip, ClutchFact.LastStorage));
        }

        Findings = [.. findings.Select(f => f.At(place))];
    }

    /// <summary>The clutch, with what it carries after the trip and the speed below which it takes hold again.</summary>
    public CutOutClutch Clutch { get; }

    /// <summary>True when it was seen to trip since the machine last stood.</summary>
    public bool IsProven { get; }

    /// <inheritdoc/>
    public override FactPlace? Place { get; }

    /// <inheritdoc/>
    public override DeviceKind Kind => DeviceKind.CutOut;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway => Clutch.Trip;

    /// <inheritdoc/>
    public override TorqueBand? Running => Clutch.Trip;

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => Clutch.Kind switch
    {
        CutOutKind.Cam => AfterTrip.TorqueFallsUntilSlow,
        CutOutKind.Ratchet or CutOutKind.RadialPin => AfterTrip.TorquePulses,
        _ => AfterTrip.NotKnown,
    };

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; }

    /// <summary>A cut-out clutch that nobody has seen to trip since the machine last stood.</summary>
    public static CutOutDevice Of(string name, CutOutClutch clutch) => new(name, Guard.NotNull(clutch, nameof(clutch)), false, null);

    /// <summary>The same clutch, judged by its condition: proven when a trip since the last storage may be trusted.</summary>
    public CutOutDevice With(ClutchCondition condition) =>
        new(Name, Clutch, Guard.NotNull(condition, nameof(condition)).MayBeTrustedToSlip, Place);

    /// <summary>
    /// The same clutch, last seen to let go on a day: that counts like a slip test, dated and since the last storage.
    /// </summary>
    /// <param name="trip">The day it was seen to let go.</param>
    /// <param name="storageEnded">The day its last storage ended; null when not known.</param>
    /// <param name="day">The day judged on.</param>
    /// <exception cref="ArgumentOutOfRangeException">A day lies after the day judged on.</exception>
    public CutOutDevice WithLastTrip(DateTime trip, DateTime? storageEnded, DateTime day)
    {
        ClutchCondition condition = ClutchCondition.AsOf(day).WithSlipTest(SlipTest.Slipped(trip));
        return With(storageEnded is { } ended ? condition.WithStorage(ended) : condition);
    }

    /// <summary>The same clutch with the place of its facts, which its findings then name.</summary>
    public CutOutDevice At(FactPlace place) => new(Name, Clutch, IsProven, Guard.NotNull(place, nameof(place)));
}
