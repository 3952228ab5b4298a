using System.Text;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Checks that a file is UTF-8 and JSON before its facts are read, and says where it is not.</summary>
internal static class JsonSyntax
{
    private static readonly UTF8Encoding Strict = new(false, true);

    /// <summary>True when the whole file is one JSON value no deeper than is read; otherwise one error is added.</summary>
    public static bool IsGood(byte[] utf8, CaseWalk walk) => IsUtf8(utf8, walk) && IsJson(utf8, walk);

    /// <summary>True when the whole file is UTF-8; otherwise one error is added.</summary>
    public static bool IsUtf8(byte[] utf8, CaseWalk walk)
    {
#if NET
        bool isUtf8 = System.Text.Unicode.Utf8.IsValid(utf8);
#else
        const bool isUtf8 = false;
#endif
        try
        {
            _ = isUtf8 || Strict.GetCharCount(utf8) > 0;
        }
        catch (DecoderFallbackException e)
        {
            walk.Error(CaseErrorKind.InvalidJson, Math.Max(0, e.Index), "The file is not UTF-8 text.");
            return false;
        }

        return true;
    }

    private static bool IsJson(byte[] utf8, CaseWalk walk)
    {
        // One level more than is read, so that the reader's own limit is never the one that speaks.
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = CaseReader.DeepestNesting + 1 });
        bool isComplete = false;
        try
        {
            while (reader.Read())
            {
                bool opens = reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray;
                if (opens && reader.CurrentDepth >= CaseReader.DeepestNesting)
                {
                    walk.Error(
                        CaseErrorKind.TooDeep,
                        reader.TokenStartIndex,
                        FormattableString.Invariant(
                            $"Objects and lists may be nested at most {CaseReader.DeepestNesting} deep; here it goes deeper."));
                    return false;
                }

                isComplete = reader.CurrentDepth == 0 && !opens;
            }

            return true;
        }
        catch (JsonException e)
        {
            long offset = Offset(utf8, e.LineNumber ?? 0, e.BytePositionInLine ?? 0);
            walk.Error(CaseErrorKind.InvalidJson, offset, Problem(utf8, offset, isComplete));
            return false;
        }
    }

    private static long Offset(byte[] utf8, long line, long byteInLine)
    {
        long at = 0;
        for (; line > 0 && at < utf8.Length; at++)
        {
            line -= utf8[at] == (byte)'\n' ? 1 : 0;
        }

        return Math.Min(at + byteInLine, utf8.Length);
    }

    private static string Problem(byte[] utf8, long offset, bool isComplete)
    {
        if (utf8.All(b => b is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
        {
            return "The file is empty; it must be one JSON object.";
        }

        if (offset >= utf8.Length)
        {
            return "The file ends in the middle; a bracket or a quote is not closed.";
        }

        char found = (char)utf8[offset];
        string shown = found is > ' ' and < '\u007F' ? "'" + found + "'" : FormattableString.Invariant($"byte {(int)found}");
        return isComplete ? "There must be nothing after the end of the object; found " + shown + "."
            : found switch
            {
                '/' or '#' => "Comments are not taken here; put remarks into \"notes\".",
                '}' or ']' => "Something is missing before " + shown + "; the last member or item must not be followed by a comma.",
                'N' or 'I' or '-' or '+' => "Not JSON here: found " + shown + "; NaN, Infinity and signs without a number are not taken.",
                '\'' => "Not JSON here: texts stand in double quotes (\").",
                _ => "Not JSON here: found " + shown + ".",
            };
    }
}
