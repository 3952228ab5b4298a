using System.Globalization;
using Driveline.Monitoring;

namespace Driveline.Tests.Monitoring;

/// <content>Frames laid out by the reference table.</content>
public partial class EngineTorqueDecoderTests
{
    private const byte Engine = 0;

    private static double[] Torques(EngineTorqueDecoder decoder, CanFrame[] frames)
    {
        var torques = new List<double>();
        foreach (CanFrame frame in frames)
        {
            if (decoder.TryTake(in frame, out TorqueSample sample))
            {
                torques.Add(sample.TorqueNm);
            }
        }

        return [.. torques];
    }

    private static CanFrame At(CanFrame frame, double timeS)
    {
        byte[] bytes = [.. Enumerable.Range(1, 8).Select(frame.ByteAt)];
        return new CanFrame(timeS, frame.Id, bytes);
    }

    // A frame with parameters where the table puts them.
    private static CanFrame Frame(double timeS, int group, params (int Spn, double Value)[] parameters)
    {
        byte[] bytes = [0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF];
        foreach ((int spn, double value) in parameters)
        {
            Put(bytes, Row(spn, group), value);
        }

        return new CanFrame(timeS, 0x18000000 | ((uint)group << 8) | Engine, bytes);
    }

    private static ReferenceRow Row(int spn, int group) => Assert.Single(
        ReferenceTable.Read("pto", "telemetry.csv"),
        r => r["SPN"] == spn.ToString(CultureInfo.InvariantCulture) && r["PGN"] == group.ToString(CultureInfo.InvariantCulture));

    private static void Put(byte[] bytes, ReferenceRow row, double value)
    {
        string start = row["start_byte"];
        int place = int.Parse(start.Split(' ', '-')[0], CultureInfo.InvariantCulture) - 1;
        int raw = (int)Math.Round((value - double.Parse(row["offset"], CultureInfo.InvariantCulture))
            / double.Parse(row["resolution"], CultureInfo.InvariantCulture));
        if (start.Contains("bits", StringComparison.Ordinal))
        {
            // Bits 8-7 are the highest two.
            bytes[place] = (byte)((bytes[place] & 0x3F) | (raw << 6));
            return;
        }

        bytes[place] = (byte)raw;
        if (row["length_bits"] == "16")
        {
            bytes[place + 1] = (byte)(raw >> 8);
        }
    }

    // An announcement of 39 bytes in 6 packets and these, the reference torque where the table puts it.
    private static CanFrame[] Configuration(double timeS, double nm, byte to = 0xFF)
    {
        byte[] message = [.. Enumerable.Repeat((byte)0xFF, 42)];
        Put(message, Row(544, 65251), nm);
        byte control = to == 0xFF ? (byte)32 : (byte)16;
        uint announce = 0x1CEC0000u | ((uint)to << 8), data = 0x1CEB0000u | ((uint)to << 8);
        return
        [
            new CanFrame(timeS, announce | Engine, [control, 39, 0, 6, 0xFF, 0xE3, 0xFE, 0]),
            .. Enumerable.Range(0, 6).Select(k => new CanFrame(
                timeS + (0.05 * (k + 1)), data | Engine, [(byte)(k + 1), .. message.AsSpan(7 * k, 7)])),
        ];
    }
}
