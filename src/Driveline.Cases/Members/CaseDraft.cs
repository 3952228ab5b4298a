namespace Driveline.Cases.Members;

/// <summary>An object of the case file while it is being read: its values so far, and where each member stands.</summary>
internal sealed class CaseDraft
{
    private readonly long[] offsets;

    public CaseDraft(MemberTable table, long offset)
    {
        Table = table;
        Offset = offset;
        Values = table.NoValues();
        offsets = new long[Values.Length];
    }

    public MemberTable Table { get; }

    /// <summary>Where the object begins.</summary>
    public long Offset { get; }

    public object?[] Values { get; }

    /// <summary>True when the member was stated, readable or not.</summary>
    public bool IsStated(Member member) => offsets[member.Slot] > 0;

    public void State(Member member, long offset) => offsets[member.Slot] = offset;

    public long OffsetOf(Member member) => IsStated(member) ? offsets[member.Slot] : Offset;

    public T? Value<T>(Member member)
        where T : struct => (T?)Values[member.Slot];

    public T? Reference<T>(Member member)
        where T : class => (T?)Values[member.Slot];
}
