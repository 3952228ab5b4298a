namespace Driveline.Sweeps.Files;

/// <summary>Writes a merged file whole or not at all.</summary>
internal static class MergedFile
{
    public static void Write(string path, Action<Stream> content)
    {
        string temporary = path + "." + Guid.NewGuid().ToString("N") + ".tmp";
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 20))
            {
                content(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(temporary, path, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>Copies so many bytes from where a stream is.</summary>
    public static void Copy(Stream from, Stream to, long bytes, CancellationToken stop)
    {
        byte[] buffer = new byte[1 << 20];
        while (bytes > 0)
        {
            stop.ThrowIfCancellationRequested();
            int got = from.Read(buffer, 0, (int)Math.Min(buffer.Length, bytes));
            if (got == 0)
            {
                throw new InvalidDataException("A file ended while it was read.");
            }

            to.Write(buffer, 0, got);
            bytes -= got;
        }
    }

    /// <summary>That shards follow each other from row 0 without a gap.</summary>
    /// <exception cref="StudyFileException">Rows are missing or twice.</exception>
    public static void Expect(string path, long expected, long first)
    {
        if (first != expected)
        {
            throw new StudyFileException(FormattableString.Invariant(first > expected
                ? (FormattableString)$"Rows {expected} to {first - 1} are missing: no file ends where '{path}' begins."
                : $"Rows {first} to {expected - 1} stand twice: '{path}' begins before the file in front of it ends."));
        }
    }
}
