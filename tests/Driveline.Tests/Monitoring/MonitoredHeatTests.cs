using Driveline.Clutches;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

/// <summary>The face temperature a monitor follows, against the heat model of the clutches.</summary>
public class MonitoredHeatTests
{
    private const double Nm = 300;
    private const double Slip = 50;

    // Constant slip: the rise of SlipHeat, which is checked against published examples, apart from the fastest modes at the very beginning.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(4)]
    public void Face_UnderConstantSlip_IsAsHotAsTheModelSays(double lastsS)
    {
        HeatPath path = NoCooling();
        var slip = SlipEvent.Blocked(Torque.FromNewtonMeters(Nm), RotationalSpeed.FromRadiansPerSecond(Slip), Duration.FromSeconds(lastsS));
        double expected = SlipHeat.Of(slip, path, Facings.MouldedLining, Air).EndFaceTemperature!.Value.Kelvins - Air.Kelvins;
        double seen = Slipping(path, lastsS).History.FaceTemperature!.Value.Kelvins - Air.Kelvins;
        double rest = 0.016 * path.PlateShare * Nm * Slip / (path.Faces * path.AreaM2) * path.ThicknessM / path.Plate.WPerMK;
        Assert.InRange(seen - expected, -1e-6 * expected, rest);
        Close.Relative(expected, seen, 0.02, "SlipHeat at the end of the slip");
    }

    // As one lump, RepeatedSlips: T_max = T0 + ΔT / (1 - exp(-β t1)) long after the first slip.
    [Fact]
    public void Plates_SlipAfterSlip_SettleWhereRepeatedSlipsSays()
    {
        HeatPath path = Streams.Path();
        var slip = SlipEvent.Blocked(Torque.FromNewtonMeters(Nm), RotationalSpeed.FromRadiansPerSecond(Slip), Duration.FromSeconds(1));
        RepeatedSlips repeated = RepeatedSlips.Of(slip, path, Air, Duration.FromSeconds(120));
        var monitor = new OverloadMonitor(Settings(path, 1));
        var samples = new List<TorqueSample>();
        for (int t = 0; t < 120 * 200; t++)
        {
            // One second of slip in each two minutes, as two halves of a triangle of twice the height: the same heat.
            samples.Add(new TorqueSample(t, Slip, t % 120 == 1 ? 0 : Slip, Nm));
        }

        Streams.Feed(monitor, [.. samples]);
        Close.Relative(repeated.Lowest.Kelvins, monitor.History.FaceTemperature!.Value.Kelvins, 2e-3,
            "RepeatedSlips.Lowest, one second earlier");
    }

    [Fact]
    public void Face_HotterThanItMayBe_IsAnEvent()
    {
        var monitor = new OverloadMonitor(Settings(NoCooling(), 0.01));
        var events = new List<MonitorEvent>();
        monitor.Feed([.. Enumerable.Range(0, 3000).Select(k =>
            new TorqueSample(k * 0.01, Slip, k is > 0 and < 2500 ? 0 : Slip, Nm))], events);
        monitor.Finish(events);
        MonitorEvent hot = Assert.Single(events, e => e.Kind == MonitorEventKind.Overheat);
        Assert.True(hot.PeakFaceK > 400);
    }

    [Fact]
    public void Face_WithoutAPath_IsNotKnown()
    {
        var monitor = new OverloadMonitor(MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(1)));
        Streams.Feed(monitor, [new TorqueSample(0, 50, 0, 300), new TorqueSample(1, 50, 0, 300)]);
        Assert.Null(monitor.History.FaceTemperature);
    }

    private static Temperature Air => Temperature.FromDegreesCelsius(30);

    private static HeatPath NoCooling() => HeatPath
        .Of(Area.FromSquareMeters(0.012), 2, ThermalMaterials.HighCarbonCastIron, Length.FromMillimeters(4),
            ThermalMaterials.OrganicLiningWorn);

    private static MonitorSettings Settings(HeatPath path, double periodS) => MonitorSettings
        .Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(periodS)).WithClutch(path, Facings.MouldedLining, Air);

    // The first sample already slips, so that the slip lasts from the first to the last.
    private static OverloadMonitor Slipping(HeatPath path, double lastsS)
    {
        var monitor = new OverloadMonitor(Settings(path, 0.001));
        int count = (int)Math.Round(lastsS / 0.001);
        Streams.Feed(monitor, [.. Enumerable.Range(0, count + 1).Select(k => new TorqueSample(k * 0.001, Slip, 0, Nm))]);
        return monitor;
    }
}
