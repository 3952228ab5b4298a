using System.Text;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>The rows of a table by their names as UTF-8, so that a name in a file is found without making a text of it.</summary>
internal sealed class MemberNames
{
    private readonly (byte[] Name, Member Member)?[] slots;

    public MemberNames(IReadOnlyList<Member> members)
    {
        int size = 8;
        while (size < 3 * members.Count)
        {
            size *= 2;
        }

        slots = new (byte[] Name, Member Member)?[size];
        foreach (Member member in members)
        {
            byte[] name = Encoding.UTF8.GetBytes(member.Name);
            int at = Hash(name) & (size - 1);
            while (slots[at] is not null)
            {
                at = (at + 1) & (size - 1);
            }

            slots[at] = (name, member);
        }
    }

    /// <summary>The member whose name stands at the reader's token; null when there is none, or when it is written with escapes.</summary>
    public Member? Find(ref Utf8JsonReader reader)
    {
        ReadOnlySpan<byte> name = reader.ValueSpan;
        int at = Hash(name) & (slots.Length - 1);
        while (slots[at] is { } held)
        {
            if (name.SequenceEqual(held.Name))
            {
                return held.Member;
            }

            at = (at + 1) & (slots.Length - 1);
        }

        return null;
    }

    private static int Hash(ReadOnlySpan<byte> name)
    {
        int hash = name.Length;
        foreach (byte letter in name)
        {
            hash = unchecked((hash * 31) + letter);
        }

        return hash ^ (hash >> 7);
    }
}
