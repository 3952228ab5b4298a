using Driveline.Monitoring;

namespace Driveline.Cli.Telemetry;

/// <summary>A log that gives samples one by one; rows that cannot be read are counted, never thrown.</summary>
internal interface ITelemetry
{
    /// <summary>The line of the last sample, from 1.</summary>
    long Line { get; }

    /// <summary>The next sample; false at the end.</summary>
    bool TryNext(out TorqueSample sample);
}
