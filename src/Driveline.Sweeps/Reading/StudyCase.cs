using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>The case of a study file, found before anything else is read, since factors and outputs are read by it.</summary>
internal sealed class StudyCase
{
    private StudyCase(CaseFile? file) => File = file;

    /// <summary>No case, where only the rows of a study are asked for.</summary>
    public static StudyCase None { get; } = new(null);

    /// <summary>The case; null, with errors, when it cannot be read.</summary>
    public CaseFile? File { get; }

    public static StudyCase Of(byte[] utf8, CaseWalk walk, Func<string, byte[]?> cases)
    {
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = CaseReader.DeepestNesting });
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            return new StudyCase(null);
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            bool isCase = reader.ValueTextEquals("case"u8);
            reader.Read();
            if (isCase)
            {
                walk.Enter("case");
                CaseFile? file = Read(ref reader, utf8, walk, cases);
                walk.Leave();
                return new StudyCase(file);
            }

            reader.Skip();
        }

        return new StudyCase(null);
    }

    private static CaseFile? Read(ref Utf8JsonReader reader, byte[] utf8, CaseWalk walk, Func<string, byte[]?> cases)
    {
        long offset = reader.TokenStartIndex;
        CaseReadResult read;
        if (reader.TokenType == JsonTokenType.String)
        {
            string name = CaseWalk.TextOrNull(ref reader) ?? string.Empty;
            if (cases(name) is not { } bytes)
            {
                walk.Error(CaseErrorKind.NotReadable, offset, "There is no case file \"" + CaseWalk.Shown(name) + "\" beside the study.",
                    null, name, null);
                return null;
            }

            read = CaseReader.Read(bytes);
            foreach (CaseError error in read.Errors)
            {
                walk.Error(error.Kind, offset, name + ": " + error, error.Permitted, error.Received, error.Nearest);
            }
        }
        else if (reader.TokenType == JsonTokenType.StartObject)
        {
            reader.Skip();
            read = CaseReader.Read(Alone(utf8, (int)offset, (int)reader.BytesConsumed));
            foreach (CaseError error in read.Errors)
            {
                walk.Error(error.Kind, OffsetOf(utf8, error), error.Path.Length > 0 ? error.Path + ": " + error.Message : error.Message,
                    error.Permitted, error.Received, error.Nearest);
            }
        }
        else
        {
            walk.WrongKind(ref reader, "the name of a case file or a case");
            return null;
        }

        foreach (CaseError error in read.IsRead ? CaseAssessment.Of(read.Case).Errors : [])
        {
            walk.Error(error.Kind, offset, error.Path + ": " + error.Message, error.Permitted, error.Received, error.Nearest);
        }

        return read.Case;
    }

    // Blanks before and after it keep lines and columns as they are in the study.
    private static byte[] Alone(byte[] utf8, int begin, int end)
    {
        byte[] alone = new byte[end];
        for (int k = 0; k < begin; k++)
        {
            alone[k] = utf8[k] is (byte)'\n' ? (byte)'\n' : (byte)' ';
        }

        utf8.AsSpan(begin, end - begin).CopyTo(alone.AsSpan(begin));
        return alone;
    }

    private static long OffsetOf(byte[] utf8, CaseError error)
    {
        int at = 0;
        for (int line = 1; line < error.Line && at < utf8.Length; at++)
        {
            line += utf8[at] == (byte)'\n' ? 1 : 0;
        }

        return Math.Min(at + error.Column - 1, utf8.Length);
    }
}
