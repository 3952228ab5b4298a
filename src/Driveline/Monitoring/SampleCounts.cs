namespace Driveline.Monitoring;

/// <summary>What came in: samples taken, and those that were not, by reason.</summary>
public sealed class SampleCounts
{
    internal SampleCounts(SampleGate gate)
    {
        Taken = gate.Taken;
        Late = gate.Late;
        Duplicate = gate.Duplicate;
        NotANumber = gate.NotANumber;
        OutOfRange = gate.OutOfRange;
        Missing = gate.Missing;
        Gaps = gate.Gaps;
        ClockResets = gate.ClockResets;
        WithoutSpeedOut = gate.WithoutSpeedOut;
    }

    /// <summary>Samples taken.</summary>
    public long Taken { get; }

    /// <summary>Samples whose time lay before one already taken; left out.</summary>
    public long Late { get; }

    /// <summary>Samples with the time of the one before; left out.</summary>
    public long Duplicate { get; }

    /// <summary>Samples whose time, torque or speed before the device was no finite number; left out.</summary>
    public long NotANumber { get; }

    /// <summary>Samples beyond ±10⁷ N·m, ±10⁴ rad/s or ±10¹² s; left out.</summary>
    public long OutOfRange { get; }

    /// <summary>Samples that should have come between those that did, by the stated period.</summary>
    public long Missing { get; }

    /// <summary>Pauses longer than the longest step: what went on ends there.</summary>
    public long Gaps { get; }

    /// <summary>How often the clock began anew, as <see cref="OverloadMonitor.RestartClock"/> said.</summary>
    public long ClockResets { get; }

    /// <summary>Samples taken without a speed behind the device: no slip, trip or heat is seen in them.</summary>
    public long WithoutSpeedOut { get; }
}
