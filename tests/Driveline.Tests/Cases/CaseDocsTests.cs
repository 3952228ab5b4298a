using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

public class CaseDocsTests
{
    [Fact]
    public void Page_EveryMember_HasARow()
    {
        string page = CaseDocs.Markdown();
        foreach (MemberTable table in MemberTables.All)
        {
            Assert.Contains("\n## " + table.Name + "\n", page, StringComparison.Ordinal);
            foreach (Member member in table.Members)
            {
                Assert.Contains("\n| `" + member.Name + "`" + (member.IsRequired ? " (required) |" : " |"), page, StringComparison.Ordinal);
                Assert.Contains(member.Doc, page, StringComparison.Ordinal);
                Assert.Matches(@"[.?]$", member.Doc);   // a question of the advice's catalogue is its own doc
            }
        }
    }

    [Fact]
    public void Page_ShaftDiameter_ShowsItsRange() =>
        Assert.Contains(
            "| `shaftDiameter` | length | from 5 mm to 200 mm | Diameter of the shaft that the bolt passes through. |",
            CaseDocs.Markdown(),
            StringComparison.Ordinal);

    [Fact]
    public void Page_Rows_HaveFourCells()
    {
        foreach (string row in CaseDocs.Markdown().Split('\n').Where(l => l.StartsWith('|')))
        {
            Assert.Equal(5, row.Count(c => c == '|'));
        }
    }

    [Fact]
    public void Complaint_EveryQuestionOfTheCatalogue_IsAMemberWithAGetter() => Assert.All(FactQuestion.All, q =>
    {
        Assert.NotNull(ComplaintMembers.Table.Find(q.Code));
        Fact fact = Fact.Of(q.Code, q.Answers[q.Answers.Count - 1]);
        Assert.Equal(fact, ComplaintFacts.Empty.With(fact).FactOf(q.Code));
        Assert.Null(ComplaintFacts.Empty.With(fact).Without(q.Code).FactOf(q.Code));
    });

    [Fact]
    public void Tables_EveryMember_HasAPublicGetter()
    {
        foreach (MemberTable table in MemberTables.All)
        {
            Type facts = table.Create(table.NoValues()).GetType();
            foreach (Member member in table.Members.Where(m => m.NamedKind is ElementKind.NotKnown or ElementKind.ShearBolt && m is not FactMember))
            {
                string name = char.ToUpperInvariant(member.Name[0]) + member.Name.Substring(1);
                Assert.True(facts.GetProperty(name) is not null, table.Name + "." + name);
            }
        }
    }
}
