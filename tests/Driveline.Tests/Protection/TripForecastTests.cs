using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Protection;

public class TripForecastTests
{
    private static readonly Basis Stated = Basis.Given("the test");

    [Fact]
    public void PointStrength_IsAPlainPoissonProcess()
    {
        // Uniform peaks on [0, 1000], strength exactly 900: one peak in ten trips. At 40 peaks an hour the mean is 0.25 h
        // and the median 0.25 · ln 2 = 0.17329 h.
        TripForecast forecast = TripForecast.Of(Uniform(0, 1000), Of(900, 900, 900), 40);
        Assert.Equal(0.1, forecast.OnePeak.Value, 12);
        Assert.Equal(0.25, forecast.ExpectedTime!.Value.Hours, 9);
        Assert.Equal(0.173287, forecast.MedianTime!.Value.Hours, 6);
        Assert.Equal(1 - Math.Exp(-4), forecast.Within(Duration.FromHours(1)).Value, 9);
    }

    [Fact]
    public void SomeSpecimensNeverAct_HasNoMeanButAMedian()
    {
        // Uniform strength 500 to 1100, uniform peaks to 1000: a sixth of the bolts never breaks.
        TripForecast forecast = TripForecast.Of(Uniform(0, 1000), Uniform(500, 1100), 40);
        Assert.Null(forecast.ExpectedTime);
        Assert.NotNull(forecast.MedianTime);
        Assert.Null(forecast.TimeOf(0.9));
        Assert.Equal(5.0 / 6, forecast.Within(Duration.FromHours(1e8)).Value, 4);
    }

    [Fact]
    public void ExpectedTime_WorkedCase_Matches()
    {
        // Uniform strength 500 to 900, peaks uniform to 1000, q = 1 − s/1000. Mean = (1/400) ∫ 1000/(1000 − s) ds / λ
        // = (1000/400) ln(500/100) / λ = 4.0236 peaks-times; λ = 10 an hour: 0.40236 h.
        TripForecast forecast = TripForecast.Of(Uniform(0, 1000), Uniform(500, 900), 10);
        Assert.Equal(0.402359, forecast.ExpectedTime!.Value.Hours, 6);
        Assert.Equal(0.402359, forecast.ExpectedTimeUpTo(Duration.FromHours(1000)).Hours, 6);
        Assert.Equal(0.01, forecast.ExpectedTimeUpTo(Duration.FromHours(0.01)).Hours, 3);
    }

    [Fact]
    public void WeakSpecimensGoFirst_TheChanceFallsWithTheHoursStood()
    {
        TripForecast forecast = TripForecast.Of(Of(700, 850, 1000), Of(900, 1000, 1400), 40);
        double first = forecast.Within(Duration.FromHours(1)).Value;
        double tenth = forecast.Within(Duration.FromHours(10)).Value;
        double eleventh = forecast.Within(Duration.FromHours(11)).Value;
        Assert.True((eleventh - tenth) / (1 - tenth) < 0.5 * first);
    }

    [Fact]
    public void FatigueLife_EndsIt()
    {
        TripForecast forecast = TripForecast.Of(Of(700, 800, 900), Of(1000, 1200, 1500), 40);
        Assert.Null(forecast.ExpectedTime);
        TripForecast tired = forecast.WithFatigueLife(Duration.FromHours(100), Stated);
        Assert.Equal(100, tired.ExpectedTime!.Value.Hours, 6);
        Assert.Equal(1, tired.Within(Duration.FromHours(100)).Value);
        Assert.True(tired.Within(Duration.FromHours(99.9)).IsBelowFloor);
    }

    [Fact]
    public void FirstToAct_TwoAlikeDevices_ShareEvenly()
    {
        FirstToAct first = FirstToAct.Among(Of(900, 1000, 1200), Of(900, 1000, 1200));
        Assert.Equal(0.5, first.Devices[0].Value, 9);
        Assert.Equal(0.5, first.Devices[1].Value, 9);
    }

    [Fact]
    public void FirstToAct_Uniforms_WorkedCase_AddsToOne()
    {
        // A on [0, 2], B on [1, 3]: B is first only when A > B: 1/8 (area, as in InterferenceTests). A point at 2.5 is never first.
        FirstToAct first = FirstToAct.Among(Uniform(0, 2), Uniform(1, 3), Of(2.5, 2.5, 2.5));
        Assert.Equal(0.875, first.Devices[0].Value, 9);
        Assert.Equal(0.125, first.Devices[1].Value, 9);
        Assert.Equal(0, first.Devices[2].Value, 9);
        Assert.Equal(0, first.None.Value);
    }

    [Fact]
    public void FirstToAct_SeizedDevice_LeavesAShareWithNone()
    {
        BandDistribution seized = BandDistribution.Of(RatioBand.OfSi(new Band(900, 1000, double.PositiveInfinity), BandBasis.Of(Stated)));
        FirstToAct alone = FirstToAct.Among(seized);
        Assert.Equal(0.25, alone.None.Value, 12);
        Assert.Equal(0.75, alone.Devices[0].Value, 9);
    }

    [Fact]
    public void FirstToAct_TieOfPoints_GoesToTheFirstNamed()
    {
        FirstToAct first = FirstToAct.Among(Of(5, 5, 5), Of(5, 5, 5));
        Assert.Equal(1, first.Devices[0].Value);
        Assert.Equal(0, first.Devices[1].Value);
    }

    private static BandDistribution Of(double low, double expected, double high) =>
        BandDistribution.Of(RatioBand.Between(low, expected, high, Stated));

    private static BandDistribution Uniform(double low, double high) =>
        BandDistribution.Of(RatioBand.Between(low, (low + high) / 2, high, Stated), BandShape.Default.WithWeight(0));
}
