using System.Collections.Concurrent;
using Driveline.Fleet.Silos;
using Orleans.Storage;

namespace Driveline.Fleet.Tests;

/// <summary>A store whose writes may fail, before or after they were done.</summary>
internal sealed class FaultyStore(int everyth) : IGrainStorage
{
    private readonly ConcurrentDictionary<string, byte[]> records = new();
    private int writes;

    /// <summary>Writes of states that failed.</summary>
    public int Failed { get; private set; }

    public Task ReadStateAsync<T>(string stateName, GrainId grainId, IGrainState<T> grainState)
    {
        T record = Activator.CreateInstance<T>();
        grainState.RecordExists = records.TryGetValue(stateName + grainId, out byte[]? bytes);
        ((StoredBytes)(object)record!).Bytes = bytes ?? [];
        grainState.State = record;
        return Task.CompletedTask;
    }

    public async Task WriteStateAsync<T>(string stateName, GrainId grainId, IGrainState<T> grainState)
    {
        int write = Interlocked.Increment(ref writes);
        await Task.Delay(1);
        bool fails = stateName == "ledger" && write % everyth == 0;
        Failed += fails ? 1 : 0;
        if (fails && write % (2 * everyth) == 0)
        {
            throw new IOException("not written");
        }

        records[stateName + grainId] = ((StoredBytes)(object)grainState.State!).Bytes;
        grainState.RecordExists = true;
        if (fails)
        {
            throw new IOException("written, and then the line broke");
        }
    }

    public Task ClearStateAsync<T>(string stateName, GrainId grainId, IGrainState<T> grainState)
    {
        records.TryRemove(stateName + grainId, out _);
        grainState.RecordExists = false;
        return Task.CompletedTask;
    }
}
