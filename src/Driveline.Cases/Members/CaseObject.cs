using Driveline.Findings;

namespace Driveline.Cases.Members;

/// <summary>
/// Any object of a file as it was read: its stated facts by the rows of its table, each with its place. What is not stated is null, or
/// NotKnown for a choice.
/// </summary>
/// <remarks>Immutable. Equality compares the facts, not their places.</remarks>
internal sealed class CaseObject : IEquatable<CaseObject>, IToldFacts
{
    private readonly StatedFact[] stated;
    private readonly CaseText text;
    private readonly CasePath path;
    private readonly ulong slots;
    private object? made;

    public CaseObject(MemberTable table, CaseText text, CasePath path, long offset, StatedFact[] stated)
    {
        Table = table;
        this.text = text;
        this.path = path;
        Offset = offset;
        this.stated = stated;
        foreach (StatedFact fact in stated)
        {
            slots |= BitOf(fact.Slot);
        }
    }

    public MemberTable Table { get; }

    /// <summary>How many members are stated, readable or not.</summary>
    public int StatedCount => stated.Length;

    /// <summary>Where it stands, e.g. "driveline[1].shearBolt"; empty for the file as a whole.</summary>
    public string Path => path.ToString();

    /// <summary>Its path and the names of what is stated there, for findings that rest on it.</summary>
    public FactPlace Place => FactPlace.Of(this);

    /// <summary>Byte at which it begins.</summary>
    public long Offset { get; }

    /// <summary>The value as its member reads and writes it; null when not stated.</summary>
    public object? this[Member member] => ValueAt(member.Slot);

    /// <summary>An object that could not be read: nothing is stated.</summary>
    public static CaseObject Unread(MemberTable table, CaseWalk walk, long offset) =>
        new(table, walk.Text, walk.Here(), offset, []);

    /// <summary>What is stated, with room for more facts, in the order of the rows: to be changed for <see cref="With"/>.</summary>
    public StatedFact[] StatedWith(IEnumerable<int> slots) =>
    [
        .. stated.Concat(slots.Where(s => IndexOf(s) < 0).Distinct().Select(s => new StatedFact(s, Offset, null))).OrderBy(s => s.Slot),
    ];

    /// <summary>The same object with other facts, in the order of the rows; they are kept.</summary>
    public CaseObject With(StatedFact[] changed) => new(Table, text, path, Offset, changed);

    /// <summary>Forgets what was made of it: for the one who keeps the facts that it was made with, and has changed them.</summary>
    public void Renew() => made = null;

    /// <summary>The fact; null when it is not stated.</summary>
    public T? Get<T>(ReferenceMember<T> member)
        where T : class => ValueAt(member.Slot) is { } value ? member.FactOf(value) : null;

    /// <summary>The fact; null when it is not stated.</summary>
    public T? Get<T>(ValueMember<T> member)
        where T : struct => ValueAt(member.Slot) is { } value ? member.FactOf(value) : null;

    /// <summary>The choice; NotKnown when it is not stated.</summary>
    public T Get<T>(ChoiceMember<T> member)
        where T : struct, Enum => (T?)ValueAt(member.Slot) ?? default;

    /// <summary>What the core makes of it, made once.</summary>
    public T Made<T>(Func<CaseObject, T> make)
        where T : class => (T)(made ??= make(this));

    /// <summary>Keeps what the core makes of it; for its one owner, before anybody has asked for it.</summary>
    public void Make(object known) => made = known;

    /// <summary>The objects of a list; none when it is not stated.</summary>
    public CaseList Get(ListMember member) => (CaseList?)ValueAt(member.Slot) ?? CaseList.Empty;

    /// <summary>A quantity in SI; null when it is not stated.</summary>
    public double? Si(Member quantity) => (double?)ValueAt(quantity.Slot);

    /// <summary>A text as it was written; null when it is not stated.</summary>
    public string? Written<T>(ParsedMember<T> member)
        where T : class => ((WrittenText<T>?)ValueAt(member.Slot))?.Text;

    /// <summary>A member that is stated, in the order of the rows.</summary>
    public Member StatedAt(int index) => Table.Members[stated[index].Slot];

    /// <summary>True when the member was stated, readable or not.</summary>
    public bool IsStated(Member member) => IndexOf(member.Slot) >= 0;

    /// <summary>True when the member of that name was stated.</summary>
    public bool IsTold(string name) => Table.Find(name) is { } member && IsStated(member);

    /// <summary>Byte at which the member begins; that of the object when it is not stated.</summary>
    public long OffsetOf(Member member) => IndexOf(member.Slot) is >= 0 and int at ? stated[at].Offset : Offset;

    public string PathOf(Member member) => Path.Length > 0 ? Path + "." + member.Name : member.Name;

    /// <summary>A contradiction between facts that are all readable, at one of them.</summary>
    public CaseError Contradiction(Member member, string message) => Contradiction(member, message, null, null);

    public CaseError Contradiction(Member member, string message, string? permitted, string? received) =>
        text.ErrorAt(OffsetOf(member), CaseErrorKind.Contradiction, PathOf(member), message, permitted, received, null);

    /// <summary>A contradiction of the object as a whole.</summary>
    public CaseError Contradiction(string message) => text.ErrorAt(Offset, CaseErrorKind.Contradiction, Path, message, null, null, null);

    public bool Equals(CaseObject? other) => other is not null && Table == other.Table && Known().SequenceEqual(other.Known());

    public override bool Equals(object? obj) => Equals(obj as CaseObject);

    public override int GetHashCode() => Known().Aggregate(17, (hash, known) => unchecked((hash * 31) + known.GetHashCode()));

    /// <summary>The kind of object and how many facts are stated.</summary>
    public override string ToString() => FormattableString.Invariant($"{Table.Name}: {Known().Count()} facts");

    private IEnumerable<(int Slot, object Value)> Known() => stated.Where(s => s.Value is not null).Select(s => (s.Slot, s.Value!));

    private object? ValueAt(int slot) => IndexOf(slot) is >= 0 and int at ? stated[at].Value : null;

    // Most members are not stated: one look tells so, but for two slots of a long table that share a bit.
    private static ulong BitOf(int slot) => 1UL << (slot & 63);

    private int IndexOf(int slot)
    {
        if ((slots & BitOf(slot)) == 0)
        {
            return -1;
        }

        for (int k = 0; k < stated.Length && stated[k].Slot <= slot; k++)
        {
            if (stated[k].Slot == slot)
            {
                return k;
            }
        }

        return -1;
    }
}
