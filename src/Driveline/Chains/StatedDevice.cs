using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A device of which only a stated or measured trip torque is known.</summary>
public sealed class StatedDevice : ProtectiveDevice
{
    private readonly DeviceKind kind;
    private readonly AfterTrip afterTrip;

    private StatedDevice(string name, DeviceKind kind, AfterTrip afterTrip, TorqueBand? trip, IReadOnlyList<Finding> findings)
        : base(name)
    {
        this.kind = kind;
        this.afterTrip = afterTrip;
        Breakaway = trip;
        Findings = findings;
    }

    /// <inheritdoc/>
    public override DeviceKind Kind => kind;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway { get; }

    /// <inheritdoc/>
    public override TorqueBand? Running => Breakaway;

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => afterTrip;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; }

    /// <summary>A device with its trip torque at its own position.</summary>
    public static StatedDevice Of(string name, DeviceKind kind, AfterTrip afterTrip, TorqueBand trip) =>
        new(name, kind, afterTrip, Guard.NotNull(trip, nameof(trip)), []);

    /// <summary>A device that is there, but of which nothing is known.</summary>
    public static StatedDevice NotIdentified(string name) => NotIdentified(name, []);

    /// <summary>The same, with what is known to be wrong with it.</summary>
    internal static StatedDevice NotIdentified(string name, IEnumerable<Finding> findings) =>
        new(name, DeviceKind.NotKnown, AfterTrip.NotKnown, null, [.. findings]);
}
