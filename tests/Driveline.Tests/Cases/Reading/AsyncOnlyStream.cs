namespace Driveline.Tests.Cases;

/// <summary>A stream that refuses to block, as the body of a web request or response does.</summary>
internal sealed class AsyncOnlyStream : MemoryStream
{
    public AsyncOnlyStream()
    {
    }

    public AsyncOnlyStream(byte[] content)
        : base(content)
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw Refused();

    public override int Read(Span<byte> buffer) => throw Refused();

    public override void Write(byte[] buffer, int offset, int count) => throw Refused();

    public override void Write(ReadOnlySpan<byte> buffer) => throw Refused();

    public override void Flush() => throw Refused();

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        return Task.FromResult(base.Read(buffer, offset, count));
    }

    public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        cancellationToken.ThrowIfCancellationRequested();
        byte[] bytes = new byte[buffer.Length];
        int count = base.Read(bytes, 0, bytes.Length);
        bytes.AsMemory(0, count).CopyTo(buffer);
        return ValueTask.FromResult(count);
    }

    public override Task WriteAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken)
    {
        base.Write(buffer, offset, count);
        return Task.CompletedTask;
    }

    public override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        base.Write(buffer.ToArray(), 0, buffer.Length);
        return ValueTask.CompletedTask;
    }

    public override Task FlushAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private static InvalidOperationException Refused() => new("Synchronous operations are disallowed.");
}
