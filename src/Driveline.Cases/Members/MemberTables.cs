namespace Driveline.Cases.Members;

/// <summary>Every object of the case file, found from the case downward through its rows.</summary>
internal static class MemberTables
{
    public static IReadOnlyList<MemberTable> All { get; } = Find();

    private static List<MemberTable> Find()
    {
        var found = new List<MemberTable> { CaseFileMembers.Table };
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
