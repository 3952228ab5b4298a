namespace Driveline.Cases.Members;

/// <summary>The rows of letter.</summary>
internal static class LetterMembers
{
    private const int Longest = 100;

    public static readonly MemberTable Table = new(
        "letter", "The head of the letter that answers a complaint. Only labels: no answer depends on them.");

    public static readonly TextMember To = Table.Text("to", Longest, "Whom the letter goes to.");
    public static readonly TextMember From = Table.Text("from", Longest, "Who signs it.");
    public static readonly TextMember Machine = Table.Text("machine", Longest, "Make and model of the machine, as its owner says it.");
    public static readonly TextMember Serial = Table.Text("serial", Longest, "Serial number of the machine.");
    public static readonly TextMember Reference = Table.Text("reference", Longest, "The writer's own reference.");
}
