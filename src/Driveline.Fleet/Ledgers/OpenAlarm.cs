using Driveline.Monitoring;

namespace Driveline.Fleet.Ledgers;

/// <summary>An alarm not yet told.</summary>
/// <param name="Sequence">The number of its batch.</param>
/// <param name="Index">Its place in the batch.</param>
/// <param name="Event">What was seen.</param>
internal readonly record struct OpenAlarm(long Sequence, int Index, MonitorEvent Event);
