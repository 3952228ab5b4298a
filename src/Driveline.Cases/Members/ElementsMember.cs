namespace Driveline.Cases.Members;

/// <summary>The list of driveline elements, in order from the tractor.</summary>
internal sealed class ElementsMember : ListMember
{
    /// <summary>Most elements in one list.</summary>
    public const int Most = 200;

    public ElementsMember(string name, Func<MemberTable> table, string doc)
        : base(name, table, Most, "elements", doc)
    {
    }

    protected override object? ListOf(IReadOnlyList<CaseFacts> items, long offset, CaseWalk walk)
    {
        DrivelineElement[] elements = [.. items.Cast<DrivelineElement>()];
        CaseChecks.Shares(elements, offset, walk);
        return FactList<DrivelineElement>.Of(elements);
    }
}
