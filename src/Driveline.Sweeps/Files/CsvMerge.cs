using System.Globalization;
using System.Text;

namespace Driveline.Sweeps.Files;

/// <summary>Puts CSV files of shards together: one head, then their lines as they are.</summary>
internal static class CsvMerge
{
    private const int LongestLine = 1 << 20;

    public static long Run(string[] files, string path, CancellationToken stop)
    {
        (string Path, string Head, long First, long Last)[] shards = [.. files.Select(Of).OrderBy(s => s.First)];
        long rows = 0;
        foreach ((string file, string head, long first, long last) in shards.Where(s => s.First >= 0))
        {
            if (head != shards[0].Head)
            {
                throw new StudyFileException("'" + file + "' has other columns than '" + shards[0].Path + "'.");
            }

            MergedFile.Expect(file, rows, first);
            rows = last + 1;
        }

        MergedFile.Write(path, to =>
        {
            to.Write(Encoding.UTF8.GetBytes(shards[0].Head + "\n"));
            foreach ((string file, string head, _, _) in shards)
            {
                using FileStream from = File.OpenRead(file);
                from.Position = Encoding.UTF8.GetByteCount(head) + 1;
                MergedFile.Copy(from, to, from.Length - from.Position, stop);
            }
        });
        return rows;
    }

    // Head, and the numbers of the first and the last row; -1 when there are none.
    private static (string Path, string Head, long First, long Last) Of(string path)
    {
        using FileStream stream = File.OpenRead(path);
        string head = Line(stream, path);
        if (!head.StartsWith("row,", StringComparison.Ordinal))
        {
            throw new StudyFileException("'" + path + "' was not written by a study: its first column is not \"row\".");
        }

        if (stream.Position == stream.Length)
        {
            return (path, head, -1, -1);
        }

        long first = Number(Line(stream, path), path);
        byte[] tail = new byte[Math.Min(LongestLine, stream.Length - Encoding.UTF8.GetByteCount(head) - 1)];
        stream.Position = stream.Length - tail.Length;
        stream.ReadExactly(tail);
        if (tail[^1] != '\n')
        {
            throw new StudyFileException("'" + path + "' ends within a row.");
        }

        int begin = tail.AsSpan(0, tail.Length - 1).LastIndexOf((byte)'\n') + 1;
        return (path, head, first, Number(Encoding.UTF8.GetString(tail, begin, tail.Length - 1 - begin), path));
    }

    private static string Line(FileStream stream, string path)
    {
        var line = new List<byte>();
        int next;
        while ((next = stream.ReadByte()) != '\n')
        {
            if (next < 0 || line.Count > LongestLine)
            {
                throw new StudyFileException("'" + path + "' ends within a row.");
            }

            line.Add((byte)next);
        }

        return Encoding.UTF8.GetString([.. line]);
    }

    private static long Number(string line, string path) =>
        long.TryParse(line.Split(',')[0], NumberStyles.None, CultureInfo.InvariantCulture, out long row) ? row
            : throw new StudyFileException("'" + path + "' was not written by a study: a row has no number.");
}
