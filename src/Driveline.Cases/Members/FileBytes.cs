using System.Buffers;
using System.IO.Pipelines;

namespace Driveline.Cases.Members;

/// <summary>The bytes of a file, read with a limit.</summary>
internal static class FileBytes
{
    /// <summary>Reads a stream to its end; false when there is more than the limit.</summary>
    public static bool TryRead(Stream stream, int most, out byte[] bytes)
    {
        using var whole = new MemoryStream();
        byte[] buffer = new byte[81920];
        int count;
        bytes = [];
        while ((count = stream.Read(buffer, 0, buffer.Length)) > 0)
        {
            whole.Write(buffer, 0, count);
            if (whole.Length > most)
            {
                return false;
            }
        }

        bytes = whole.ToArray();
        return true;
    }

    /// <summary>Reads a stream to its end; null when there is more than the limit.</summary>
    public static async Task<byte[]?> ReadAsync(Stream stream, int most, CancellationToken stop)
    {
        using var whole = new MemoryStream();
        byte[] buffer = ArrayPool<byte>.Shared.Rent(16384);
        try
        {
            int count;
#if NET
            while ((count = await stream.ReadAsync(buffer, stop).ConfigureAwait(false)) > 0)
#else
            while ((count = await stream.ReadAsync(buffer, 0, buffer.Length, stop).ConfigureAwait(false)) > 0)
#endif
            {
                whole.Write(buffer, 0, count);
                if (whole.Length > most)
                {
                    return null;
                }
            }
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }

        return whole.ToArray();
    }

    /// <summary>Reads a pipe to its end; null when there is more than the limit.</summary>
    public static async Task<byte[]?> ReadAsync(PipeReader pipe, int most, CancellationToken stop)
    {
        while (true)
        {
            ReadResult read = await pipe.ReadAsync(stop).ConfigureAwait(false);
            ReadOnlySequence<byte> buffer = read.Buffer;
            if (read.IsCanceled)
            {
                pipe.AdvanceTo(buffer.Start);
                throw new OperationCanceledException("The read of the pipe was cancelled.");
            }

            if (buffer.Length > most)
            {
                pipe.AdvanceTo(buffer.End);
                return null;
            }

            if (read.IsCompleted)
            {
                byte[] whole = buffer.ToArray();
                pipe.AdvanceTo(buffer.End);
                return whole;
            }

            pipe.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    /// <summary>The bytes without a byte-order mark.</summary>
    public static byte[] WithoutMark(byte[] utf8)
    {
        bool isMarked = utf8.Length >= 3 && utf8[0] == 0xEF && utf8[1] == 0xBB && utf8[2] == 0xBF;
        return isMarked ? utf8.AsSpan(3).ToArray() : utf8;
    }
}
