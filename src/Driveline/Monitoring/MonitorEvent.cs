namespace Driveline.Monitoring;

/// <summary>Something a monitor saw, written when it ended; a trip is written when it is recognised.</summary>
/// <remarks>What does not belong to its kind, or was not measured, is NaN. Times are on the clock of the samples.</remarks>
public readonly struct MonitorEvent : IEquatable<MonitorEvent>
{
    internal MonitorEvent(
        MonitorEventKind kind, double startS, double durationS, double peakNm, double slipAngleRad, double energyJ,
            double peakFaceK, bool atEngagement, bool isCut)
    {
        Kind = kind;
        StartS = startS;
        DurationS = durationS;
        PeakNm = peakNm;
        SlipAngleRad = slipAngleRad;
        EnergyJ = energyJ;
        PeakFaceK = peakFaceK;
        AtEngagement = atEngagement;
        IsCut = isCut;
    }

    /// <summary>What was seen.</summary>
    public MonitorEventKind Kind { get; }

    /// <summary>When it began, s; between two samples where the level was crossed, by a straight line.</summary>
    public double StartS { get; }

    /// <summary>
    /// How long it lasted, s; of a trip until it was recognised; NaN of a gap across which the clock began anew.
    /// </summary>
    public double DurationS { get; }

    /// <summary>Highest torque in it, N·m; of a trip, the highest of the second before.</summary>
    public double PeakNm { get; }

    /// <summary>Angle by which the sides turned against each other, rad.</summary>
    public double SlipAngleRad { get; }

    /// <summary>Heat made, J: torque times slip angle.</summary>
    public double EnergyJ { get; }

    /// <summary>Highest face temperature in it, K.</summary>
    public double PeakFaceK { get; }

    /// <summary>True when it began while the PTO was being engaged.</summary>
    public bool AtEngagement { get; }

    /// <summary>True when samples were missing or the log ended before it did.</summary>
    public bool IsCut { get; }

    /// <summary>True when all values are the same.</summary>
    public static bool operator ==(MonitorEvent left, MonitorEvent right) => left.Equals(right);

    /// <summary>True when any value differs.</summary>
    public static bool operator !=(MonitorEvent left, MonitorEvent right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(MonitorEvent other) =>
        Kind == other.Kind && StartS.Equals(other.StartS) && DurationS.Equals(other.DurationS) && PeakNm.Equals(other.PeakNm)
        && SlipAngleRad.Equals(other.SlipAngleRad) && EnergyJ.Equals(other.EnergyJ) && PeakFaceK.Equals(other.PeakFaceK)
        && AtEngagement == other.AtEngagement && IsCut == other.IsCut;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is MonitorEvent other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (((int)Kind * 397) ^ StartS.GetHashCode()) * 397 ^ PeakNm.GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Kind} at {StartS:G6} s for {DurationS:G4} s, peak {PeakNm:G4} N·m");
}
