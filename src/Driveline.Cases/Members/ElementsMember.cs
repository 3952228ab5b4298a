namespace Driveline.Cases.Members;

/// <summary>The list of driveline elements, in order from the tractor.</summary>
internal sealed class ElementsMember : ListMember
{
    /// <summary>Most elements in one list.</summary>
    public const int Most = 200;

    /// <summary>Most elements in a case, those of branches included.</summary>
    public const int MostInAll = 1000;

    public ElementsMember(string name, Func<MemberTable> table, string doc)
        : base(name, table, Most, "elements", doc)
    {
    }

    /// <summary>What is permitted in all, in words.</summary>
    public static string InAllWords => FormattableString.Invariant($"at most {MostInAll} elements in all, those of branches included");

    // The first one too many is the error; those after it are not read.
    protected override bool Admits(long offset, CaseWalk walk)
    {
        walk.Elements++;
        if (walk.Elements == MostInAll + 1)
        {
            walk.Error(CaseErrorKind.OutOfRange, offset, "A driveline may have " + InAllWords + "; this is one too many.", InAllWords, null, null);
        }

        return walk.Elements <= MostInAll;
    }

    protected override object? ListOf(IReadOnlyList<CaseFacts> items, long offset, CaseWalk walk)
    {
        DrivelineElement[] elements = [.. items.Cast<DrivelineElement>()];
        CaseChecks.Shares(elements, offset, walk);
        return FactList<DrivelineElement>.Of(elements);
    }
}
