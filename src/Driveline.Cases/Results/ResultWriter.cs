using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace Driveline.Cases.Results;

/// <summary>Writes a result as UTF-8 JSON into a room of its own, byte by byte as Utf8JsonWriter would.</summary>
/// <remarks>
/// The rows know what they write: nothing is checked, and names and words of enums come encoded. A row calls <see cref="Name(ResultWord)"/>
/// and then one value; a list calls <see cref="Item"/> before each of its values. One room for each thread is kept for its next result.
/// </remarks>
internal sealed partial class ResultWriter
{
    private const int FirstRoom = 1 << 15;
    private const int MostKept = 1 << 20;
    private const int LongestNumber = 32;

    // Deeper than any result is nested.
    private const int DeepestIndent = 32;

    private static readonly byte[] Indents = Encoding.UTF8.GetBytes(Environment.NewLine + new string(' ', 2 * DeepestIndent));
    private static readonly int NewLine = Environment.NewLine.Length;
    private static readonly ResultWord NullWord = ResultWord.Bare("null");
    private static readonly ResultWord TrueWord = ResultWord.Bare("true");
    private static readonly ResultWord FalseWord = ResultWord.Bare("false");

    [ThreadStatic]
    private static ResultWriter? spare;

    private readonly WrittenNumbers numbers = new();
    private byte[] room = new byte[FirstRoom];
    private int length;
    private int depth;
    private bool isIndented;
    private bool isFirst;

    private ResultWriter()
    {
    }

    /// <summary>Letters, degree and middle dots stay readable; whatever could end a script or a string is escaped.</summary>
    public static JavaScriptEncoder Encoder { get; } = JavaScriptEncoder.Create(UnicodeRanges.All);

    /// <summary>What is written.</summary>
    public ReadOnlySpan<byte> Written => room.AsSpan(0, length);

    /// <summary>A writer without anything in it; <see cref="Leave"/> gives it back.</summary>
    public static ResultWriter Take(bool isIndented)
    {
        ResultWriter taken = spare ?? new ResultWriter();
        spare = null;
        taken.isIndented = isIndented;
        taken.isFirst = true;
        taken.length = 0;
        taken.depth = 0;
        taken.numbers.Forget();
        return taken;
    }

    /// <summary>Leaves its room to the next result of this thread; what was written is not to be looked at any more.</summary>
    public void Leave()
    {
        Forget();
        if (room.Length <= MostKept)
        {
            spare = this;
        }
    }

    /// <summary>What is written, as text.</summary>
    public override string ToString() => Encoding.UTF8.GetString(room, 0, length);

    /// <summary>Writes it to a stream.</summary>
    public void CopyTo(Stream stream) => stream.Write(room, 0, length);

    /// <summary>The name of the next member, as <see cref="ResultWord.Name"/> gives it.</summary>
    public void Name(ResultWord name)
    {
        if (isIndented)
        {
            Next();
            Append(name.Padded.AsSpan(1, name.Length - 1));
            room[length++] = (byte)' ';
            return;
        }

        int begin = isFirst ? 1 : 0;
        isFirst = false;
        Put(name, begin);
    }

    /// <summary>The name of the next member, where it is no name of a row.</summary>
    public void Name(string name)
    {
        Next();
        Text(name);
        Append(isIndented ? ": "u8 : ":"u8);
    }

    /// <summary>Begins the next item of a list.</summary>
    public void Item() => Next();

    public void StartObject() => Start((byte)'{');

    public void EndObject() => End((byte)'}');

    public void StartArray() => Start((byte)'[');

    public void EndArray() => End((byte)']');

    public void Null() => Put(NullWord, 0);

    public void Flag(bool value) => Put(value ? TrueWord : FalseWord, 0);

    public void Word(ResultWord word) => Put(word, 0);

    public void Whole(long value)
    {
        Reserve(LongestNumber);
        length += WrittenNumbers.Put(value, room.AsSpan(length));
    }

    /// <summary>A finite number.</summary>
    public void Number(double value)
    {
        Reserve(LongestNumber);
        length += numbers.Put(value, room.AsSpan(length));
    }

    /// <summary>A text; null as null.</summary>
    public void Text(string? text)
    {
        if (text is null)
        {
            Null();
            return;
        }

        Reserve((3 * text.Length) + 2);
        int at = length;
        room[at++] = (byte)'"';
        int written = Plain(text, room.AsSpan(at));
        if (written < 0)
        {
            string encoded = Encoder.Encode(text);
            Reserve((3 * encoded.Length) + 2);
            written = Encoding.UTF8.GetBytes(encoded, 0, encoded.Length, room, at);
        }

        at += written;
        room[at++] = (byte)'"';
        length = at;
    }

#if NET
    private static readonly System.Buffers.SearchValues<char> Unescaped = System.Buffers.SearchValues.Create(
        Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c).Where(c => Encoder.Encode(c.ToString()).Length == 1).ToArray());

    // Most texts are ASCII with nothing to escape; -1 for any other.
    private static int Plain(string text, Span<byte> to)
    {
        if (text.AsSpan().ContainsAnyExcept(Unescaped))
        {
            return -1;
        }

        Ascii.FromUtf16(text, to, out int written);
        return written;
    }
#else
    private static int Plain(string text, Span<byte> to) => text.Length == 0 ? 0 : -1;
#endif

    // A comma when something stands before it, and a line of its own.
    private void Next()
    {
        Reserve(1);
        if (!isFirst)
        {
            room[length++] = (byte)',';
        }

        isFirst = false;
        BreakLine();
    }

    private void Start(byte bracket)
    {
        Reserve(1);
        room[length++] = bracket;
        depth++;
        isFirst = true;
    }

    private void End(byte bracket)
    {
        depth--;
        if (!isFirst)
        {
            BreakLine();
        }

        isFirst = false;
        Reserve(1);
        room[length++] = bracket;
    }

    private void BreakLine()
    {
        if (isIndented)
        {
            Append(Indents.AsSpan(0, NewLine + (2 * depth)));
        }
    }

    private void Put(ResultWord word, int begin)
    {
        int count = word.Length - begin;
        if (count <= ResultWord.AtOnce)
        {
            Reserve(ResultWord.AtOnce);
            word.Padded.AsSpan(begin, ResultWord.AtOnce).CopyTo(room.AsSpan(length, ResultWord.AtOnce));
            length += count;
        }
        else
        {
            Append(word.Padded.AsSpan(begin, count));
        }
    }

    private void Append(ReadOnlySpan<byte> bytes)
    {
        Reserve(bytes.Length + 1);
        bytes.CopyTo(room.AsSpan(length));
        length += bytes.Length;
    }

    private void Reserve(int more)
    {
        if (room.Length - length < more)
        {
            Array.Resize(ref room, Math.Max(2 * room.Length, length + more));
        }
    }
}
