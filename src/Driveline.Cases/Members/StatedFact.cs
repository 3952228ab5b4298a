namespace Driveline.Cases.Members;

/// <summary>A member that is stated: its value, null when it could not be read, and the byte at which its name begins.</summary>
internal readonly struct StatedFact
{
    public StatedFact(int slot, long offset, object? value)
    {
        Slot = slot;
        Offset = (int)offset;
        Value = value;
    }

    public object? Value { get; }

    public int Slot { get; }

    /// <summary>A file has at most 4 MiB.</summary>
    public int Offset { get; }
}
