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
    public static IEnumerable<CaseObject> All(CaseList list) => list.SelectMany(e => All(e.Get(ElementMembers.Driveline)).Prepend(e));

    /// <summary>The objects that a device's row states in a list and its branches, in order from the tractor.</summary>
    public static IEnumerable<CaseObject> All(CaseList list, ObjectMember device) => All(list).Select(e => e.Get(device))
        .OfType<CaseObject>();

    private static Member? Naming(CaseObject element) =>
        element.Table.Members.FirstOrDefault(m => m.NamedKind != ElementKind.NotKnown && element[m] is not null);
}
