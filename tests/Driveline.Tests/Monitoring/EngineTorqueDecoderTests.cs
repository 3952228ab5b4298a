using System.Globalization;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

public partial class EngineTorqueDecoderTests
{
    // Layout from the table, numbers from the worked example: 25 % of 800 N·m at an engine of 1605.5 rpm and a PTO of 540 rpm.
    [Fact]
    public void Torque_OfFramesLaidOutByTheTable_IsThatOfTheWorkedExample()
    {
        ReferenceRow expected = Assert.Single(ReferenceTable.Read("pto", "worked-examples.csv"), r => r["id"] == "WE23");
        var decoder = new EngineTorqueDecoder();
        TorqueSample seen = default;
        Assert.False(decoder.TryTake(Frame(0, 65091, (1883, 540), (2408, 1)), out _));
        Assert.False(decoder.TryTake(Frame(0.01, 65247, (514, 13), (2978, 0)), out _));
        Assert.All(Configuration(0.02, 800), f => Assert.False(decoder.TryTake(f, out seen)));
        Assert.Equal(800, decoder.Reference!.Value.NewtonMeters);
        Assert.True(decoder.TryTake(Frame(0.1, 61444, (190, 1605.5), (513, 38)), out seen));
        Close.Relative(double.Parse(expected["expected_value_SI"], CultureInfo.InvariantCulture), seen.TorqueNm, 1e-3, expected["id"]);
        Close.Relative(540 * Math.PI / 30, seen.SpeedInRadPerS, 1e-12, "given");
        Assert.Equal(double.NaN, seen.SpeedOutRadPerS);
        Assert.Equal(0.1, seen.TimeS);
    }

    // WE21 and WE22: the frame 8A A0 28 7D 7D FF FF F5 says 13 % and 1300 rpm.
    [Fact]
    public void Frame_OfThePublicLog_SaysWhatItsDecodersSay()
    {
        var frame = new CanFrame(0, 0x18FEDF00, [0x8A, 0xA0, 0x28, 0x7D, 0x7D, 0xFF, 0xFF, 0xF5]);
        Assert.Equal(65247, frame.ParameterGroup);
        Assert.Equal(13, BusValue.Percent(frame.ByteAt(1)));
        Close.Relative(1300 * Math.PI / 30, BusValue.RadPerS(frame.WordAt(2)), 1e-12, "WE22: 0x28A0 · 0.125 rpm");
        Assert.Equal(0, BusValue.Percent(frame.ByteAt(5)));
    }

    // TM28: values up to 250 and FAFF; then reserved, errors, not available.
    [Theory]
    [InlineData(250, 125.0)]
    [InlineData(0, -125.0)]
    [InlineData(251, double.NaN)]
    [InlineData(254, double.NaN)]
    [InlineData(255, double.NaN)]
    public void Percent_OfEachByte_IsAValueOrNone(byte raw, double percent) => Assert.Equal(percent, BusValue.Percent(raw));

    [Theory]
    [InlineData(0xFAFF, 64255.0)]
    [InlineData(0xFB00, double.NaN)]
    [InlineData(0xFE00, double.NaN)]
    [InlineData(0xFFFF, double.NaN)]
    public void Torque_OfEachWord_IsAValueOrNone(int raw, double nm) => Assert.Equal(nm, BusValue.Nm((ushort)raw));

