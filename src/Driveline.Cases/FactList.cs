using System.Collections;

namespace Driveline.Cases;

/// <summary>An unchanging list whose equality compares its items.</summary>
internal sealed class FactList : IReadOnlyList<DrivelineElement>, IEquatable<FactList>
{
    public static readonly FactList Empty = new([]);

    private readonly DrivelineElement[] items;

    public FactList(DrivelineElement[] items) => this.items = items;

    public int Count => items.Length;

    public DrivelineElement this[int index] => items[index];

    /// <summary>The list of those items; null when there are none: an empty list states nothing.</summary>
    public static FactList? Of(IEnumerable<DrivelineElement>? items)
    {
        if (items is null)
        {
            return null;
        }

        DrivelineElement[] copy = items.ToArray();
        if (Array.IndexOf(copy, null!) >= 0)
        {
            throw new ArgumentException("A driveline must not contain null.", nameof(items));
        }

        return copy.Length == 0 ? null : new FactList(copy);
    }

    public bool Equals(FactList? other) => other is not null && items.SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as FactList);

    public override int GetHashCode() => items.Length == 0 ? 0 : unchecked((items.Length * 397) ^ items[0].GetHashCode());

    public IEnumerator<DrivelineElement> GetEnumerator() => ((IEnumerable<DrivelineElement>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
