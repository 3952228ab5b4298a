namespace Driveline.Torsion;

/// <summary>One event as the run keeps it.</summary>
internal readonly struct EventRecord
{
    public EventRecord(TransientEventKind kind, int link, double time)
    {
        Kind = kind;
        Link = link;
        Time = time;
    }

    public TransientEventKind Kind { get; }

    public int Link { get; }

    public double Time { get; }
}
