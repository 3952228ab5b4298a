namespace Driveline.Cli.Telemetry;

/// <summary>Reads lines without keeping them, however long the input is; a line of more than 4096 characters is passed over.</summary>
internal sealed class LineReader(TextReader reader)
{
    private const int Longest = 4096;

    private readonly char[] buffer = new char[16 * Longest];
    private int start;
    private int end;
    private bool atEnd;

    /// <summary>The number of the line read last, from 1.</summary>
    public long Line { get; private set; }

    /// <summary>True when the line read last was too long, and so is empty here.</summary>
    public bool IsTooLong { get; private set; }

    /// <summary>The next line, without its end; valid until the next call. False at the end.</summary>
    public bool TryNext(out ReadOnlySpan<char> text)
    {
        IsTooLong = false;
        int searched = 0;
        while (true)
        {
            int length = buffer.AsSpan(start + searched, end - start - searched).IndexOf('\n');
            if (length >= 0)
            {
                text = Take(searched + length, 1);
                return true;
            }

            if (atEnd)
            {
                bool any = end > start || IsTooLong;
                text = any ? Take(end - start, 0) : default;
                return any;
            }

            searched = end - start;
            if (searched > Longest)
            {
                IsTooLong = true;
                start = end;
                searched = 0;
            }

            Fill();
        }
    }

    private ReadOnlySpan<char> Take(int length, int ending)
    {
        ReadOnlySpan<char> text = buffer.AsSpan(start, length);
        start += length + ending;
        Line++;
        IsTooLong |= length > Longest;
        text = text.Length > 0 && text[^1] == '\r' ? text[..^1] : text;
        text = Line == 1 && text.Length > 0 && text[0] == '\uFEFF' ? text[1..] : text;
        return IsTooLong ? default : text;
    }

    private void Fill()
    {
        if (end == buffer.Length)
        {
            buffer.AsSpan(start, end - start).CopyTo(buffer);
            end -= start;
            start = 0;
        }

        int count = reader.Read(buffer, end, buffer.Length - end);
        atEnd = count <= 0;
        end += Math.Max(0, count);
    }
}
