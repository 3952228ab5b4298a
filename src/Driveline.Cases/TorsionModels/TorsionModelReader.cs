using System.IO.Pipelines;
using System.Text;
using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>Reads a torsional model (UTF-8 JSON) and lists everything that is wrong with it.</summary>
/// <remarks>
/// The same limits as for a case file: <see cref="CaseReader.LargestBytes"/>, <see cref="CaseReader.DeepestNesting"/>. Bad input gives
/// errors, never an exception.
/// </remarks>
public static class TorsionModelReader
{
    /// <summary>Reads a model from UTF-8 JSON; a byte-order mark is skipped.</summary>
    public static TorsionModelReadResult Read(ReadOnlySpan<byte> utf8) =>
        utf8.Length > CaseReader.LargestBytes ? TooLarge() : ReadBytes(utf8.ToArray());

    /// <summary>Reads a model from JSON text.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static TorsionModelReadResult Read(string json)
    {
        if (json is null)
        {
            throw new ArgumentNullException(nameof(json));
        }

        return json.Length > CaseReader.LargestBytes ? TooLarge() : Read(Encoding.UTF8.GetBytes(json));
    }

    /// <summary>Reads a model from a stream of UTF-8 JSON, from its position to its end; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static TorsionModelReadResult Read(Stream stream)
    {
        if (stream is null)
        {
            throw new ArgumentNullException(nameof(stream));
        }

        return FileBytes.TryRead(stream, CaseReader.LargestBytes, out byte[] utf8) ? ReadBytes(utf8) : TooLarge();
    }

    /// <summary>Reads a model from a stream of UTF-8 JSON, from its position to its end; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<TorsionModelReadResult> ReadAsync(Stream stream, CancellationToken stop)
    {
        if (stream is null)
        {
            throw new ArgumentNullException(nameof(stream));
        }

        return await FileBytes.ReadAsync(stream, CaseReader.LargestBytes, stop).ConfigureAwait(false) is { } utf8 ? ReadBytes(utf8)
            : TooLarge();
    }

    /// <summary>Reads a model from a pipe of UTF-8 JSON to its end, such as the body of a web request; the pipe is not completed.</summary>
    /// <exception cref="ArgumentNullException">The pipe is null.</exception>
    /// <exception cref="OperationCanceledException">It was stopped, or a pending read was.</exception>
    public static async Task<TorsionModelReadResult> ReadAsync(PipeReader pipe, CancellationToken stop)
    {
        if (pipe is null)
        {
            throw new ArgumentNullException(nameof(pipe));
        }

        return await FileBytes.ReadAsync(pipe, CaseReader.LargestBytes, stop).ConfigureAwait(false) is { } utf8 ? ReadBytes(utf8)
            : TooLarge();
    }

    private static TorsionModelReadResult ReadBytes(byte[] utf8)
    {
        utf8 = FileBytes.WithoutMark(utf8);
        var walk = new CaseWalk(utf8);
        TorsionModelFile? model = null;
        if (JsonSyntax.IsGood(utf8, walk))
        {
            var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = CaseReader.DeepestNesting });
            reader.Read();
            CaseObject? draft = ObjectReader.Read(ref reader, ModelMembers.Table, walk);
            if (draft is not null && !walk.HasErrors)
            {
                model = Assemble(draft, walk);
            }
        }

        walk.Stated.Leave();
        return new TorsionModelReadResult(model, walk.Errors());
    }

    // The checks before leave nothing that the builder refuses; if something slips through, it is an error of the file all the same.
    private static TorsionModelFile? Assemble(CaseObject draft, CaseWalk walk)
    {
        try
        {
            return ModelAssembly.Of(new ModelParts(draft));
        }
        catch (Exception refused) when (refused is ArgumentException or InvalidOperationException)
        {
            walk.Error(CaseErrorKind.Contradiction, 0, refused.Message.Split('\n')[0]);
            return null;
        }
    }

    private static TorsionModelReadResult TooLarge()
    {
        var walk = new CaseWalk([]);
        walk.Error(CaseErrorKind.TooLarge, 0, "A model file may have at most 4 MiB (4194304 bytes); this one is larger.");
        return new TorsionModelReadResult(null, walk.Errors());
    }
}
