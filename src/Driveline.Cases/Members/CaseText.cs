namespace Driveline.Cases.Members;

/// <summary>The text of a file, which tells line and column of a byte.</summary>
internal sealed class CaseText
{
    // Places are counted from the nearest mark, so that many errors in one long line cost little.
    private const int Marked = 4096;

    private readonly byte[] utf8;
    private readonly List<(int Line, int Column)> marks = [];

    public CaseText(byte[] utf8) => this.utf8 = utf8;

    /// <summary>The bytes, without a byte-order mark.</summary>
    public byte[] Utf8 => utf8;

    public CaseError ErrorAt(
        long offset, CaseErrorKind kind, string path, string message, string? permitted, string? received, string? nearest)
    {
        (int line, int column) = PlaceOf(offset);
        return new CaseError(kind, path, line, column, message, permitted, received, nearest);
    }

    private (int Line, int Column) PlaceOf(long offset)
    {
        int to = (int)Math.Min(offset, utf8.Length);
        lock (marks)
        {
            while (marks.Count <= to / Marked)
            {
                marks.Add(marks.Count == 0 ? (1, 1) : Count((marks.Count - 1) * Marked, marks.Count * Marked));
            }
        }

        return Count(to / Marked * Marked, to);
    }

    private (int Line, int Column) Count(int from, int to)
    {
        (int line, int column) = marks[from / Marked];
        for (int at = from; at < to; at++)
        {
            bool isNewLine = utf8[at] == (byte)'\n';
            line += isNewLine ? 1 : 0;
            bool beginsCharacter = (utf8[at] & 0xC0) != 0x80;
            column = isNewLine ? 1 : column + (beginsCharacter ? 1 : 0);
        }

        return (line, column);
    }
}
