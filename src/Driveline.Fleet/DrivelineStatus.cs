using System.Text;
using Driveline.Monitoring;

namespace Driveline.Fleet;

/// <summary>How a driveline stands. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.DrivelineStatus")]
public sealed class DrivelineStatus
{
    private DrivelineStatus(string driveline, string silo)
    {
        Driveline = driveline;
        Silo = silo;
    }

    /// <summary>Its name.</summary>
    [Id(0)]
    public string Driveline { get; }

    /// <summary>The silo that holds it.</summary>
    [Id(1)]
    public string Silo { get; }

    /// <summary>All batches up to this number are stored.</summary>
    [Id(2)]
    public long AcknowledgedThrough { get; private init; }

    /// <summary>Batches that wait for one before them.</summary>
    [Id(3)]
    public int Waiting { get; private init; }

    /// <summary>Batches that were lost for good.</summary>
    [Id(4)]
    public long Lost { get; private init; }

    /// <summary>Alarms stored and not yet taken by the sink.</summary>
    [Id(5)]
    public int OpenAlarms { get; private init; }

    /// <summary>Samples taken.</summary>
    [Id(6)]
    public long Samples { get; private init; }

    /// <summary>Trips; 0 as well when no speed behind the protection is measured.</summary>
    [Id(7)]
    public long Trips { get; private init; }

    /// <summary>Overloads that have ended.</summary>
    [Id(8)]
    public long Overloads { get; private init; }

    /// <summary>Slips that have ended.</summary>
    [Id(9)]
    public long Slips { get; private init; }

    /// <summary>Highest torque, N·m; NaN before the first sample.</summary>
    [Id(10)]
    public double HighestNm { get; private init; }

    /// <summary>The overload level, N·m.</summary>
    [Id(11)]
    public double OverloadNm { get; private init; }

    /// <summary>Hours the PTO has turned.</summary>
    [Id(12)]
    public double TurnedHours { get; private init; }

    /// <summary>Size of the stored state, B.</summary>
    [Id(13)]
    public int StateBytes { get; private init; }

    /// <summary>Orders the worst first: most trips, then most overloads, then the highest torque for its overload level.</summary>
    public static IComparer<DrivelineStatus> ByWorst { get; } = Comparer<DrivelineStatus>.Create(WorstFirst);

    /// <summary>Highest torque over the overload level; 0 before the first sample.</summary>
    internal double Load => double.IsNaN(HighestNm) ? 0 : HighestNm / OverloadNm;

    internal static int WorstFirst(DrivelineStatus left, DrivelineStatus right)
    {
        int order = right.Trips.CompareTo(left.Trips);
        order = order != 0 ? order : right.Overloads.CompareTo(left.Overloads);
        order = order != 0 ? order : right.Load.CompareTo(left.Load);
        return order != 0 ? order : string.CompareOrdinal(left.Driveline, right.Driveline);
    }

    /// <summary>True for a name a driveline may have.</summary>
    internal static bool IsName(string name) => name.Length is > 0 and <= 64 && Ascii.IsValid(name)
        && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_');

    internal static DrivelineStatus Of(string driveline, string silo, Ledgers.BatchLedger ledger, long stored, int stateBytes)
    {
        OverloadMonitor monitor = ledger.Monitor;
        MonitorHistory history = monitor.History;
        return new DrivelineStatus(driveline, silo)
        {
            AcknowledgedThrough = stored,
            Waiting = ledger.Waiting,
            Lost = ledger.Lost,
            OpenAlarms = ledger.Outbox.Count,
            Samples = monitor.Counts.Taken,
            Trips = history.Trips ?? 0,
            Overloads = history.Overloads,
            Slips = history.Slips ?? 0,
            HighestNm = history.HighestTorque?.NewtonMeters ?? double.NaN,
            OverloadNm = monitor.Settings.OverloadFromNm,
            TurnedHours = history.Turned.Hours,
            StateBytes = stateBytes,
        };
    }
}
