using System.IO.Pipelines;
using System.Text;
using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>Reads a case file (UTF-8 JSON) and lists everything that is wrong with it.</summary>
/// <remarks>
/// No more than 4 MiB, 64 levels and 1000 elements of the driveline are read; comments, trailing commas and anything after the case are
/// refused.
/// Bad input gives errors, never an exception.
/// </remarks>
public static class CaseReader
{
    /// <summary>Largest file that is read, in bytes: 4 MiB.</summary>
    public const int LargestBytes = 4 * 1024 * 1024;

    /// <summary>Deepest nesting that is read.</summary>
    public const int DeepestNesting = 64;

    /// <summary>Reads a case from UTF-8 JSON; a byte-order mark is skipped.</summary>
    public static CaseReadResult Read(ReadOnlySpan<byte> utf8) =>
        utf8.Length > LargestBytes ? TooLarge() : ReadBytes(utf8.ToArray());

    /// <summary>Reads a case from JSON text.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static CaseReadResult Read(string json)
    {
        if (json is null)
        {
            throw new ArgumentNullException(nameof(json));
        }

        return json.Length > LargestBytes || Encoding.UTF8.GetByteCount(json) > LargestBytes ? TooLarge()
            : ReadBytes(Encoding.UTF8.GetBytes(json));
    }

    /// <summary>Reads a case from a stream of UTF-8 JSON, from its position to its end; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static CaseReadResult Read(Stream stream)
    {
        if (stream is null)
        {
            throw new ArgumentNullException(nameof(stream));
        }

        return FileBytes.TryRead(stream, LargestBytes, out byte[] utf8) ? ReadBytes(utf8) : TooLarge();
    }

    /// <summary>Reads a case from a stream of UTF-8 JSON, from its position to its end; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<CaseReadResult> ReadAsync(Stream stream, CancellationToken stop)
    {
        if (stream is null)
        {
            throw new ArgumentNullException(nameof(stream));
        }

        return await FileBytes.ReadAsync(stream, LargestBytes, stop).ConfigureAwait(false) is { } utf8 ? ReadBytes(utf8) : TooLarge();
    }

    /// <summary>Reads a case from a pipe of UTF-8 JSON to its end, such as the body of a web request; the pipe is not completed.</summary>
    /// <exception cref="ArgumentNullException">The pipe is null.</exception>
    /// <exception cref="OperationCanceledException">It was stopped, or a pending read was.</exception>
    public static async Task<CaseReadResult> ReadAsync(PipeReader pipe, CancellationToken stop)
    {
        if (pipe is null)
        {
            throw new ArgumentNullException(nameof(pipe));
        }

        return await FileBytes.ReadAsync(pipe, LargestBytes, stop).ConfigureAwait(false) is { } utf8 ? ReadBytes(utf8) : TooLarge();
    }

    private static CaseReadResult ReadBytes(byte[] utf8)
    {
        utf8 = FileBytes.WithoutMark(utf8);
        var walk = new CaseWalk(utf8);
        CaseFile? read = null;
        if (JsonSyntax.IsUtf8(utf8, walk) && !TryWalk(utf8, walk, out read))
        {
            // What is no JSON has one error, and says where.
            walk.Stated.Leave();
            walk = new CaseWalk(utf8);
            JsonSyntax.IsGood(utf8, walk);
        }

        walk.Stated.Leave();
        return new CaseReadResult(read, walk.Errors());
    }

    // False when the text is no JSON to its end, or was not read to its end.
    private static bool TryWalk(byte[] utf8, CaseWalk walk, out CaseFile? read)
    {
        read = null;
        try
        {
            var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = DeepestNesting });
            reader.Read();
            CaseObject? facts = ObjectReader.Read(ref reader, CaseFileMembers.Table, walk);
            while (reader.Read())
            {
                // Nothing may follow; behind the most errors that are listed there may be more of the case.
            }

            read = facts is null ? null : new CaseFile(facts, utf8);
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static CaseReadResult TooLarge()
    {
        var walk = new CaseWalk([]);
        walk.Error(CaseErrorKind.TooLarge, 0, "A case file may have at most 4 MiB (4194304 bytes); this one is larger.");
        return new CaseReadResult(null, walk.Errors());
    }
}