    // Without friction and losses the bound is higher: 38 % of 800 N·m times 2.973 = 903.8 N·m; with losses of 251 they count as 0.
    [Theory]
    [InlineData(255, 255, 903.8)]
    [InlineData(254, 254, 903.8)]
    [InlineData(138, 251, 594.6)]
    [InlineData(138, 130, 475.7)]
    public void Torque_FrictionOrLossesNotKnown_IsHigher(byte friction, byte losses, double nm)
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(800));
        decoder.TryTake(Frame(0, 65091, (1883, 540), (2408, 1)), out _);
        decoder.TryTake(new CanFrame(0, 0x18FEDF00, [friction, 0xFF, 0xFF, 0xFF, losses]), out _);
        Assert.True(decoder.TryTake(Frame(0.1, 61444, (190, 1605.5), (513, 38)), out TorqueSample seen));
        Close.Relative(nm, seen.TorqueNm, 1e-3, "hand");
    }

    [Theory]
    [InlineData(0xFE, 1)]
    [InlineData(0xFF, 0)]
    public void Torque_InErrorOrNotAvailable_IsASampleThatIsNoNumber(byte raw, int errors)
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(800));
        decoder.TryTake(Frame(0, 65091, (1883, 540), (2408, 1)), out _);
        Assert.True(decoder.TryTake(new CanFrame(0, 0x0CF00400, [0xFF, 0xFF, raw, 0x2C, 0x32]), out TorqueSample seen));
        Assert.Equal(double.NaN, seen.TorqueNm);
        Assert.Equal(errors, decoder.Errors);
        var monitor = new OverloadMonitor(Streams.Settings());
        Streams.Feed(monitor, [seen]);
        Assert.Equal(1, monitor.Counts.NotANumber);
    }

    [Fact]
    public void Pto_Off_IsASampleAtRest()
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(800));
        decoder.TryTake(Frame(0, 65091, (2408, 0)), out _);
        Assert.True(decoder.TryTake(Frame(0.1, 61444, (190, 1605.5), (513, 38)), out TorqueSample seen));
        Assert.Equal(0, seen.TorqueNm);
        Assert.Equal(0, seen.SpeedInRadPerS);
    }

    [Fact]
    public void Pto_NotHeardOfForASecond_GivesNoSample()
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(800));
        Assert.False(decoder.TryTake(Frame(0, 61444, (190, 1605.5), (513, 38)), out _));
        decoder.TryTake(Frame(0, 65091, (1883, 540), (2408, 1)), out _);
        Assert.True(decoder.TryTake(Frame(1, 61444, (190, 1605.5), (513, 38)), out _));
        Assert.False(decoder.TryTake(Frame(1.01, 61444, (190, 1605.5), (513, 38)), out _));
        Assert.Equal(2, decoder.WithoutPto);
    }

    // The ratio of a PTO that only begins to turn is taken as 6: 6 · 25 % · 800 N·m.
    [Fact]
    public void Torque_OfAPtoThatBeginsToTurn_TakesNoRatioAboveSix()
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(800));
        decoder.TryTake(Frame(0, 65091, (1883, 20), (2408, 1)), out _);
        decoder.TryTake(Frame(0, 65247, (514, 13), (2978, 0)), out _);
        decoder.TryTake(Frame(0, 61444, (190, 1605.5), (513, 38)), out TorqueSample seen);
        Close.Relative(1200, seen.TorqueNm, 1e-12, "hand");
    }

    [Fact]
    public void Reference_NotKnown_GivesNoSample()
    {
        var decoder = new EngineTorqueDecoder();
        decoder.TryTake(Frame(0, 65091, (1883, 540), (2408, 1)), out _);
        Assert.False(decoder.TryTake(Frame(0.1, 61444, (190, 1605.5), (513, 38)), out _));
        Assert.Equal(1, decoder.WithoutReference);
        Assert.Null(decoder.Reference);
    }

    // A packet left out, two in the wrong order, one too late, another announcement between, another sender: no torque.
    [Theory]
    [InlineData("0 1 3 4 5 6")]
    [InlineData("0 2 1 3 4 5 6")]
    [InlineData("0 1 2 late 3 4 5 6")]
    [InlineData("0 1 2 other 3 4 5 6")]
    [InlineData("0 1 2 3 4 5")]
    [InlineData("1 2 3 4 5 6")]
    public void Reference_OfPacketsNotInOrder_IsNotTaken(string order)
    {
        CanFrame[] frames = Configuration(0, 800);
        var decoder = new EngineTorqueDecoder();
        double late = 0;
        foreach (string step in order.Split(' '))
        {
            late += step == "late" ? 1.3 : 0;
            CanFrame frame = step == "other" ? new CanFrame(late, 0x1CECFF00, [32, 9, 0, 2, 255, 0xCA, 0xFE, 0])
                : step == "late" ? default
                : frames[int.Parse(step, CultureInfo.InvariantCulture)];
            decoder.TryTake(At(frame, frame.TimeS + late), out _);
        }

        Assert.Null(decoder.Reference);
    }

    [Fact]
    public void Reference_SentToOneAddressOrTwice_IsTaken()
    {
        CanFrame[] frames = Configuration(0, 655, to: 0x27);
        var decoder = new EngineTorqueDecoder();
        Assert.All([frames[0], frames[1], frames[1], .. frames[2..]], f => decoder.TryTake(f, out _));
        Assert.Equal(655, decoder.Reference!.Value.NewtonMeters);
    }

    [Fact]
    public void Reference_StatedAndOnTheBus_IsTheHigher()
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(700));
        Assert.All(Configuration(0, 650), f => decoder.TryTake(f, out _));
        Assert.Equal(700, decoder.Reference!.Value.NewtonMeters);
        Assert.All(Configuration(1, 800), f => decoder.TryTake(f, out _));
        Assert.Equal(800, decoder.Reference!.Value.NewtonMeters);
    }

    [Fact]
    public void Engine_OtherThanTheFirst_IsNotHeard()
    {
        var decoder = new EngineTorqueDecoder(Torque.FromNewtonMeters(800));
        decoder.TryTake(Frame(0, 65091, (1883, 540), (2408, 1)), out _);
        Assert.True(decoder.TryTake(Frame(0, 61444, (190, 1605.5), (513, 38)), out _));
        Assert.False(decoder.TryTake(new CanFrame(0.02, 0x0CF00401, [0xFF, 0xFF, 200, 0x2C, 0x32]), out _));
    }

    // Bound of the torque, so no work peak for a case: neither a safe nor an unsafe one.
    [Fact]
    public void WorkPeak_OfUpperBounds_IsNotLearned()
    {
        var monitor = new OverloadMonitor(
            MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(0.01)).WithUpperBoundTorque());
        Streams.Feed(monitor, [.. Enumerable.Range(0, 60_000).Select(k =>
            new TorqueSample(k * 0.01, 56, k % 500 == 50 ? 620 + (k / 500 * 7 % 60) : 300))]);
        WorkPeakEstimate learned = monitor.LearnWorkPeak(Duration.FromHours(0.5), ActedInWork.Never);
        Assert.Null(learned.Torque);
        Assert.True(learned.AtMost!.Value.NewtonMeters >= 679);
        Assert.Contains(learned.Findings, f => f.Code == MonitoringFindings.TorqueIsUpperBound);
        Assert.Null(monitor.LearnWorkPeak(Duration.FromHours(0.5)).AtMost);
    }

    [Fact]
    public void Snapshot_AtAnyFrame_GivesTheSameLaterSamples()
    {
        CanFrame[] frames =
        [
            Frame(0, 65091, (1883, 540), (2408, 1)), .. Configuration(0.01, 800), Frame(0.1, 65247, (514, 13), (2978, 2)),
            Frame(0.2, 61444, (190, 1605.5), (513, 38)), Frame(0.3, 61444, (190, 1500), (513, 41)),
        ];
        double[] expected = Torques(new EngineTorqueDecoder(), frames);
        Assert.Equal(2, expected.Length);
        for (int cut = 0; cut <= frames.Length; cut++)
        {
            var first = new EngineTorqueDecoder();
            double[] before = Torques(first, frames[..cut]);
            Assert.True(EngineTorqueDecoder.TryRestore(first.Save(), out EngineTorqueDecoder? second));
            double[] seen = [.. before, .. Torques(second!, frames[cut..])];
            Assert.Equal(expected, seen);
        }

        byte[] bytes = new EngineTorqueDecoder().Save();
        bytes[9] ^= 1;
        Assert.False(EngineTorqueDecoder.TryRestore(bytes, out _));
        Assert.False(EngineTorqueDecoder.TryRestore(bytes.AsSpan(1), out _));
    }

    // Frames of any bytes: samples or none, and a state that can be saved.
    [Fact]
    public void Frames_OfAnyBytes_NeverThrow()
    {
        var random = new Random(11);
        uint[] ids = [0x0CF00400, 0x18FEDF00, 0x18FE43F0, 0x1CECFF00, 0x1CEBFF00, 0x1CEC2700];
        var decoder = new EngineTorqueDecoder();
        byte[] bytes = new byte[8];
        for (int k = 0; k < 20_000; k++)
        {
            random.NextBytes(bytes);
            bytes[0] = random.Next(3) == 0 ? (byte)random.Next(34) : bytes[0];
            double time = random.Next(200) == 0 ? double.NaN : random.Next(300) == 0 ? double.PositiveInfinity : k * 0.01;
            var frame = new CanFrame(time, ids[random.Next(ids.Length)], bytes.AsSpan(0, random.Next(9)));
            Assert.True(!decoder.TryTake(frame, out TorqueSample sample) || !(sample.TorqueNm < 0));
            Assert.True(k % 100 != 0 || EngineTorqueDecoder.TryRestore(decoder.Save(), out _));
        }
    }

    [Fact]
    public void Frame_TooLong_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CanFrame(0, 0x20000000, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CanFrame(0, 0, new byte[9]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new EngineTorqueDecoder(Torque.FromNewtonMeters(0)));
    }
}
