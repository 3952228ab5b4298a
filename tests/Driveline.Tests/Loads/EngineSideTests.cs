using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class EngineSideTests
{
    // 26 kW at 540 min⁻¹: 459.8 N·m; with a reserve of 0.25 574.7 N·m.
    [Fact]
    public void StallTorque_StatedReserve_IsOnTopOfRated()
    {
        EngineSide engine = EngineSide.OfPtoPower(Watts(26e3), Rated);
        Close.Relative(459.8, engine.RatedTorque.Expected!.Value.NewtonMeters, 2e-4, "hand: 26000 / 56.549");
        Assert.False(engine.StallTorque.HasExpected);
        Assert.Contains(engine.Findings, f => f.Code == LoadsFindings.TorqueReserveNotStated);
        EngineSide stated = engine.WithTorqueReserve(Ratio(0.25));
        Close.Relative(574.7, stated.StallTorque.High!.Value.NewtonMeters, 2e-4, "hand: × 1.25");
        Assert.Empty(stated.Findings);
    }

    // 100 kW engine at 540 min⁻¹: 1768.4 N·m × 0.80, 0.86 and 0.922.
    [Fact]
    public void OfEnginePower_RatioNotStated_KeepsEverySource()
    {
        EngineSide engine = EngineSide.OfEnginePower(Watts(100e3), Rated);
        Close.Relative(1414.7, engine.RatedTorque.Low.NewtonMeters, 1e-4, "hand: 80 kW");
        Close.Relative(1520.8, engine.RatedTorque.Expected!.Value.NewtonMeters, 1e-4, "hand: 86 kW");
        Close.Relative(1630.5, engine.RatedTorque.High!.Value.NewtonMeters, 1e-4, "hand: 92.2 kW");
        Assert.Contains(engine.Findings, f => f.Code == LoadsFindings.PtoPowerRatiosDiffer);
        Assert.Equal(BasisKind.FromMemory, engine.RatedTorque.WeakestBasis.Kind);
        Assert.DoesNotContain(
            EngineSide.OfEnginePower(Watts(100e3), Ratio(0.9), Rated).Findings, f => f.Code == LoadsFindings.PtoPowerRatiosDiffer);
    }

    // An economy ratio is lower: the same engine torque gives less torque at the PTO (TS09).
    [Fact]
    public void OfEngineTorque_EconomyPto_GivesLessTorque()
    {
        double rated = EngineSide.OfEngineTorque(Nm(300), 2400.0 / 540, Ratio(0.95)).RatedTorque.Expected!.Value.NewtonMeters;
        double economy = EngineSide.OfEngineTorque(Nm(300), 1700.0 / 540, Ratio(0.95)).RatedTorque.Expected!.Value.NewtonMeters;
        Close.Relative(1700.0 / 2400, economy / rated, 1e-12, "TS05 and TS09");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.001)]
    public void PtoPower_RatioOutOfRange_IsRefused(double ratio)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EngineSide.PtoPower(Watts(1e4), Ratio(ratio)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EngineSide.OfEngineTorque(Nm(300), 4, Ratio(ratio)));
    }

    [Fact]
    public void PtoPower_RatioWithoutUpperEnd_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => EngineSide.PtoPower(Watts(1e4), RatioBand.AtLeast(0.8, Given)));

    [Theory]
    [InlineData(0.05)]
    [InlineData(101)]
    [InlineData(double.NaN)]
    public void OfEngineTorque_SpeedRatioOutOfRange_IsRefused(double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EngineSide.OfEngineTorque(Nm(300), ratio, Ratio(1)));

    [Fact]
    public void EngineTorqueReading_BelowFriction_IsNoTorque()
    {
        EngineTorqueReading idle = EngineTorqueReading.Of(
            10, 13, 2, Torque.FromNewtonMeters(800), RotationalSpeed.FromRevolutionsPerMinute(900));
        Assert.Equal(0, idle.AtPto(Rated, Ratio(1)).High!.Value.NewtonMeters);
        Assert.Throws<ArgumentOutOfRangeException>(
            () => EngineTorqueReading.Of(126, 13, 0, Torque.FromNewtonMeters(800), RotationalSpeed.FromRevolutionsPerMinute(900)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => EngineTorqueReading.Of(38, 13, 0, Torque.FromNewtonMeters(800), RotationalSpeed.Zero));
    }
}
