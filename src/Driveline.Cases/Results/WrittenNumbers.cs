using System.Buffers.Text;
using System.Globalization;

namespace Driveline.Cases.Results;

/// <summary>Puts numbers into digits, each once in a document: the same torque stands in many of its bands.</summary>
internal sealed class WrittenNumbers
{
    private const int Room = 128;
    private const int Longest = 32;

    private readonly long[] numbers = new long[Room];
    private readonly int[] lengths = new int[Room];
    private readonly byte[] digits = new byte[Room * Longest];

    /// <summary>The digits of a whole number.</summary>
    public static int Put(long value, Span<byte> to) => Utf8Formatter.TryFormat(value, to, out int written) ? written : 0;

    /// <summary>Forgets the numbers of the document before.</summary>
    public void Forget() => Array.Clear(lengths, 0, Room);

    /// <summary>The shortest digits that give a finite number again.</summary>
    public int Put(double number, Span<byte> to)
    {
        long bits = BitConverter.DoubleToInt64Bits(number);
        int place = (int)(unchecked((ulong)bits * 0x9E3779B97F4A7C15) >> 57);
        Span<byte> room = digits.AsSpan(place * Longest, Longest);
        if (lengths[place] == 0 || numbers[place] != bits)
        {
            numbers[place] = bits;
            lengths[place] = Digits(number, room);
        }

        room.CopyTo(to);
        return lengths[place];
    }

#if NET
    private static int Digits(double number, Span<byte> to) =>
        number.TryFormat(to, out int written, default, CultureInfo.InvariantCulture) ? written : 0;
#else
    private static int Digits(double number, Span<byte> to)
    {
        string text = number.ToString("R", CultureInfo.InvariantCulture);
        if (!double.Parse(text, CultureInfo.InvariantCulture).Equals(number))
        {
            text = number.ToString("G17", CultureInfo.InvariantCulture);
        }

        for (int k = 0; k < text.Length; k++)
        {
            to[k] = (byte)text[k];
        }

        return text.Length;
    }
#endif
}
