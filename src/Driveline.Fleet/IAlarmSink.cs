namespace Driveline.Fleet;

/// <summary>Where the alarms of a silo go. One for each silo; called by many drivelines at once.</summary>
/// <remarks>
/// Each alarm is told at least once: until this has returned without an exception it is told again, by this silo or by another one. Those
/// of one driveline come in the order of their ids, so that a receiver drops repeats by the highest id it has of each driveline
/// (<see cref="SeenAlarms"/>).
/// </remarks>
public interface IAlarmSink
{
    /// <summary>Takes alarms of one driveline; returning acknowledges all of them.</summary>
    /// <param name="alarms">Alarms, in the order of their ids.</param>
    /// <param name="stopping">Set when the silo stops.</param>
    Task DeliverAsync(IReadOnlyList<FleetAlarm> alarms, CancellationToken stopping);
}
