using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A text, perhaps one that must be readable as something.</summary>
internal sealed class TextMember : Member
{
    private readonly int longest;
    private readonly Func<string, string?>? problemOf;

    public TextMember(string name, int longest, Func<string, string?>? problemOf, string doc)
        : base(name, doc)
    {
        this.longest = longest;
        this.problemOf = problemOf;
    }

    public override string ValueWords => "text";

    public override string? PermittedWords => FormattableString.Invariant($"a text of 1 to {longest} characters");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        string? text = walk.Text(ref reader, PermittedWords!);
        if (text is null)
        {
            return null;
        }

        if (IsLengthWrong(text))
        {
            walk.Error(
                CaseErrorKind.OutOfRange,
                offset,
                FormattableString.Invariant($"This must be {PermittedWords}; got {text.Length}."),
                PermittedWords,
                CaseWalk.Shown(text),
                null);
            return null;
        }

        if (problemOf?.Invoke(text) is { } problem)
        {
            walk.Error(CaseErrorKind.NotReadable, offset, problem, null, CaseWalk.Shown(text), null);
            return null;
        }

        return text;
    }

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue((string)value);

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "string");
        writer.WriteNumber("minLength", 1);
        writer.WriteNumber("maxLength", longest);
    }

    public override void Check(object value)
    {
        string text = (string)value;
        if (IsLengthWrong(text))
        {
            throw NotPermitted(FormattableString.Invariant($"{text.Length} characters"));
        }

        if (problemOf?.Invoke(text) is { } problem)
        {
            throw new ArgumentException(Name + ": " + problem, Name);
        }

        for (int i = 0; i < text.Length; i++)
        {
            bool isPair = char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            if (char.IsSurrogate(text[i]) && !isPair)
            {
                throw new ArgumentException(Name + " holds half of a character pair (a lone surrogate).", Name);
            }

            i += isPair ? 1 : 0;
        }
    }

    private bool IsLengthWrong(string text) => text.Length > longest || string.IsNullOrWhiteSpace(text);
}
