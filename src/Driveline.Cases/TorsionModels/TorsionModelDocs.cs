using System.Text;
using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>The tables of every member of a model file, made from the same rows as the reader.</summary>
internal static class TorsionModelDocs
{
    /// <summary>The tables as Markdown: a section for each object, a table row for each member.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder();
        CaseDocs.Append(page, MemberTables.From(ModelMembers.Table));
        return page.ToString();
    }
}
