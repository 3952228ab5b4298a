using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>Reads lists whose items are read one by one.</summary>
internal static class ListOf
{
    /// <summary>Reads an item at the reader's token; null after an error.</summary>
    public delegate T? ItemReader<T>(ref Utf8JsonReader reader, CaseWalk walk, int index)
        where T : class;

    /// <summary>The items of a list; null after an error.</summary>
    public static List<T>? Read<T>(ref Utf8JsonReader reader, CaseWalk walk, string wanted, int least, int most, ItemReader<T> item)
        where T : class
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            walk.WrongKind(ref reader, wanted);
            return null;
        }

        long offset = reader.TokenStartIndex;
        var items = new List<T>();
        int count = 0;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (count >= most)
            {
                count++;
                reader.Skip();
                continue;
            }

            walk.Enter(count);
            if (item(ref reader, walk, count) is { } read)
            {
                items.Add(read);
            }

            walk.Leave();
            count++;
        }

        if (count < least || count > most)
        {
            string received = FormattableString.Invariant($"{count}");
            walk.Error(CaseErrorKind.OutOfRange, offset, "Here " + wanted + " is wanted; got " + received + ".", wanted, received, null);
            return null;
        }

        return items.Count == count ? items : null;
    }
}
