namespace Driveline.Monitoring;

/// <summary>Numbers that are kept in large stores, with fewer digits than they have room for.</summary>
internal static class Rounded
{
    /// <summary>Zeros at the end of a number of 24 binary digits, as a single has: one part in 16 million.</summary>
    public const int ShortZeros = 29;

    /// <summary>Zeros at the end of a number of 33 binary digits: 2 ms in a thousand hours.</summary>
    public const int LongZeros = 20;

    /// <summary>The nearest number with so many zeros at its end.</summary>
    public static double Nearest(double value, int zeros) => Cut(BitConverter.DoubleToInt64Bits(value) + (1L << (zeros - 1)), zeros);

    /// <summary>The number itself, or the next one above it with so many zeros at its end; of a number of 0 or more.</summary>
    public static double Up(double value, int zeros) => Cut(BitConverter.DoubleToInt64Bits(value) + (1L << zeros) - 1, zeros);

    private static double Cut(long bits, int zeros) => BitConverter.Int64BitsToDouble((bits >> zeros) << zeros);
}
