using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Tests.Clutches;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Chains;

/// <summary>A clutch as it was seen judges itself, and its place tells the heat of its slips.</summary>
public class FittedClutchTests
{
    private static readonly RotationalSpeed Pto = RotationalSpeed.FromRevolutionsPerMinute(540);

    // 433 N at 1.5 m read 649.5 N·m within 10 %: at least 584.55 N·m while it slips.
    [Theory]
    [InlineData(380, true, "takes 4.2 kg·m² × 1.47² from rest to 540 rpm in 513.2 N·m·s / (584.55 − 380) N·m = 2.5 s")]
    [InlineData(584, false, "takes 513.2 / 0.55 = 933 s")]
    [InlineData(600, false, "never comes up to speed: 584.55 N·m are less than the 600 N·m that resist")]
    [InlineData(double.PositiveInfinity, false, "nobody knows how much resists")]
    public void StartUp_AgainstTheHighestWorkPeak_DecidesWhetherSlippingIsItsJob(double highNm, bool takesIt, string why)
    {
        TorqueBand work = TorqueBand.OfSi(new Band(240, 300, highNm), BandBasis.Of(Stated));
        Assert.True(takesIt == Place(WellSet(), work).StandsEngagement, why);
    }

    [Fact]
    public void OutOfPlace_HeatNotKnown_IsNoJobOfTheClutch()
    {
        Assert.False(WellSet().Device.StandsEngagement);
        Assert.False(Place(WellSet(), null).StandsEngagement);
        Assert.Contains(WellSet().WithSlipsInWork(3).Device.QuietBars, f => f.Code == DeviceFindings.SlipHeatNotKnown);
    }

    // Slips of 3 s, 20 an hour, of at most 714.5 N·m × 56.55 rad/s: the linings pass 200 °C; 2 an hour cool in between.
    [Theory]
    [InlineData(2, 2, false)]
    [InlineData(20, 3, true)]
    public void SlipsInWork_InPlace_TellHowHotTheLiningsGet(double perHour, double seconds, bool isTooHot)
    {
        SlipClutchDevice device = Place(WellSet().WithSlipsInWork(perHour).WithSlipTime(Duration.FromSeconds(seconds)), Nm(300));
        Assert.Equal(isTooHot, device.QuietBars.Any(f => f.Code == DeviceFindings.SlipsTooHot));
        Assert.DoesNotContain(device.QuietBars, f => f.Code == DeviceFindings.SlipHeatNotKnown);
        Assert.Equal(540, device.SpeedInWork!.Value.RevolutionsPerMinute, 1e-9);
    }

    [Theory]
    [InlineData(true, true, true, SlipTorqueSource.Measured)]
    [InlineData(true, false, true, SlipTorqueSource.Calculated)]
    [InlineData(false, true, true, SlipTorqueSource.Measured)]
    [InlineData(false, false, true, SlipTorqueSource.Stated)]
    [InlineData(false, false, false, SlipTorqueSource.NotKnown)]
    public void SlipTorque_OfWhatIsTold_TakesTheReadingThenTheSpringsThenTheDocuments(
        bool hasLength, bool isMeasured, bool isStated, SlipTorqueSource source)
    {
        FittedClutch clutch = FittedClutch.AsOf("clutch", Build.Today);
        clutch = hasLength ? clutch.With(Described()) : clutch;
        clutch = isMeasured ? clutch.WithSlipTest(Lever()) : clutch;
        clutch = isStated ? clutch.WithStatedTorque(Nm(650)) : clutch;
        Assert.Equal(source, clutch.SlipTorque.Source);
        Assert.Equal(isMeasured || hasLength, clutch.Device.InGoodOrder is not null && source != SlipTorqueSource.Stated);
    }

    [Fact]
    public void Surface_Dry_CountsAsCleanInWork()
    {
        FittedClutch clutch = FittedClutch.AsOf("clutch", Build.Today).WithSurface(SurfaceState.Dry);
        Assert.Equal(SurfaceState.Dry, clutch.Surface);
        Assert.Equal(SurfaceState.CleanInWork, clutch.Condition.Surface);
    }

    [Fact]
    public void Undated_TestOfAnyDay_DoesNotCount()
    {
        FittedClutch clutch = FittedClutch.Undated("clutch").With(Described()).WithStorage(Build.Today.AddDays(-30)).WithSlipTest(Lever());
        Assert.Contains(clutch.Device.GuardBars, f => f.Code == DeviceFindings.SlipTestUndated);
        Assert.Null(clutch.Device.Breakaway!.High);
    }

    [Fact]
    public void SlipTest_AfterTheDay_IsRefused()
    {
        FittedClutch clutch = FittedClutch.AsOf("clutch", Build.Today);
        Assert.Throws<ArgumentOutOfRangeException>(() => clutch.WithSlipTest(SlipTest.Slipped(Build.Today.AddDays(1))));
        Assert.Throws<ArgumentOutOfRangeException>(() => clutch.WithStorage(Build.Today.AddDays(1)));
    }

    [Fact]
    public void FoundStuck_AfterATestThatSlipped_IsStuckUntilTheNext()
    {
        FittedClutch stuck = FittedClutch.AsOf("clutch", Build.Today).WithSlipTest(Lever()).FoundStuck();
        Assert.True(stuck.Device.IsStuck);
        Assert.False(stuck.WithSlipTest(Lever()).Device.IsStuck);
    }

    [Fact]
    public void CooledHeatPath_StillAir_IsFromMemory() => Assert.Equal(BasisKind.FromMemory, WellSet().CooledHeatPath!.Basis.Kind);

    private static SlipTest Lever() => SlipTest.Lever(Build.Today.AddDays(-2), Force.FromNewtons(433), Length.FromMeters(1.5));

    private static DiscClutch Described() => DiscClutch.Of(
            Length.FromMillimeters(165), Length.FromMillimeters(100), 4, Facings.MouldedLining,
            SpringPack.Of(
                CoilSpring.OfRate(
                    ForcePerLength.FromNewtonsPerMillimeter(150), Length.FromMillimeters(40), Length.FromMillimeters(30), Build.Stated), 8))
        .WithSpringLength(Length.FromMillimeters(34.2), Length.FromMillimeters(0.4));

    private static FittedClutch WellSet() => FittedClutch.AsOf("clutch", Build.Today)
        .With(Described())
        .WithSurface(SurfaceState.Dry).WithRunIn(RunInState.RunIn).WithWear(LengthBand.Exactly(Length.Zero, Build.Stated))
        .WithStorage(Build.Today.AddDays(-30), 6).WithSlipTest(Lever())
        .WithPlateThickness(Length.FromMillimeters(12));

    private static SlipClutchDevice Place(FittedClutch clutch, TorqueBand? work) => Assert.Single(
        DrivelineChain.Of(
                Tube, clutch.Device, Part.Gearbox("gearbox", 1.47), Part.Rotor("blades", MassMomentOfInertia.FromKilogramSquareMeters(4.2)))
            .InPlace(Pto, work).Devices.OfType<SlipClutchDevice>());
}
