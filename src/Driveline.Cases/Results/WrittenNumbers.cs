#if NET
using System.Globalization;
#endif
using System.Text.Json;

namespace Driveline.Cases.Results;

/// <summary>Writes numbers, each put into digits once in a document: the same torque stands in many of its bands.</summary>
internal sealed class WrittenNumbers
{
#if NET
    private const int Room = 128;
    private const int Longest = 32;

    [ThreadStatic]
    private static WrittenNumbers? own;

    private readonly ulong[] numbers = new ulong[Room];
    private readonly int[] lengths = new int[Room];
    private readonly byte[] digits = new byte[Room * Longest];
#endif

    /// <summary>Forgets the numbers of the document before.</summary>
    public static void Begin()
    {
#if NET
        Array.Clear((own ??= new WrittenNumbers()).lengths);
#endif
    }

    /// <summary>Writes a finite number as the value of a member.</summary>
    public static void Write(Utf8JsonWriter json, double number)
    {
#if NET
        (own ??= new WrittenNumbers()).Add(json, number);
#else
        json.WriteNumberValue(number);
#endif
    }

#if NET
    private void Add(Utf8JsonWriter json, double number)
    {
        ulong bits = BitConverter.DoubleToUInt64Bits(number);
        int place = (int)((bits * 0x9E3779B97F4A7C15) >> 57);
        Span<byte> room = digits.AsSpan(place * Longest, Longest);
        if (lengths[place] == 0 || numbers[place] != bits)
        {
            numbers[place] = bits;
            number.TryFormat(room, out lengths[place], default, CultureInfo.InvariantCulture);
        }

        json.WriteRawValue(room[..lengths[place]], skipInputValidation: true);
    }
#endif
}
