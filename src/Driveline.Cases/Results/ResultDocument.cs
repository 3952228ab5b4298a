using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A result as one JSON object, ready to be written wherever it is wanted. Immutable.</summary>
/// <remarks>
/// Member names are in camel case, enum values as in C#. null means not known, "unbounded" that there is no end; neither is ever 0.
/// Members may be added to a contract; when one changes, the contract's number rises. <see cref="ResultSchema"/> describes each kind.
/// </remarks>
public sealed class ResultDocument
{
    /// <summary>The number of the contract that the members keep; 0 until it is frozen.</summary>
    public const int Contract = 0;

    // Letters, degree and middle dots stay readable; whatever could end a script or a string is still escaped.
    private static readonly JavaScriptEncoder Encoder = JavaScriptEncoder.Create(UnicodeRanges.All);
    // The rows open and close what they write; the tests hold every kind of result against its schema.
    private static readonly JsonWriterOptions Indented = new() { Indented = true, Encoder = Encoder, SkipValidation = true };
    private static readonly JsonWriterOptions Compact = new() { Encoder = Encoder, SkipValidation = true };

    private readonly Action<Utf8JsonWriter> content;

    private ResultDocument(ResultKind kind, Action<Utf8JsonWriter> content)
    {
        Kind = kind;
        this.content = content;
    }

    internal static ResultDocument Of<T>(ResultKind kind, ShapeOf<T> shape, T value, ResultOptions options)
    {
        Guard.NotNull(options, nameof(options));
        return new ResultDocument(kind, json =>
        {
            WrittenNumbers.Begin();
            json.WriteStartObject();
            HeadRows.Shape.WriteMembers(json, new ResultHead(kind, options), options);
            shape.WriteMembers(json, value, options);
            json.WriteEndObject();
        });
    }

    /// <summary>What it is a result of.</summary>
    public ResultKind Kind { get; }

    /// <summary>Writes it as one value, so that it may stand inside another document.</summary>
    /// <exception cref="ArgumentNullException">The writer is missing.</exception>
    public void Write(Utf8JsonWriter json) => content(Guard.NotNull(json, nameof(json)));

    /// <summary>Writes it to a stream, indented, as UTF-8; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is missing.</exception>
    public void Write(Stream stream)
    {
        using var json = new Utf8JsonWriter(Guard.NotNull(stream, nameof(stream)), Indented);
        content(json);
    }

    /// <summary>Writes it to a buffer, without blanks, as UTF-8; such as the pipe of a web response, or memory of the caller's.</summary>
    /// <exception cref="ArgumentNullException">The buffer is missing.</exception>
    public void Write(IBufferWriter<byte> buffer)
    {
        using var json = new Utf8JsonWriter(Guard.NotNull(buffer, nameof(buffer)), Compact);
        content(json);
    }

    /// <summary>Writes it to a stream that must not be blocked, such as the body of a web response; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task WriteAsync(Stream stream, CancellationToken stop)
    {
        Guard.NotNull(stream, nameof(stream));
        stop.ThrowIfCancellationRequested();
        using var whole = new MemoryStream();
        Write(whole);
#if NET
        return stream.WriteAsync(whole.GetBuffer().AsMemory(0, (int)whole.Length), stop).AsTask();
#else
        return stream.WriteAsync(whole.GetBuffer(), 0, (int)whole.Length, stop);
#endif
    }

    /// <summary>It as JSON text, indented.</summary>
    public string ToJson()
    {
        using var whole = new MemoryStream();
        Write(whole);
        return Encoding.UTF8.GetString(whole.GetBuffer(), 0, (int)whole.Length);
    }

    /// <inheritdoc/>
    public override string ToString() => ToJson();
}
