using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <content>The hub: whether it lets go, and how old that knowledge is.</content>
public sealed partial class ShearBoltJoint
{
    // A yearly check is the least that manuals ask for; a winter outside is enough to rust a hub fast.
    private const int MonthsThatCount = 12;

    private HubState hub;
    private DateTime? hubSeen;
    private DateTime? lastTrip;
    private bool isHubOld;
    private bool isTripOld;

    /// <summary>
    /// Whether the hub turns once the bolt has parted: as told, or free when only a trip was told in which it was seen to turn.
    /// </summary>
    public HubState Hub => hub == HubState.NotKnown && lastTrip is not null ? HubState.Free : hub;

    /// <summary>The day the hub was tried or seen to turn; null when not dated: then its state holds for the day judged on.</summary>
    public DateTime? HubSeen => hub == HubState.NotKnown && lastTrip is not null ? lastTrip : hubSeen;

    /// <summary>True when the hub was last seen to turn more than 12 months before the day judged on, or an unknown time ago.</summary>
    /// <remarks>12 months: common practice, the yearly check manuals ask for. A seized hub does not free itself with time.</remarks>
    public bool IsHubSeenTooLongAgo => Hub != HubState.Seized && (hub == HubState.NotKnown && lastTrip is not null ? isTripOld : isHubOld);

    /// <summary>Drag of the hub without a bolt, as measured; null when not measured.</summary>
    public TorqueBand? HubFriction { get; private set; }

    /// <summary>
    /// The same joint with a state of the hub that holds for the day judged on; an earlier <see cref="HubSeen"/> no longer counts.
    /// </summary>
    public ShearBoltJoint WithHub(HubState hub) => Changed(hub, static (j, value) =>
    {
        j.hub = value;
        j.hubSeen = null;
        j.isHubOld = false;
    });

    /// <summary>The same joint with the day on which its hub was last tried: after 12 months it may have rusted fast again.</summary>
    /// <param name="seen">The day it was tried.</param>
    /// <param name="day">The day judged on.</param>
    /// <exception cref="ArgumentOutOfRangeException">It was tried after the day judged on.</exception>
    public ShearBoltJoint WithHubSeen(DateTime seen, DateTime day) => Seen(seen, IsOld(seen, day, nameof(seen)));

    /// <summary>
    /// The same joint with the day on which its hub was last tried, judged on an unknown day: its age cannot be told and counts as too old.
    /// </summary>
    public ShearBoltJoint WithHubSeen(DateTime seen) => Seen(seen, true);

    /// <summary>
    /// The same joint with the day its bolt last sheared and the hub was seen to turn. It frees a hub of which nothing else is told, for 12
    /// months.
    /// </summary>
    /// <param name="trip">The day of the trip.</param>
    /// <param name="day">The day judged on.</param>
    /// <exception cref="ArgumentOutOfRangeException">The trip lies after the day judged on.</exception>
    public ShearBoltJoint WithLastTrip(DateTime trip, DateTime day) => Tripped(trip, IsOld(trip, day, nameof(trip)));

    /// <summary>
    /// The same joint with the day its bolt last sheared and the hub was seen to turn, judged on an unknown day: too old to count.
    /// </summary>
    public ShearBoltJoint WithLastTrip(DateTime trip) => Tripped(trip, true);

    /// <summary>The same joint with the drag of the hub as measured without a bolt; it adds to the high end.</summary>
    public ShearBoltJoint WithHubFriction(TorqueBand measured)
    {
        Guard.NotNull(measured, nameof(measured));
        return Changed(measured, static (j, value) => j.HubFriction = value);
    }

    /// <summary>The same joint with all that is told of another joint's hub.</summary>
    internal ShearBoltJoint WithHubOf(ShearBoltJoint other) => Changed(j =>
    {
        j.hub = other.hub;
        j.hubSeen = other.hubSeen;
        j.lastTrip = other.lastTrip;
        j.isHubOld = other.isHubOld;
        j.isTripOld = other.isTripOld;
        j.HubFriction = other.HubFriction;
    });

    private static bool IsOld(DateTime seen, DateTime day, string parameter) => seen.Date <= day.Date
        ? seen.Date.AddMonths(MonthsThatCount) < day.Date
        : throw new ArgumentOutOfRangeException(parameter, FormattableString.Invariant(
            $"The day the hub was seen to turn must not be after {day:yyyy-MM-dd}, the day judged on; got {seen:yyyy-MM-dd}."));

    private ShearBoltJoint Seen(DateTime seen, bool isOld) => Changed(j =>
    {
        j.hubSeen = seen.Date;
        j.isHubOld = isOld;
    });

    private ShearBoltJoint Tripped(DateTime trip, bool isOld) => Changed(j =>
    {
        j.lastTrip = trip.Date;
        j.isTripOld = isOld;
    });
}
