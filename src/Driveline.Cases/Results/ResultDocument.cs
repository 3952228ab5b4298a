using System.Buffers;
using System.Text.Json;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A result as one JSON object, ready to be written wherever it is wanted. Immutable.</summary>
/// <remarks>
/// Member names are in camel case, enum values as in C#. null means not known, "unbounded" that there is no end; neither is ever 0.
/// Members may be added to a contract; when one changes, the contract's number rises. <see cref="ResultSchema"/> describes each kind.
/// </remarks>
public sealed class ResultDocument
{
    /// <summary>The number of the contract that the members keep: 1. Members are added under it; a changed one raises it.</summary>
    public const int Contract = 1;

    private readonly Action<ResultWriter> content;

    private ResultDocument(ResultKind kind, Action<ResultWriter> content)
    {
        Kind = kind;
        this.content = content;
    }

    internal static ResultDocument Of<T>(ResultKind kind, ShapeOf<T> shape, T value, ResultOptions options)
    {
        Guard.NotNull(options, nameof(options));
        return new ResultDocument(kind, json =>
        {
            json.StartObject();
            HeadRows.Shape.WriteMembers(json, new ResultHead(kind, options), options);
            shape.WriteMembers(json, value, options);
            json.EndObject();
        });
    }

    /// <summary>What it is a result of.</summary>
    public ResultKind Kind { get; }

    /// <summary>Writes it as one value, so that it may stand inside another document.</summary>
    /// <exception cref="ArgumentNullException">The writer is missing.</exception>
    public void Write(Utf8JsonWriter json)
    {
        Guard.NotNull(json, nameof(json));
        using JsonDocument whole = JsonDocument.Parse(Written(false));
        whole.RootElement.WriteTo(json);
    }

    /// <summary>Writes it to a stream, indented, as UTF-8; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is missing.</exception>
    public void Write(Stream stream)
    {
        Guard.NotNull(stream, nameof(stream));
        ResultWriter json = Fill(true);
        json.CopyTo(stream);
        json.Leave();
    }

    /// <summary>Writes it to a buffer, without blanks, as UTF-8; such as the pipe of a web response, or memory of the caller's.</summary>
    /// <exception cref="ArgumentNullException">The buffer is missing.</exception>
    public void Write(IBufferWriter<byte> buffer)
    {
        Guard.NotNull(buffer, nameof(buffer));
        ResultWriter json = Fill(false);
        buffer.Write(json.Written);
        json.Leave();
    }

    /// <summary>Writes it to a stream that must not be blocked, such as the body of a web response; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task WriteAsync(Stream stream, CancellationToken stop)
    {
        Guard.NotNull(stream, nameof(stream));
        stop.ThrowIfCancellationRequested();
        byte[] whole = Written(true);
#if NET
        return stream.WriteAsync(whole, stop).AsTask();
#else
        return stream.WriteAsync(whole, 0, whole.Length, stop);
#endif
    }

    /// <summary>It as JSON text, indented.</summary>
    public string ToJson()
    {
        ResultWriter json = Fill(true);
        string text = json.ToString();
        json.Leave();
        return text;
    }

    /// <inheritdoc/>
    public override string ToString() => ToJson();

    private byte[] Written(bool isIndented)
    {
        ResultWriter json = Fill(isIndented);
        byte[] whole = json.Written.ToArray();
        json.Leave();
        return whole;
    }

    private ResultWriter Fill(bool isIndented)
    {
        ResultWriter json = ResultWriter.Take(isIndented);
        content(json);
        return json;
    }
}
