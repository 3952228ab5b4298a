using Driveline.Findings;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>A shear-bolt joint as it is fitted and was seen: it judges itself on the day it is looked at.</summary>
/// <remarks>
/// Immutable; each With… method gives a changed copy. What is not told is not known, and not known is never safe: without size, layout
/// or radius the device is there but not identified. Facts that contradict each other are <see cref="Conflicts"/>; the device then bars
/// both Yes and names them.
/// </remarks>
public sealed partial class FittedBolt
{
    private DateTime? day;
    private bool isOpen;

    private FittedBolt(string name, DateTime? day)
    {
        Name = Guard.NotBlank(name, "Name of a shear bolt", nameof(name));
        this.day = day?.Date;
    }

    /// <summary>Name by which people know it.</summary>
    public string Name { get; }

    /// <summary>Where its facts stand; null when nobody has told.</summary>
    public FactPlace? Place { get; private set; }

    /// <summary>The day it is judged on; null when not known: then no age can be told.</summary>
    public DateTime? Day => day;

    /// <summary>What is told of the bolt.</summary>
    public StatedBolt Stated { get; private set; } = StatedBolt.NotKnown;

    /// <summary>How the bolt lies.</summary>
    public JointLayout Layout { get; private set; }

    /// <summary>Diameter of the shaft the bolt passes through; null when not told.</summary>
    public Length? ShaftDiameter { get; private set; }

    /// <summary>Distance from the shaft's axis to the shear plane or the bolt; null when not told.</summary>
    public Length? Radius { get; private set; }

    /// <summary>Diameter of the bolt circle; null when not told.</summary>
    public Length? BoltCircleDiameter { get; private set; }

    /// <summary>Number of bolts that must shear; null when not told.</summary>
    public int? Bolts { get; private set; }

    /// <summary>Number of planes in which each bolt shears; null when not told.</summary>
    public int? Planes { get; private set; }

    /// <summary>Whether hub and shaft turn on each other with the bolt out.</summary>
    public HubState Hub { get; private set; }

    /// <summary>When the hub was last tried; null when not dated.</summary>
    public DateTime? HubSeen { get; private set; }

    /// <summary>When the bolt last sheared and the hub was seen to turn; null when not told.</summary>
    public DateTime? LastTrip { get; private set; }

    /// <summary>Torque that turns the hub on the shaft with the bolt out; null when not measured.</summary>
    public TorqueBand? HubFriction { get; private set; }

    /// <summary>Outer diameter of the hub around the shaft; null when not told.</summary>
    public Length? HubDiameter { get; private set; }

    /// <summary>Thickness of all that the bolt holds together, from under its head to its nut; null when not known.</summary>
    public Length? GripLength { get; private set; }

    /// <summary>How the bolt fits its holes.</summary>
    public HoleFit HoleFit { get; private set; }

    /// <summary>Measured diameter of the bolt's hole; null when not measured.</summary>
    public Length? HoleDiameter { get; private set; }

    /// <summary>Gap between the two parts at the shear plane; null when not told.</summary>
    public Length? StandOff { get; private set; }

    /// <summary>A joint of which nothing else is known, looked at on a day.</summary>
    /// <param name="name">Name by which people know it.</param>
    /// <param name="day">The day it is judged on; the caller's "today".</param>
    public static FittedBolt AsOf(string name, DateTime day) => new(name, day);

    /// <summary>A joint of which nothing else is known, not even the day it was looked at.</summary>
    public static FittedBolt Undated(string name) => new(name, null);

    /// <summary>The same joint with the place of its facts, which its findings then name.</summary>
    public FittedBolt At(FactPlace place)
    {
        Guard.NotNull(place, nameof(place));
        return Changed(place, static (f, value) => f.Place = value);
    }

    /// <summary>The same joint with what is told of its bolt.</summary>
    public FittedBolt With(StatedBolt stated)
    {
        Guard.NotNull(stated, nameof(stated));
        return Changed(stated, static (f, value) => f.Stated = value);
    }

    /// <summary>The same joint with the way its bolt lies.</summary>
    public FittedBolt WithLayout(JointLayout layout) => Changed(layout, static (f, value) => f.Layout = value);

    /// <summary>The same joint with the diameter of the shaft its bolt passes through.</summary>
    public FittedBolt WithShaftDiameter(Length diameter) => Long(diameter, "Shaft diameter", static (f, value) => f.ShaftDiameter = value);

    /// <summary>The same joint with the distance from the shaft's axis to the shear plane or the bolt.</summary>
    public FittedBolt WithRadius(Length radius) => Long(radius, "Radius of the shear plane", static (f, value) => f.Radius = value);

