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
        var values = new object?[table.Members.Count];
        long[] offsets = new long[table.Members.Count];
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string? name = CaseWalk.TextOrNull(ref reader);
            long offset = reader.TokenStartIndex;
            Member? member = name is null ? null : table.Find(name);
            reader.Read();
            walk.Enter(name ?? "?");
            if (member is null || offsets[member.Slot] > 0)
            {
                UnknownMember.Report(walk, offset, name, member is not null,
                    ("aeiou".IndexOf(table.Name[0]) < 0 ? "a " : "an ") + table.Name, table.Members.Select(m => m.Name));
                reader.Skip();
            }
            else
            {
                offsets[member.Slot] = offset;
                values[member.Slot] = member.Read(ref reader, walk);
            }

            walk.Leave();
        }

        var read = new CaseObject(table, walk.Text, walk.Path, begin, values, offsets);
        foreach (Member member in table.Members)
        {
            if (member.IsRequired && !table.HasKinds && !read.IsStated(member))
            {
                walk.Missing(read, member);
            }
        }

        table.Across?.Invoke(read, walk);
        return read;
    }
}
