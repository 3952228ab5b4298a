using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>An overrun clutch: carries torque forwards only, so that a rotor running on does not push the tractor.</summary>
/// <remarks>
/// It limits nothing in the driving direction: it is no overload protection. It belongs at the implement's end of the drive shaft
/// (read in two operator manuals).
/// </remarks>
public sealed class OverrunClutch
{
    private OverrunClutch(OverrunState state, TorqueBand? capacity, TorqueBand? drag)
    {
        State = state;
        Capacity = capacity;
        Drag = drag;
        Findings = Judge();
    }

    /// <summary>Where the rule of its place comes from.</summary>
    public static Basis PlaceBasis { get; } =
        Basis.Published(
            "mixer-wagon and loader-wagon operator manuals (makers withheld)", "undated copies", "overload and overrun clutches");

    /// <summary>Whether it still runs free.</summary>
    public OverrunState State { get; }

    /// <summary>Torque it carries forwards before it is damaged; null when not known.</summary>
    public TorqueBand? Capacity { get; }

    /// <summary>Torque it carries backwards while free; null when not known.</summary>
    public TorqueBand? Drag { get; }

    /// <summary>True only when it is known to run free: then the rotor's own energy cannot reach the tractor through it.</summary>
    public bool BlocksReverseTorque => State == OverrunState.Free;

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>An overrun clutch in a state, capacity and drag not known.</summary>
    public static OverrunClutch Of(OverrunState state) => new(state, null, null);

    /// <summary>The same clutch with a stated capacity.</summary>
    public OverrunClutch WithCapacity(TorqueBand capacity) => new(State, Guard.NotNull(capacity, nameof(capacity)), Drag);

    /// <summary>The same clutch with a stated drag.</summary>
    public OverrunClutch WithDrag(TorqueBand drag) => new(State, Capacity, Guard.NotNull(drag, nameof(drag)));

    /// <inheritdoc/>
    public override string ToString() => "overrun clutch, " + State;

    private Finding[] Judge() => State switch
    {
        OverrunState.Free => [],
        OverrunState.Locked => [Finding.Of(ClutchFindings.OverrunLocked, Severity.Danger)],
        OverrunState.SlipsDriving => [Finding.Of(ClutchFindings.OverrunSlips, Severity.Warning)],
        _ => [Finding.Of(ClutchFindings.OverrunNotKnown, Severity.Warning)],
    };
}
