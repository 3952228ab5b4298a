using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A device of which only a stated or measured trip torque is known.</summary>
public sealed class StatedDevice : ProtectiveDevice
{
    private readonly DeviceKind kind;
    private readonly AfterTrip afterTrip;

    private StatedDevice(string name, DeviceKind kind, AfterTrip afterTrip, TorqueBand? trip, IReadOnlyList<Finding> findings,
        FactPlace? place)
        : base(name)
    {
        this.kind = kind;
        this.afterTrip = afterTrip;
        Breakaway = trip;
        Findings = findings;
        Place = place;
    }

    /// <inheritdoc/>
    public override FactPlace? Place { get; }

    /// <inheritdoc/>
    public override DeviceKind Kind => kind;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway { get; }

    /// <inheritdoc/>
    public override TorqueBand? Running => Breakaway;

    /// <summary>The length its springs are to be set to; null when not known.</summary>
    public LengthBand? SpringLength { get; private init; }

    /// <summary>Which bolt it is and the state of its hub and holes, where nobody knows the layout; its torque counts nowhere.</summary>
    internal ShearBoltDevice? AsIfLaidOut { get; private init; }

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => afterTrip;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; }

    /// <summary>A device with its trip torque at its own position.</summary>
    public static StatedDevice Of(string name, DeviceKind kind, AfterTrip afterTrip, TorqueBand trip) =>
        new(name, kind, afterTrip, Guard.NotNull(trip, nameof(trip)), [], null);

    /// <summary>A clutch of which a document gives the length its springs are to be set to, and no torque.</summary>
    public static StatedDevice SetTo(string name, DeviceKind kind, AfterTrip afterTrip, LengthBand springLength) =>
        new(name, kind, afterTrip, null, [], null) { SpringLength = Guard.NotNull(springLength, nameof(springLength)) };

    /// <summary>The same device with the length its springs are to be set to.</summary>
    public StatedDevice WithSpringLength(LengthBand length) =>
        new(Name, kind, afterTrip, Breakaway, Findings, Place) { SpringLength = Guard.NotNull(length, nameof(length)) };

    /// <summary>A device that is there, but of which nothing is known.</summary>
    public static StatedDevice NotIdentified(string name) => NotIdentified(name, [], null);

    /// <summary>The same, with what is known to be wrong with it.</summary>
    /// <summary>A shear bolt whose layout, and so whose torque, nobody knows.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="findings">What was found.</param>
    /// <param name="place">Where its facts stand.</param>
    /// <param name="asIfLaidOut">The bolt, its hub and its holes in a joint of no meaning; null when its facts contradict each
    /// other.</param>
    internal static StatedDevice BoltNotLaidOut(
        string name, IEnumerable<Finding> findings, FactPlace? place, ShearBoltDevice? asIfLaidOut) =>
        new(name, DeviceKind.ShearBolt, AfterTrip.TorqueGone, null, [.. findings.Select(f => f.At(place))], place)
        {
            AsIfLaidOut = asIfLaidOut,
        };

    internal static StatedDevice NotIdentified(string name, IEnumerable<Finding> findings, FactPlace? place) =>
        new(name, DeviceKind.NotKnown, AfterTrip.NotKnown, null, [.. findings.Select(f => f.At(place))], place);
}
