using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

/// <summary>Every documented member changes an answer of some shipped case; what cannot is no member.</summary>
public class MembersThatCountTests
{
    // They tell what or whence, and are echoed at most.
    private static readonly string[] Identity = ["$schema", "format", "title", "notes", "name", "source", "letter"];

    [Fact]
    public void EveryMember_OfEveryTable_ChangesAnAnswer()
    {
        var finder = new MembersThatCount();
        string[] dead =
        [
            .. MemberTables.All.Where(t => t != LetterMembers.Table)
                .SelectMany(t => t.Members.Select(m => (Table: t, Member: m, Name: t.Name + "." + m.Name)))
                .Where(p => !Identity.Contains(p.Member.Name) && p.Member.NamedKind == ElementKind.NotKnown)
                .Where(p => !Counts(finder, p.Table, p.Member, p.Name))
                .Select(p => p.Name),
        ];
        Assert.True(dead.Length == 0, "These change no answer: " + string.Join(", ", dead));
    }

    private static bool Counts(MembersThatCount finder, MemberTable table, Member member, string name) =>
        MembersByHand.Find(name) is not { } put ? finder.Counts(table, member)
            : MembersByHand.Instead(name) is { } others ? finder.CountsBetween(put.Demo, put.Place, put.Facts, others)
            : finder.CountsIn(put.Demo, put.Place, put.Facts, member);
}
