using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Reads one object by its table.</summary>
internal static class ObjectReader
{
    /// <summary>Reads the object at the reader's token; null, with errors, when it is none.</summary>
    public static CaseObject? Read(ref Utf8JsonReader reader, MemberTable table, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            walk.WrongKind(ref reader, "an object (" + table.Name + ")");
            return null;
        }

        long begin = reader.TokenStartIndex;
        int first = walk.Stated.Begin;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            long offset = reader.TokenStartIndex;
            Member? member = table.Find(ref reader);
            string? name = member is null ? CaseWalk.TextOrNull(ref reader) : member.Name;
            reader.Read();
            walk.Enter(name ?? "?");
            if (member is null || walk.Stated.Has(first, member.Slot))
            {
                UnknownMember.Report(walk, offset, name, member is not null,
                    ("aeiou".IndexOf(table.Name[0]) < 0 ? "a " : "an ") + table.Name, table.Members.Select(m => m.Name));
                reader.Skip();
            }
            else
            {
                walk.Stated.Add(first, new StatedFact(member.Slot, offset, member.Read(ref reader, walk)));
            }

            walk.Leave();
        }

        var read = new CaseObject(table, walk.Text, walk.Here(), begin, walk.Stated.End(first));
        for (int k = 0; k < table.Required.Count && !table.HasKinds; k++)
        {
            if (!read.IsStated(table.Required[k]))
            {
                walk.Missing(read, table.Required[k]);
            }
        }

        table.Across?.Invoke(read, walk);
        return read;
    }
}
