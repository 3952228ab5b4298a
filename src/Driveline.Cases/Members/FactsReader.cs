using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Reads one object by its table.</summary>
internal static class FactsReader
{
    /// <summary>Reads the object at the reader's token; null, with errors, when it is none.</summary>
    public static CaseFacts? Read(ref Utf8JsonReader reader, MemberTable table, CaseWalk walk) =>
        ReadDraft(ref reader, table, walk) is { } draft ? table.Create(draft.Values) : null;

    /// <summary>The same, with the places of its members.</summary>
    public static CaseDraft? ReadDraft(ref Utf8JsonReader reader, MemberTable table, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            walk.WrongKind(ref reader, "an object (" + table.Name + ")");
            return null;
        }

        var draft = new CaseDraft(table, reader.TokenStartIndex);
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string? name = CaseWalk.TextOrNull(ref reader);
            long offset = reader.TokenStartIndex;
            Member? member = name is null ? null : table.Find(name);
            reader.Read();
            walk.Enter(name ?? "?");
            if (member is null || draft.IsStated(member))
            {
                UnknownMember.Report(walk, offset, name, member is not null, "a " + table.Name, table.Members.Select(m => m.Name));
                reader.Skip();
            }
            else
            {
                draft.State(member, offset);
                draft.Values[member.Slot] = member.Read(ref reader, walk);
            }

            walk.Leave();
        }

        foreach (Member member in table.Members)
        {
            if (member.IsRequired && !table.HasKinds && !draft.IsStated(member))
            {
                Missing(walk, draft, member);
            }
        }

        table.Across?.Invoke(draft, walk);
        return draft;
    }

    public static void Missing(CaseWalk walk, CaseDraft draft, Member member)
    {
        walk.Enter(member.Name);
        walk.Error(
            CaseErrorKind.MissingMember,
            draft.Offset,
            "\"" + member.Name + "\" must be stated: " + member.Doc,
            member.PermittedWords,
            null,
            null);
        walk.Leave();
    }
}
