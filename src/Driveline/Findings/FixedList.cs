using System.Collections;

namespace Driveline.Findings;

/// <summary>An array as a list that nobody who gets it can change; its owner goes on reading the array.</summary>
internal sealed class FixedList<T>(T[] items) : IReadOnlyList<T>
{
    public T[] Items { get; } = items;

    public int Count => Items.Length;

    public T this[int index] => Items[index];

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => Items.GetEnumerator();
}
