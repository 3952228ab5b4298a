using System.Globalization;
using Driveline.Monitoring;

namespace Driveline.Cli.Telemetry;

/// <summary>A text log of raw CAN frames with their times, as candump writes it to a file (-L) or shows it (-t a).</summary>
/// <example>
/// (1436509052.249713) can0 18FEDF00#8AA0287D7DFFFFF5
/// (1436509052.249713)  can0  18FEDF00   [8]  8A A0 28 7D 7D FF FF F5
/// </example>
internal sealed class CanLog(LineReader lines, RowNotes notes, EngineTorqueDecoder decoder, string first) : ITelemetry
{
    private const int ExtendedDigits = 8;

    private bool hasFirst = true;

    public long Line => lines.Line;

    /// <summary>The decoder, with all it has heard.</summary>
    public EngineTorqueDecoder Decoder => decoder;

    public bool TryNext(out TorqueSample sample)
    {
        if (hasFirst)
        {
            hasFirst = false;
            if (Take(first, out sample))
            {
                return true;
            }
        }

        while (lines.TryNext(out ReadOnlySpan<char> text))
        {
            if (lines.IsTooLong)
            {
                notes.Refuse(lines.Line, RowTrouble.Length);
            }
            else if (!TelemetryLog.IsNothing(text) && Take(text, out sample))
            {
                return true;
            }
        }

        sample = default;
        return false;
    }

    private bool Take(ReadOnlySpan<char> text, out TorqueSample sample)
    {
        sample = default;
        if (!TryFrame(text, out CanFrame frame, out bool isOther))
        {
            if (!isOther)
            {
                notes.Refuse(lines.Line, RowTrouble.Frame);
            }

            return false;
        }

        return decoder.TryTake(in frame, out sample);
    }

    // Frames with 11 bits, of CAN FD, of errors and without data are other ones.
    private static bool TryFrame(ReadOnlySpan<char> text, out CanFrame frame, out bool isOther)
    {
        frame = default;
        isOther = false;
        ReadOnlySpan<char> rest = text.Trim();
        int close = rest.IndexOf(')');
        if (rest.IsEmpty || rest[0] != '(' || close < 0
            || !double.TryParse(rest[1..close], NumberStyles.Float, CultureInfo.InvariantCulture, out double timeS))
        {
            return false;
        }

        rest = rest[(close + 1)..];
        Word(ref rest);
        ReadOnlySpan<char> word = Word(ref rest);
        Span<byte> data = stackalloc byte[CanFrame.MostBytes];
        int mark = word.IndexOf('#');
        int count;
        if (mark >= 0)
        {
            ReadOnlySpan<char> bytes = word[(mark + 1)..];
            isOther = mark != ExtendedDigits || bytes.StartsWith("#") || bytes.StartsWith("R");
            word = word[..mark];
            count = isOther ? 0 : Bytes(bytes, data);
        }
        else
        {
            ReadOnlySpan<char> next = Word(ref rest);
            while (!next.IsEmpty && next[0] != '[')
            {
                word = next;
                next = Word(ref rest);
            }

            isOther = !next.IsEmpty && word.Length != ExtendedDigits;
            count = next.IsEmpty || isOther ? -1 : Bytes(rest, data);
            isOther |= rest.Trim().StartsWith("remote", StringComparison.Ordinal);
        }

        if (isOther || count < 0 || !uint.TryParse(word, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out uint id))
        {
            return false;
        }

        isOther = id > CanFrame.HighestId;
        frame = isOther ? default : new CanFrame(timeS, id, data[..count]);
        return !isOther;
    }

    private static ReadOnlySpan<char> Word(ref ReadOnlySpan<char> rest)
    {
        rest = rest.TrimStart();
        int end = rest.IndexOfAny(' ', '\t');
        ReadOnlySpan<char> word = end < 0 ? rest : rest[..end];
        rest = end < 0 ? default : rest[end..];
        return word;
    }

    // How many bytes of two digits there are, with or without blanks between; -1 when they are none.
    private static int Bytes(ReadOnlySpan<char> text, Span<byte> data)
    {
        int count = 0;
        while (!(text = text.TrimStart()).IsEmpty)
        {
            if (count == data.Length)
            {
                // Behind eight bytes stand the letters that candump -a shows.
                return text[0] == '\'' ? count : -1;
            }

            if (text.Length < 2 || !byte.TryParse(text[..2], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out data[count]))
            {
                return text[0] == '\'' ? count : -1;
            }

            count++;
            text = text[2..];
        }

        return count;
    }
}
