namespace Driveline.Cases.Members;

/// <summary>The list of the owner's options.</summary>
internal sealed class OptionsMember : ListMember
{
    /// <summary>Most options in one list.</summary>
    public const int Most = 20;

    public OptionsMember(string name, Func<MemberTable> table, string doc)
        : base(name, table, Most, "options", doc)
    {
    }

    protected override object? ListOf(IReadOnlyList<CaseFacts> items, long offset, CaseWalk walk) =>
        FactList<CostOptionFacts>.Of(items.Cast<CostOptionFacts>());
}
