using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>What the moment of engaging the PTO may put on the driveline: at most what the PTO clutch can pass.</summary>
/// <remarks>
/// Kept apart from the steady work peaks because habit cures it. It is known when its peak or the clutch's capacity is known;
/// letting a hand lever in gently removes the peak, which no other clutch allows the driver to do. Immutable.
/// </remarks>
public sealed class Engagement
{
    /// <summary>Nothing is known of the engagement.</summary>
    public static readonly Engagement NotKnown = new(PtoClutchKind.NotKnown, EngagementManner.NotKnown, null, null, null);

    private Engagement(PtoClutchKind clutch, EngagementManner manner, TorqueBand? capacity, TorqueBand? peak, TorqueBand? atMost)
    {
        Clutch = clutch;
        Manner = manner;
        Capacity = capacity;
        Peak = peak;
        PeakAtMost = atMost;
    }

    /// <summary>How the tractor engages its PTO.</summary>
    public PtoClutchKind Clutch { get; }

    /// <summary>How the driver engages it.</summary>
    public EngagementManner Manner { get; }

    /// <summary>Torque the PTO clutch can pass, at the PTO; null when not known.</summary>
    public TorqueBand? Capacity { get; }

    /// <summary>Measured or stated engagement peak at the PTO; null when not known.</summary>
    public TorqueBand? Peak { get; }

    /// <summary>What the engagement peak stays below, at the PTO, though nobody knows how far below; null when not known.</summary>
    public TorqueBand? PeakAtMost { get; }

    /// <summary>True when the highest engagement torque has a known bound.</summary>
    public bool IsKnown => Highest is { IsBounded: true };

    /// <summary>True when a gentle hand lever takes the peak away.</summary>
    public bool IsFeathered => Manner == EngagementManner.Gentle && Clutch == PtoClutchKind.HandLever;

    /// <summary>The stated peak, else its bound, else the clutch's capacity; null when none is known.</summary>
    public TorqueBand? Highest => Peak ?? PeakAtMost ?? Capacity;

    /// <summary>The engagement through a kind of PTO clutch.</summary>
    public static Engagement Through(PtoClutchKind clutch) => new(clutch, EngagementManner.NotKnown, null, null, null);

    /// <summary>The same engagement with a manner.</summary>
    public Engagement WithManner(EngagementManner manner) => new(Clutch, manner, Capacity, Peak, PeakAtMost);

    /// <summary>The same engagement with the torque the PTO clutch can pass.</summary>
    public Engagement WithCapacity(TorqueBand capacity) => new(Clutch, Manner, Guard.NotNull(capacity, nameof(capacity)), Peak, PeakAtMost);

    /// <summary>The same engagement with a measured or stated peak.</summary>
    public Engagement WithPeak(TorqueBand peak) => new(Clutch, Manner, Capacity, Guard.NotNull(peak, nameof(peak)), PeakAtMost);

    /// <summary>
    /// The same engagement with a torque at the PTO that its peak stays below: enough to stay quiet, never a reason to trip.
    /// </summary>
    /// <param name="bound">Only its high end counts.</param>
    public Engagement WithPeakAtMost(TorqueBand bound) => new(Clutch, Manner, Capacity, Peak, Guard.NotNull(bound, nameof(bound)));

    /// <summary>Its highest torque, with its unit.</summary>
    public override string ToString() => Peak?.ToString() ?? "peak not known";
}
