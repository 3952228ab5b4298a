using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Where the reader is in the case, and what it has found wrong.</summary>
internal sealed class CaseWalk
{
    /// <summary>Most errors that are listed.</summary>
    public const int MostErrors = 1000;

    private readonly List<string> path = [];
    private readonly List<Found> found = [];
    private readonly byte[] utf8;

    public CaseWalk(byte[] utf8) => this.utf8 = utf8;

    /// <summary>True when enough is wrong: the walk ends, so that a file full of mistakes costs no more than a good one.</summary>
    public bool IsFull => found.Count > MostErrors;

    /// <summary>Elements of the driveline begun so far, those of branches included.</summary>
    public int Elements { get; set; }

    public bool HasErrors => found.Count > 0;

    public void Enter(string member) => path.Add(IsPlainName(member) ? (path.Count > 0 ? "." : string.Empty) + member : "[\"" + Shown(member) + "\"]");

    public void Enter(int index) => path.Add("[" + index.ToString(CultureInfo.InvariantCulture) + "]");

    public void Leave() => path.RemoveAt(path.Count - 1);

    public void Error(CaseErrorKind kind, long offset, string message) => Error(kind, offset, message, null, null, null);

    public void Error(CaseErrorKind kind, long offset, string message, string? permitted, string? received, string? nearest)
    {
        if (found.Count < MostErrors)
        {
            found.Add(new Found(kind, string.Concat(path), offset, message, permitted, received, nearest));
        }
        else if (found.Count == MostErrors)
        {
            found.Add(new Found(
                CaseErrorKind.TooMany,
                string.Empty,
                offset,
                FormattableString.Invariant($"There are more errors; the first {MostErrors} are listed."),
                null,
                null,
                null));
        }
    }

    /// <summary>A value of the wrong kind: says what is wanted and what stands there.</summary>
    public void WrongKind(ref Utf8JsonReader reader, string wanted)
    {
        string received = Received(ref reader);
        Error(CaseErrorKind.WrongKind, reader.TokenStartIndex, "Here " + wanted + " is wanted; got " + received + ".", wanted, received, null);
        reader.Skip();
    }

    /// <summary>The value at the reader's token as it was written, cut when long.</summary>
    public string Received(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.Null => "null (leave the member out when it is not known)",
        JsonTokenType.String => Raw(ref reader, 2),
        _ => Raw(ref reader, 0),
    };

    /// <summary>The text at the reader's token; null, with an error, when it is no text or holds half a character pair.</summary>
    public string? Text(ref Utf8JsonReader reader, string wanted)
    {
        if (reader.TokenType != JsonTokenType.String)
        {
            WrongKind(ref reader, wanted);
            return null;
        }

        string? text = TextOrNull(ref reader);
        if (text is null)
        {
            Error(CaseErrorKind.NotReadable, reader.TokenStartIndex, "This text holds half of a character pair (a lone \\uD800 to \\uDFFF).");
        }

        return text;
    }

    /// <summary>The text or member name at the reader's token; null when it holds half of a character pair.</summary>
    public static string? TextOrNull(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Everything found, in the order of the file, with lines and columns.</summary>
    public IReadOnlyList<CaseError> Errors()
    {
        var errors = new List<CaseError>(found.Count);
        long at = 0;
        int line = 1;
        int column = 1;
        foreach (Found f in found.OrderBy(f => f.Offset))
        {
            for (; at < f.Offset && at < utf8.Length; at++)
            {
                bool isNewLine = utf8[at] == (byte)'\n';
                line += isNewLine ? 1 : 0;
                bool beginsCharacter = (utf8[at] & 0xC0) != 0x80;
                column = isNewLine ? 1 : column + (beginsCharacter ? 1 : 0);
            }

            errors.Add(new CaseError(f.Kind, f.Path, line, column, f.Message, f.Permitted, f.Received, f.Nearest));
        }

        return errors;
    }

    /// <summary>A text for a message: cut at 60 characters, without control characters.</summary>
    public static string Shown(string text)
    {
        var shown = new StringBuilder();
        for (int i = 0; i < text.Length; i++)
        {
            if (i == 60)
            {
                return shown.Append('…').ToString();
            }

            shown.Append(char.IsControl(text[i]) || char.IsSurrogate(text[i]) ? '\uFFFD' : text[i]);
        }

        return shown.ToString();
    }

    private string Raw(ref Utf8JsonReader reader, int quotes) =>
        Shown(Encoding.UTF8.GetString(utf8, (int)reader.TokenStartIndex, Math.Min(reader.ValueSpan.Length + quotes, 240)));

    private static bool IsPlainName(string name) =>
        name.Length is > 0 and <= 60 && name.All(c => c is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '_');

    private sealed class Found
    {
        public Found(CaseErrorKind kind, string path, long offset, string message, string? permitted, string? received, string? nearest)
        {
            Kind = kind;
            Path = path;
            Offset = offset;
            Message = message;
            Permitted = permitted;
            Received = received;
            Nearest = nearest;
        }

        public CaseErrorKind Kind { get; }

        public string Path { get; }

        public long Offset { get; }

        public string Message { get; }

        public string? Permitted { get; }

        public string? Received { get; }

        public string? Nearest { get; }
    }
}
