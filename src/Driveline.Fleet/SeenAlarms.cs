namespace Driveline.Fleet;

/// <summary>Drops alarms that were told before; keeps the highest id of each driveline. Thread-safe.</summary>
public sealed class SeenAlarms
{
    private readonly Dictionary<string, AlarmId> highest = new(StringComparer.Ordinal);
    private readonly Lock turn = new();

    /// <summary>True when the alarm had not been told yet; from then on it has.</summary>
    public bool IsNew(AlarmId id)
    {
        lock (turn)
        {
            if (highest.TryGetValue(id.Driveline, out AlarmId before) && id <= before)
            {
                return false;
            }

            highest[id.Driveline] = id;
            return true;
        }
    }
}
