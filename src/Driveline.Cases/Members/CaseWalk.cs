using System.Text;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Where the reader is in the case, and what it has found wrong.</summary>
internal sealed class CaseWalk
{
    /// <summary>Most errors that are listed.</summary>
    public const int MostErrors = 1000;

    private readonly List<CaseError> found = [];
    private (string? Name, int Index, CasePath? Place)[] steps = new (string? Name, int Index, CasePath? Place)[16];
    private int depth;

    public CaseWalk(byte[] utf8) => Text = new CaseText(utf8);

    /// <summary>What is read.</summary>
    public CaseText Text { get; }

    /// <summary>Where the reader is, e.g. "driveline[1].shearBolt".</summary>
    public string Path => Here().ToString();

    /// <summary>The members of the objects that are open.</summary>
    public StatedFacts Stated { get; } = new();

    /// <summary>True when enough is wrong: the walk ends, so that a file full of mistakes costs no more than a good one.</summary>
    public bool IsFull => found.Count > MostErrors;

    /// <summary>Elements of the driveline begun so far, those of branches included.</summary>
    public int Elements { get; set; }

    public bool HasErrors => found.Count > 0;

    public void Enter(string member) => Enter(member, 0);

    public void Enter(int index) => Enter(null, index);

    public void Leave() => depth--;

    /// <summary>The place of the reader; the words are made when somebody asks for them.</summary>
    public CasePath Here()
    {
        CasePath place = CasePath.Root;
        for (int k = 0; k < depth; k++)
        {
            place = steps[k].Place ??= new CasePath(place, steps[k].Name, steps[k].Index);
        }

        return place;
    }

    public void Error(CaseErrorKind kind, long offset, string message) => Error(kind, offset, message, null, null, null);

    public void Error(CaseErrorKind kind, long offset, string message, string? permitted, string? received, string? nearest) =>
        Add(kind, offset, Path, message, permitted, received, nearest);

    /// <summary>A member that contradicts another, at the member.</summary>
    public void Contradiction(CaseObject owner, Member member, string message) => Contradiction(owner, member, message, null, null, null);

    public void Contradiction(CaseObject owner, Member member, string message, string? permitted, string? received, string? nearest) =>
        Add(CaseErrorKind.Contradiction, owner.OffsetOf(member), owner.PathOf(member), message, permitted, received, nearest);

    /// <summary>A member that has no place in its object.</summary>
    public void NotBelonging(CaseObject owner, Member member, string message, string permitted) =>
        Add(CaseErrorKind.UnknownMember, owner.OffsetOf(member), owner.PathOf(member), message, permitted, member.Name, null);

    /// <summary>A member that must be stated and is not.</summary>
    public void Missing(CaseObject owner, Member member) => Add(
        CaseErrorKind.MissingMember,
        owner.Offset,
        owner.PathOf(member),
        "\"" + member.Name + "\" must be stated: " + member.Doc,
        member.PermittedWords,
        null,
        null);

    /// <summary>A value of the wrong kind: says what is wanted and what stands there.</summary>
    public void WrongKind(ref Utf8JsonReader reader, string wanted)
    {
        string received = Received(ref reader);
        Error(CaseErrorKind.WrongKind, reader.TokenStartIndex, "Here " + wanted + " is wanted; got " + received + ".", wanted, received,
            null);
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
    public string? TextOf(ref Utf8JsonReader reader, string wanted)
    {
        if (reader.TokenType != JsonTokenType.String)
        {
            WrongKind(ref reader, wanted);
            return null;
        }

        string? text = TextOrNull(ref reader);
        if (text is null)
        {
            Error(CaseErrorKind.NotReadable, reader.TokenStartIndex,
                "This text holds half of a character pair (a lone \\uD800 to \\uDFFF).");
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

    /// <summary>True when the text or member name at the reader's token is that one.</summary>
    public static bool IsText(ref Utf8JsonReader reader, string text) =>
        reader.ValueIsEscaped ? TextOrNull(ref reader) == text : reader.ValueTextEquals(text);

    /// <summary>Everything found, in the order of the file.</summary>
    public IReadOnlyList<CaseError> Errors() => found.Count == 0 ? [] : [.. found.OrderBy(f => f.Line).ThenBy(f => f.Column)];

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

    private void Add(CaseErrorKind kind, long offset, string at, string message, string? permitted, string? received, string? nearest)
    {
        if (found.Count < MostErrors)
        {
            found.Add(Text.ErrorAt(offset, kind, at, message, permitted, received, nearest));
        }
        else if (found.Count == MostErrors)
        {
            string more = FormattableString.Invariant($"There are more errors; the first {MostErrors} are listed.");
            found.Add(Text.ErrorAt(offset, CaseErrorKind.TooMany, string.Empty, more, null, null, null));
        }
    }

    private string Raw(ref Utf8JsonReader reader, int quotes) =>
        Shown(Encoding.UTF8.GetString(Text.Utf8, (int)reader.TokenStartIndex, Math.Min(reader.ValueSpan.Length + quotes, 240)));

    private void Enter(string? member, int index)
    {
        if (depth == steps.Length)
        {
            Array.Resize(ref steps, 2 * depth);
        }

        steps[depth++] = (member, index, null);
    }
}
