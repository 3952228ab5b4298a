using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Reads and describes a text of a length.</summary>
internal sealed class TextValue
{
    private readonly int longest;

    public TextValue(int longest)
    {
        this.longest = longest;
        PermittedWords = FormattableString.Invariant($"a text of 1 to {longest} characters");
    }

    public string PermittedWords { get; }

    /// <summary>The text at the reader's token; null after an error.</summary>
    public string? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        string? text = walk.TextOf(ref reader, PermittedWords);
        if (text is null || (text.Length <= longest && !string.IsNullOrWhiteSpace(text)))
        {
            return text;
        }

        walk.Error(
            CaseErrorKind.OutOfRange,
            offset,
            FormattableString.Invariant($"This must be {PermittedWords}; got {text.Length}."),
            PermittedWords,
            CaseWalk.Shown(text),
            null);
        return null;
    }

    public void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "string");
        writer.WriteNumber("minLength", 1);
        writer.WriteNumber("maxLength", longest);
    }
}
