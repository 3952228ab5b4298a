namespace Driveline.Monitoring;

/// <summary>The checksum CRC-32 of ISO 3309 and IEEE 802.3: polynomial 0x04C11DB7, reflected, start and end inverted.</summary>
internal static class Crc32
{
    private static readonly uint[] Table = Build();

    /// <summary>The checksum of bytes; "123456789" in ASCII gives 0xCBF43926.</summary>
    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        uint crc = 0xFFFFFFFF;
        foreach (byte value in bytes)
        {
            crc = (crc >> 8) ^ Table[(crc ^ value) & 0xFF];
        }

        return ~crc;
    }

    private static uint[] Build()
    {
        var table = new uint[256];
        for (uint k = 0; k < table.Length; k++)
        {
            uint value = k;
            for (int bit = 0; bit < 8; bit++)
            {
                value = (value & 1) == 0 ? value >> 1 : 0xEDB88320 ^ (value >> 1);
            }

            table[k] = value;
        }

        return table;
    }
}
