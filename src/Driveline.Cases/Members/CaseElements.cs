namespace Driveline.Cases.Members;

/// <summary>What an element of the driveline is, by the one member that names its kind.</summary>
internal static class CaseElements
{
    public static ElementKind KindOf(CaseObject element) => Naming(element)?.NamedKind ?? ElementKind.NotKnown;

    /// <summary>What you call it; null when it has no name.</summary>
    public static string? NameOf(CaseObject element) => Naming(element) switch
    {
        TextMember named => element.Get(named),
        ObjectMember device => element.Get(device)!.Table.Find("name") is TextMember name ? element.Get(device)!.Get(name) : null,
        _ => null,
    };

    /// <summary>The elements of a list with all in their branches, each before its own branch.</summary>
    public static IReadOnlyList<CaseObject> All(CaseList list) => list.Made(AllOf);

    /// <summary>The objects that a device's row states in a list and its branches, in order from the tractor.</summary>
    public static IEnumerable<CaseObject> All(CaseList list, ObjectMember device) => All(list).Select(e => e.Get(device))
        .OfType<CaseObject>();

    private static IReadOnlyList<CaseObject> AllOf(CaseList list)
    {
        bool hasBranch = false;
        for (int k = 0; k < list.Count && !hasBranch; k++)
        {
            hasBranch = list[k].Get(ElementMembers.Driveline).Count > 0;
        }

        if (!hasBranch)
        {
            return list;
        }

        var all = new List<CaseObject>(list.Count);
        AddTo(all, list);
        return all;
    }

    private static void AddTo(List<CaseObject> all, CaseList list)
    {
        for (int k = 0; k < list.Count; k++)
        {
            all.Add(list[k]);
            AddTo(all, list[k].Get(ElementMembers.Driveline));
        }
    }

    private static Member? Naming(CaseObject element)
    {
        IReadOnlyList<Member> naming = element.Table.Naming;
        for (int k = 0; k < naming.Count; k++)
        {
            if (element[naming[k]] is not null)
            {
                return naming[k];
            }
        }

        return null;
    }
}
