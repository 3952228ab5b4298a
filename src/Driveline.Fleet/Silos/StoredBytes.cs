namespace Driveline.Fleet.Silos;

/// <summary>A record of a store: bytes whose form is ours.</summary>
internal abstract class StoredBytes
{
    public byte[] Bytes { get; set; } = [];
}
