using Orleans.Storage;

namespace Driveline.Fleet.Silos;

/// <summary>Stores our bytes as they are.</summary>
internal sealed class StoredBytesSerializer : IGrainStorageSerializer
{
    public BinaryData Serialize<T>(T? input) => new(((StoredBytes)(object)input!).Bytes);

    public T Deserialize<T>(BinaryData input)
    {
        T record = Activator.CreateInstance<T>();
        ((StoredBytes)(object)record!).Bytes = input.ToArray();
        return record;
    }
}
