using System.Collections;

namespace Driveline.Cases.Members;

/// <summary>The objects of a list, in the order of the file. Equal when the objects are equal.</summary>
internal sealed class CaseList : IReadOnlyList<CaseObject>, IEquatable<CaseList>
{
    private readonly CaseObject[] items;
    private IReadOnlyList<CaseObject>? made;

    public CaseList(List<CaseObject> items)
        : this(items.ToArray())
    {
    }

    /// <summary>A list of items that the caller hands over.</summary>
    public CaseList(CaseObject[] items) => this.items = items;

    public static CaseList Empty { get; } = new(Array.Empty<CaseObject>());

    public int Count => items.Length;

    public CaseObject this[int index] => items[index];

    /// <summary>What is made of the list, once.</summary>
    public IReadOnlyList<CaseObject> Made(Func<CaseList, IReadOnlyList<CaseObject>> make) => made ??= make(this);

    public bool Equals(CaseList? other) => other is not null && items.SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as CaseList);

    public override int GetHashCode() => items.Length == 0 ? 0 : unchecked((items.Length * 397) ^ items[0].GetHashCode());

    public IEnumerator<CaseObject> GetEnumerator() => ((IEnumerable<CaseObject>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
