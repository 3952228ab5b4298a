namespace Driveline.Monitoring;

/// <summary>Picks the reference torque (SPN 544) out of engine configuration (PGN 65251), which comes in several packets.</summary>
/// <remarks>
/// Transport protocol of SAE J1939-21: an announcement (PGN 60416, control byte 32 to all, 16 to one) names the group, its bytes and its
/// packets; each packet (PGN 60160) has its number and 7 bytes. The torque stands in bytes 20 and 21, in packet 3. A packet that is
/// missing, or comes more than 1.25 s after the one before, ends it without a value, and so does another announcement of the same sender.
/// </remarks>
internal sealed class ReferenceTorqueTransport
{
    public const int Announcement = 60416;
    public const int Packet = 60160;

    private const int Configuration = 65251;
    private const int ToAll = 32;
    private const int ToOne = 16;
    private const int PacketOfTorque = 3;
    private const int PlaceInPacket = 7;
    private const double LongestS = 1.25;
    private const int Closed = 0;

    private int next;
    private int packets;
    private int sender;
    private double lastS;
    private int word;

    /// <summary>Takes an announcement.</summary>
    public void Announce(in CanFrame frame)
    {
        int control = frame.ByteAt(1);
        int from = AddressesOf(in frame);
        if (control is not (ToAll or ToOne))
        {
            return;
        }

        if (frame.WordAt(6) + (frame.ByteAt(8) << 16) == Configuration && frame.ByteAt(4) >= PacketOfTorque)
        {
            next = 1;
            packets = frame.ByteAt(4);
            sender = from;
            lastS = frame.TimeS;
        }
        else if (from == sender)
        {
            next = Closed;
        }
    }

    /// <summary>Takes a packet; true when it completes the message, with the torque as it stands there.</summary>
    public bool Take(in CanFrame frame, out ushort torque)
    {
        torque = (ushort)word;
        if (next == Closed || AddressesOf(in frame) != sender)
        {
            return false;
        }

        int number = frame.ByteAt(1);
        if (number != next || !(Math.Abs(frame.TimeS - lastS) <= LongestS))
        {
            // The same packet once more is a repetition.
            next = number == next - 1 ? next : Closed;
            return false;
        }

        word = number == PacketOfTorque ? frame.WordAt(PlaceInPacket) : word;
        torque = (ushort)word;
        lastS = frame.TimeS;
        next = number == packets ? Closed : next + 1;
        return next == Closed;
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Index(ref next, 0, byte.MaxValue + 1);
        cursor.Index(ref packets, 0, byte.MaxValue);
        cursor.Index(ref sender, 0, ushort.MaxValue);
        cursor.NumberOrNone(ref lastS);
        cursor.Index(ref word, 0, ushort.MaxValue);
    }

    private static int AddressesOf(in CanFrame frame) => (frame.Destination << 8) | frame.Source;
}
