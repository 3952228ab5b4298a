using System.Collections;

namespace Driveline.Cases;

/// <summary>An unchanging list whose equality compares its items.</summary>
internal sealed class FactList<T> : IReadOnlyList<T>, IEquatable<FactList<T>>
    where T : CaseFacts
{
    private readonly T[] items;

    public FactList(T[] items) => this.items = items;

    public static FactList<T> Empty { get; } = new([]);

    public int Count => items.Length;

    public T this[int index] => items[index];

    /// <summary>The list of those items; null when there are none: an empty list states nothing.</summary>
    public static FactList<T>? Of(IEnumerable<T>? items)
    {
        if (items is null)
        {
            return null;
        }

        T[] copy = items.ToArray();
        if (Array.IndexOf(copy, null!) >= 0)
        {
            throw new ArgumentException("A list of a case must not contain null.", nameof(items));
        }

        return copy.Length == 0 ? null : new FactList<T>(copy);
    }

    public bool Equals(FactList<T>? other) => other is not null && items.SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as FactList<T>);

    public override int GetHashCode() => items.Length == 0 ? 0 : unchecked((items.Length * 397) ^ items[0].GetHashCode());

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
