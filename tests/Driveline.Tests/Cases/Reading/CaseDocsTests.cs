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
    public void Complaint_EveryQuestionOfTheCatalogue_IsAMember() => Assert.All(FactQuestion.All, q =>
    {
        string answer = q.Answers[q.Answers.Count - 1];
        CaseFile file = CaseFile.Empty.With("complaint." + q.Code, "\"" + answer + "\"").Case!;
        Assert.Equal(Fact.Of(q.Code, answer), ComplaintMembers.FactOf(file.Part(CaseFileMembers.Complaint), q.Code));
        Assert.Null(ComplaintMembers.FactOf(file.With("complaint." + q.Code, null).Case!.Part(CaseFileMembers.Complaint), q.Code));
    });
}
