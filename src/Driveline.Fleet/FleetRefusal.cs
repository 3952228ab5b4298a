namespace Driveline.Fleet;

/// <summary>Why something was refused: the field, what it must be, and what came. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.FleetRefusal")]
public sealed class FleetRefusal
{
    internal FleetRefusal(string field, string range, string received)
    {
        Field = field;
        Range = range;
        Received = received;
    }

    /// <summary>The field, e.g. "sequence".</summary>
    [Id(0)]
    public string Field { get; }

    /// <summary>What it must be, e.g. "from 5 to 20".</summary>
    [Id(1)]
    public string Range { get; }

    /// <summary>What came.</summary>
    [Id(2)]
    public string Received { get; }

    /// <summary>One sentence, e.g. "sequence must be from 5 to 20; got 3."</summary>
    public override string ToString() => Field + " must be " + Range + "; got " + Received + ".";
}
