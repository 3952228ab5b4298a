using System.Text;
using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>The page that describes every member of the case file, made from the same rows as the reader.</summary>
internal static class CaseDocs
{
    /// <summary>The page as Markdown: a section for each object, a table row for each member.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder();
        page.Append("# Case file\n\n")
            .Append("A case file is one JSON object in UTF-8, at most 4 MiB, without comments. Leave out what is not known.\n")
            .Append("A quantity is a text with its unit, such as `\"650 lbf.ft\"`, `\"1 3/4 in\"`, `\"35 hp\"` or `\"12,5 mm\"`; `hp` "
                + "is the mechanical horsepower, `PS` the metric one.\n")
            .Append("Where a band is taken, write one quantity, or `{ \"low\": …, \"expected\": …, \"high\": … }`; `low` alone means "
                + "*at least*, and `high` may be `\"unbounded\"`. `source` says where its numbers stand: `\"parts book, page 12\"`.\n");
        Append(page, MemberTables.All);
        return page.ToString();
    }

    /// <summary>Appends a section for each table.</summary>
    internal static void Append(StringBuilder page, IEnumerable<MemberTable> tables)
    {
        foreach (MemberTable table in tables)
        {
            page.Append("\n## ").Append(table.Name).Append("\n\n").Append(table.Doc).Append("\n\n")
                .Append("| member | value | permitted | meaning |\n|---|---|---|---|\n");
            foreach (Member member in table.Members)
            {
                page.Append("| `").Append(member.Name).Append('`').Append(member.IsRequired ? " (required)" : string.Empty)
                    .Append(" | ").Append(Link(member))
                    .Append(" | ").Append(member.PermittedWords ?? string.Empty)
                    .Append(" | ").Append(member.Doc).Append(Owners(member)).Append(" |\n");
            }
        }
    }

    private static string Link(Member member) => member switch
    {
        ObjectMember o => "[" + o.Table.Name + "](#" + o.Table.Name.ToLowerInvariant() + ")",
        ListMember l => "list of [" + l.Table.Name + "](#" + l.Table.Name + ")",
        _ => member.ValueWords,
    };

    private static string Owners(Member member) => member.Kinds is null
        ? string.Empty
        : " For: " + string.Join(
            ", ", ElementMembers.Table.Members.Where(m => m.NamedKind != ElementKind.NotKnown && member.Kinds.Contains(m.NamedKind))
            .Select(m => m.Name)) + ".";
}
