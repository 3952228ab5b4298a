using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

public class CaseGeneratorTests
{
    /// <summary>The laws would say little of a member that never stands in a good case.</summary>
    [Fact]
    public void Make_ManySeeds_StatesEveryMemberOfTheFormat()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (int seed = 0; seed < 800; seed++)
        {
            See(CaseGenerator.Make(new Random(seed)).Facts, seen);
        }

        string[] never = [.. MemberTables.All.SelectMany(t => t.Members.Select(m => t.Name + "." + m.Name)).Where(m => !seen.Contains(m))];
        Assert.True(never.Length == 0, string.Join(", ", never));
    }

    private static void See(CaseObject facts, HashSet<string> seen)
    {
        foreach (Member member in facts.Table.Members.Where(m => facts[m] is not null))
        {
            seen.Add(facts.Table.Name + "." + member.Name);
            if (member is ObjectMember inner)
            {
                See(facts.Get(inner)!, seen);
            }

            foreach (CaseObject item in member is ListMember list ? facts.Get(list) : CaseList.Empty)
            {
                See(item, seen);
            }
        }
    }
}
