namespace Driveline.Cases.Members;

/// <summary>A quantity under a name of the file's own, and where it stands.</summary>
internal sealed class NamedQuantity
{
    public NamedQuantity(string name, double si, long offset)
    {
        Name = name;
        Si = si;
        Offset = offset;
    }

    public string Name { get; }

    public double Si { get; }

    public long Offset { get; }
}