    /// <summary>The same joint with the diameter of its bolt circle.</summary>
    public FittedBolt WithBoltCircleDiameter(Length diameter) =>
        Long(diameter, "Bolt-circle diameter", static (f, value) => f.BoltCircleDiameter = value);

    /// <summary>The same joint with the number of bolts that must shear, 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 1 to 100.</exception>
    public FittedBolt WithBolts(int bolts)
    {
        Guard.Within(bolts, 1, 100, "Number of bolts", nameof(bolts));
        return Changed(bolts, static (f, value) => f.Bolts = value);
    }

    /// <summary>The same joint with the number of planes in which each bolt shears, 1 to 4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 1 to 4.</exception>
    public FittedBolt WithPlanes(int planes)
    {
        Guard.Within(planes, 1, 4, "Shear planes per bolt", nameof(planes));
        return Changed(planes, static (f, value) => f.Planes = value);
    }

    /// <summary>The same joint with the state of its hub.</summary>
    public FittedBolt WithHub(HubState hub) => Changed(hub, static (f, value) => f.Hub = value);

    /// <summary>The same joint with the day its hub was last tried; after 12 months it may have rusted fast.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It was tried after the day judged on.</exception>
    public FittedBolt WithHubSeen(DateTime seen) => Seen(seen, "The day the hub was last tried", static (f, value) => f.HubSeen = value);

    /// <summary>The same joint with the day its bolt last sheared and the hub was seen to turn.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The trip lies after the day judged on.</exception>
    public FittedBolt WithLastTrip(DateTime trip) => Seen(trip, "The last trip", static (f, value) => f.LastTrip = value);

    /// <summary>The same joint with the torque that turns its hub on the shaft with the bolt out.</summary>
    public FittedBolt WithHubFriction(TorqueBand measured)
    {
        Guard.NotNull(measured, nameof(measured));
        return Changed(measured, static (f, value) => f.HubFriction = value);
    }

    /// <summary>The same joint with the outer diameter of the hub; with the bolt's length it tells how far the bolt stands out.</summary>
    public FittedBolt WithHubDiameter(Length diameter) => Long(diameter, "Hub diameter", static (f, value) => f.HubDiameter = value);

    /// <summary>The same with the thickness of all that the bolt holds together.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0.</exception>
    public FittedBolt WithGripLength(Length grip) => Long(grip, "Grip length", static (f, value) => f.GripLength = value);

    /// <summary>The same joint with the fit of its holes.</summary>
    public FittedBolt WithHoleFit(HoleFit fit) => Changed(fit, static (f, value) => f.HoleFit = value);

    /// <summary>The same joint with the measured diameter of the bolt's hole.</summary>
    public FittedBolt WithHoleDiameter(Length diameter) => Long(diameter, "Hole diameter", static (f, value) => f.HoleDiameter = value);

    /// <summary>The same joint with the gap between the two parts at the shear plane; 0 when they touch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The gap is below 0 or not finite.</exception>
    public FittedBolt WithStandOff(Length gap)
    {
        Guard.NotNegative(Si.Meters(gap), "Gap between the faces", "m", nameof(gap));
        return Changed(gap, static (f, value) => f.StandOff = value);
    }

    /// <inheritdoc/>
    public override string ToString() => Name + ": " + (Joint?.ToString() ?? "not identified");

    private FittedBolt Long(Length length, string what, Action<FittedBolt, Length> change)
    {
        Guard.Positive(Si.Meters(length), what, "m", nameof(length));
        return Changed(length, change);
    }

    private FittedBolt Seen(DateTime seen, string what, Action<FittedBolt, DateTime> change) => day is { } today && seen.Date > today
        ? throw new ArgumentOutOfRangeException(nameof(seen), FormattableString.Invariant(
            $"{what} must not be after {today:yyyy-MM-dd}, the day judged on; got {seen:yyyy-MM-dd}."))
        : Changed(seen.Date, change);

    /// <summary>A joint without a day, to be filled by one owner: until it is closed, each change is made in this very object.</summary>
    internal static FittedBolt Open(string name) => new(name, null) { isOpen = true };

    internal FittedBolt Closed()
    {
        isOpen = false;
        return this;
    }

    /// <summary>It as judged on a day that nothing told of it comes after.</summary>
    internal FittedBolt On(DateTime today)
    {
        // Which facts contradict each other does not depend on the day.
        IReadOnlyList<FactConflict> known = Conflicts;
        FittedBolt dated = Changed(today.Date, static (f, value) => f.day = value);
        dated.conflicts = known;
        return dated;
    }

    private FittedBolt Changed<T>(T value, Action<FittedBolt, T> change)
    {
        FittedBolt changed = isOpen ? this : (FittedBolt)MemberwiseClone();
        change(changed, value);
        changed.device = null;
        changed.conflicts = null;
        return changed;
    }
}
