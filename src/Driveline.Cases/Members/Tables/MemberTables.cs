namespace Driveline.Cases.Members;

/// <summary>Every object of the case file, found from the case downward through its rows.</summary>
internal static class MemberTables
{
    public static IReadOnlyList<MemberTable> All { get; } = From(CaseFileMembers.Table);

    /// <summary>Every table found from one downward, that one first.</summary>
    public static IReadOnlyList<MemberTable> From(MemberTable root)
    {
        var found = new List<MemberTable> { root };
        for (int i = 0; i < found.Count; i++)
        {
            foreach (Member member in found[i].Members)
            {
                MemberTable? table = member switch
                {
                    ObjectMember o => o.Table,
                    ListMember l => l.Table,
                    _ => null,
                };
                if (table is not null && !found.Contains(table))
                {
                    found.Add(table);
                }
            }
        }

        return found;
    }
}
