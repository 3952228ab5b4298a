using System.Globalization;

namespace Driveline.Sweeps.Files;

/// <summary>Puts Parquet files of shards together: their groups as they are, with one foot.</summary>
internal static class ParquetMerge
{
    public static long Run(string[] files, string path, CancellationToken stop)
    {
        var shards = files.Select(f => (Path: f, Foot: Foot(f))).Where(s => s.Foot.Groups.Count > 0)
            .Select(s => (s.Path, s.Foot, First: First(s.Path))).OrderBy(s => s.First).ToArray();
        ParquetFoot foot = shards.Length > 0 ? shards[0].Foot : Foot(files[0]);
        long rows = 0;
        foreach ((string file, ParquetFoot shard, long first) in shards)
        {
            if (shard.Word("driveline.study") != foot.Word("driveline.study") || !shard.Columns.SequenceEqual(foot.Columns))
            {
                throw new StudyFileException("'" + file + "' is of another study than '" + shards[0].Path + "'.");
            }

            MergedFile.Expect(file, rows, first);
            rows += shard.Groups.Sum(g => (long)g.Rows);
        }

        if (long.TryParse(foot.Word("driveline.rows"), NumberStyles.None, CultureInfo.InvariantCulture, out long all) && rows != all)
        {
            throw new StudyFileException(FormattableString.Invariant($"Rows {rows} to {all - 1} are missing."));
        }

        MergedFile.Write(path, to =>
        {
            to.Write("PAR1"u8);
            foreach ((string file, ParquetFoot shard, _) in shards)
            {
                using FileStream from = File.OpenRead(file);
                from.Position = 4;
                MergedFile.Copy(from, to, shard.Groups.Sum(g => g.Bytes), stop);
            }

            to.Write(ParquetFoot.Bytes(foot.Columns, [.. shards.SelectMany(s => s.Foot.Groups)], foot.Words));
        });
        return rows;
    }

    private static ParquetFoot Foot(string path)
    {
        using FileStream stream = File.OpenRead(path);
        try
        {
            return ParquetFoot.Read(stream);
        }
        catch (InvalidDataException wrong)
        {
            throw new StudyFileException("'" + path + "' cannot be merged: " + wrong.Message, wrong);
        }
    }

    // The first column is the row's number; its first page begins behind the mark.
    private static long First(string path)
    {
        using FileStream stream = File.OpenRead(path);
        ParquetFoot foot = ParquetFoot.Read(stream);
        stream.Position = 4;
        return ParquetPage.TryRead(stream, foot.Groups[0].Rows, out byte[] data, out _) && data.Length >= 8
            ? BitConverter.ToInt64(data)
            : throw new StudyFileException("'" + path + "' was not written by a study.");
    }
}
