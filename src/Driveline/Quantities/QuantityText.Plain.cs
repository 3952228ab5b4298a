namespace Driveline.Quantities;

public static partial class QuantityText
{
    private const int MostPlainDigits = 15;

    private static readonly double[] PowersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>
    /// Reads what is written plainly, "12.7 mm": up to 15 digits with at most one dot between them, one space, a unit as we write it.
    /// </summary>
    /// <remarks>
    /// Whole digits over a power of ten are both exact, so that the one division gives the double nearest to the decimal. False says
    /// only that the text is not so plain.
    /// </remarks>
    internal static bool TryReadPlain(ReadOnlySpan<byte> utf8, Dimension dimension, out double si)
    {
        long digits = 0;
        int decimals = -1;
        int at = 0;
        for (; at < utf8.Length && at <= MostPlainDigits; at++)
        {
            byte c = utf8[at];
            if (c == '.' && decimals < 0 && at > 0)
            {
                decimals = 0;
            }
            else if (c is >= (byte)'0' and <= (byte)'9')
            {
                digits = (10 * digits) + (c - '0');
                decimals += decimals < 0 ? 0 : 1;
            }
            else
            {
                break;
            }
        }

        WrittenUnit? unit = at == 0 || decimals == 0 || at + 1 >= utf8.Length || utf8[at] != ' ' ? null
            : Plain(utf8.Slice(at + 1), dimension);
        si = unit?.ToSi(digits / PowersOfTen[Math.Max(0, decimals)]) ?? 0;
        return unit is not null;
    }

    private static WrittenUnit? Plain(ReadOnlySpan<byte> written, Dimension dimension)
    {
        IReadOnlyList<WrittenUnit> units = WrittenUnits.Of(dimension);
        for (int k = 0; k < units.Count; k++)
        {
            if (IsSame(written, units[k].Symbol))
            {
                return units[k];
            }
        }

        return null;
    }

    private static bool IsSame(ReadOnlySpan<byte> written, string symbol)
    {
        if (written.Length != symbol.Length)
        {
            return false;
        }

        for (int k = 0; k < symbol.Length; k++)
        {
            if (written[k] != symbol[k])
            {
                return false;
            }
        }

        return true;
    }
}
