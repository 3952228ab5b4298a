using System.Collections.Concurrent;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A text that names something of the core, such as a thread: read once, here; written as it was read.</summary>
internal sealed class ParsedMember<T> : ReferenceMember<T>
    where T : class
{
    // Most cases state the same few threads and grades; a text is read once.
    private const int MostKept = 512;

    // Of objects: one type of dictionary serves all texts, where each of its own is a hundred types more to load.
    private readonly ConcurrentDictionary<string, object> known = new(StringComparer.Ordinal);
    private readonly TextValue text;
    private readonly TextParser<T> parser;
    private int kept;

    public ParsedMember(string name, int longest, TextParser<T> parser, string doc)
        : base(name, doc)
    {
        text = new TextValue(longest);
        this.parser = parser;
    }

    public override string ValueWords => "text";

    public override string? PermittedWords => text.PermittedWords;

    public override T FactOf(object value) => ((WrittenText<T>)value).Value;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        if (text.Read(ref reader, walk) is not { } written)
        {
            return null;
        }

        if (known.TryGetValue(written, out object? before))
        {
            return before;
        }

        if (parser(written, out T? value, out string? problem))
        {
            var meant = new WrittenText<T>(written, value!);
            if (Volatile.Read(ref kept) < MostKept && known.TryAdd(written, meant))
            {
                Interlocked.Increment(ref kept);
            }

            return meant;
        }

        walk.Error(CaseErrorKind.NotReadable, offset, problem!, null, CaseWalk.Shown(written), null);
        return null;
    }

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue(((WrittenText<T>)value).Text);

    public override void WriteSchema(Utf8JsonWriter writer) => text.WriteSchema(writer);
}
