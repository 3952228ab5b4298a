using System.Buffers.Binary;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>
/// A classic CAN frame with an identifier of 29 bits, as SAE J1939 and ISO 11783 use it: when it came, and up to 8 bytes.
/// </summary>
public readonly struct CanFrame : IEquatable<CanFrame>
{
    /// <summary>Most bytes of a frame.</summary>
    public const int MostBytes = 8;

    /// <summary>Highest identifier.</summary>
    public const uint HighestId = 0x1FFFFFFF;

    private readonly ulong bytes;

    /// <summary>A frame.</summary>
    /// <param name="timeS">When it came, s.</param>
    /// <param name="id">Its identifier, up to 1FFFFFFF (hexadecimal).</param>
    /// <param name="data">Its bytes, up to 8; those that a message should have and this lacks count as not available.</param>
    /// <exception cref="ArgumentOutOfRangeException">The identifier or the bytes are too long.</exception>
    public CanFrame(double timeS, uint id, ReadOnlySpan<byte> data)
    {
        if (id > HighestId)
        {
            throw Guard.OutOfRange("CAN identifier", "up to 29 bits", id, string.Empty, nameof(id));
        }

        if (data.Length > MostBytes)
        {
            throw Guard.OutOfRange("Bytes of a CAN frame", "up to 8", data.Length, string.Empty, nameof(data));
        }

        TimeS = timeS;
        Id = id;
        Span<byte> all = stackalloc byte[MostBytes];
        all.Fill(0xFF);
        data.CopyTo(all);
        bytes = BinaryPrimitives.ReadUInt64LittleEndian(all);
    }

    /// <summary>When it came, s.</summary>
    public double TimeS { get; }

    /// <summary>Its identifier.</summary>
    public uint Id { get; }

    /// <summary>Parameter group number, without the destination where the identifier holds one.</summary>
    /// <example>18FEDF00: 65247. 18ECFF00: 60416.</example>
    public int ParameterGroup
    {
        get
        {
            int group = (int)(Id >> 8) & 0x3FFFF;
            return (group & 0xFF00) >= 0xF000 ? group : group & 0x3FF00;
        }
    }

    /// <summary>Address of the sender.</summary>
    public byte Source => (byte)Id;

    /// <summary>Address it is sent to, FF for all; of groups that go to all it is a part of their number.</summary>
    internal byte Destination => (byte)(Id >> 8);

    /// <summary>Whether two frames are the same.</summary>
    public static bool operator ==(CanFrame left, CanFrame right) => left.Equals(right);

    /// <summary>Whether two frames differ.</summary>
    public static bool operator !=(CanFrame left, CanFrame right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(CanFrame other) => TimeS.Equals(other.TimeS) && Id == other.Id && bytes == other.bytes;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CanFrame other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (TimeS.GetHashCode() * 397) ^ (int)Id;

    /// <summary>The frame in one line of English, the identifier hexadecimal.</summary>
    public override string ToString() => FormattableString.Invariant($"{Id:X8} at {TimeS} s");

    /// <summary>A byte, from 1 as the standards count.</summary>
    internal byte ByteAt(int place) => (byte)(bytes >> (8 * (place - 1)));

    /// <summary>Two bytes, the low one first, from 1 as the standards count.</summary>
    internal ushort WordAt(int place) => (ushort)(bytes >> (8 * (place - 1)));
}
