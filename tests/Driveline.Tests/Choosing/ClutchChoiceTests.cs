using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;
using UnitsNet;
using Clutch = Driveline.Tests.Clutches.Build;

namespace Driveline.Tests.Choosing;

/// <summary>
/// Nine springs of 160 N/mm, μ exactly 0.35 running and 0.42 at breakaway, two faces at 106.25 mm: 107.1 N·m running and 128.52 N·m
/// at breakaway for each millimeter of deflection, 10 mm to solid, a rule read within 0.4 mm.
/// </summary>
public class ClutchChoiceTests
{
    [Fact]
    public void For_RoomBetween_GivesTheWindow()
    {
        // hand: quiet above 107.1 (s − 0.4) = 200, s = 2.2674 mm, 242.84 N·m; guards below 128.52 (s + 0.4) = 600, s = 4.2685 mm, 457.16
        // N·m
        ClutchChoice choice = Of(600, 200);
        Assert.Equal(242.84, choice.Window!.LowTorque.NewtonMeters, 0.05);
        Assert.Equal(457.16, choice.Window.HighTorque.NewtonMeters, 0.05);
        Assert.Equal(47.7326, choice.Window.Lowest.SpringLength.Millimeters, 0.001);
        Assert.Equal(45.7315, choice.Window.Highest.SpringLength.Millimeters, 0.001);
        Assert.True(choice.Window.Holds(choice.Best!.Torque));
        Assert.False(choice.Window.Holds(Torque.FromNewtonMeters(242)));
        Assert.False(choice.Window.Holds(Torque.FromNewtonMeters(458)));
        Assert.Equal([ChoosingFindings.SlipAfterSetting, ChoosingFindings.SettingNotTheManuals], Codes(choice).Take(2));
        Assert.Contains(ChoosingCautions.OnlyTheManualsSetting, choice.Cautions);
    }

    [Fact]
    public void Best_HasTheGreaterOfTheWorseMargin()
    {
        // hand: 107.1 (s − 0.4) / 200 = 600 / (128.52 (s + 0.4)) at s² = 0.16 + 8.7181, s = 2.9796 mm; both margins 1.3814
        ClutchPoint best = Of(600, 200).Best!;
        Assert.Equal(1.3814, best.WorkMargin!.Value, 0.001);
        Assert.Equal(1.3814, best.GuardMargin!.Value, 0.001);
    }

    [Fact]
    public void Window_SettingSpecified_IsTheManuals()
    {
        ProtectiveDevice manual = StatedDevice.Of(
            "clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Tests.Protection.Thornbeck.Nm(300));
        Assert.DoesNotContain(ChoosingFindings.SettingNotTheManuals, Codes(Of(Question(600, 200).WithSpecified(manual))));
        ProtectiveDevice other = StatedDevice.Of("clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Tests.Protection.Thornbeck.Nm(500));
        Assert.Contains(ChoosingFindings.SettingNotTheManuals, Codes(Of(Question(600, 200).WithSpecified(other))));
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(-1, false)]
    public void ChangePower_WorkBelowTheNumber_OpensAWindow(int side, bool opens)
    {
        ClutchChoice none = Of(600, 500);
        Assert.Null(none.Window);
        Finding power = Assert.Single(none.Findings, f => f.Code == ChoosingFindings.ChangePower);

        // hand: the highest setting that guards has s = 4.2685 mm and 107.1 × 3.8685 = 414.3 N·m at least
        double below = power.Value("below");
        Assert.Equal(414.3, below, 0.1);
        Assert.Equal(opens, Of(600, below * (1 - (side * 0.0005))).Window is not null);
    }

    [Fact]
    public void For_NoRoom_NamesThePartAndTheBestSetting()
    {
        ClutchChoice none = Of(600, 500);
        Finding no = Assert.Single(none.Findings, f => f.Code == ChoosingFindings.NoSetting);
        Assert.Equal(none.Best!.WorkMargin!.Value, no.Value("workMargin"), 1e-12);
        Assert.True(none.Best.WorkMargin < 1);
        Finding part = Assert.Single(none.Findings, f => f.Code == ChoosingFindings.ChangePart);
        Assert.Equal("drive tube", part.Parameter("name")!.Text);

        // hand: the lowest quiet setting has s = 500 / 107.1 + 0.4 = 5.0685 mm and 128.52 × 5.4685 = 702.8 N·m at most
        Assert.Equal(702.8, part.Value("above"), 0.1);
        Assert.Equal(600, part.Value("now"), 1e-9);
        Assert.NotNull(Of(part.Value("above") * 1.0005, 500).Window);
        Assert.Null(Of(part.Value("above") * 0.9995, 500).Window);
    }

    [Fact]
    public void For_SpringsTooWeak_AsksForStrongerOnes()
    {
        // hand: solid at 1071 N·m, and the work needs 1100
        ClutchChoice choice = Of(2500, 1100);
        Assert.Null(choice.Window);
        Finding springs = Assert.Single(choice.Findings, f => f.Code == ChoosingFindings.ChangeSprings);
        Assert.True(springs.Value("above") > springs.Value("now"));
        Assert.DoesNotContain(ChoosingFindings.ChangePart, Codes(choice));
    }

    [Fact]
    public void For_FacesNotKnown_SaysWhatCleanOnesWouldOpen()
    {
        ProtectionQuestion question = Question(600, 120);
        ClutchChoice choice = ClutchChoice.For(question, Place(question), Clutch.NineSprings(), ClutchCondition.AsOf(Clutch.Today));
        Assert.Null(choice.Window);
        Finding faces = Assert.Single(choice.Findings, f => f.Code == ChoosingFindings.ChangeFaces);
        Assert.True(faces.Value("low") < faces.Value("high"));
    }

    [Fact]
    public void For_MissingFacts_OffersNoSetting()
    {
        ProtectionQuestion full = Question(600, 200);
        Assert.Equal(ChoosingFindings.SettingNeedsList, Missing(full.WithPartsComplete(false)));
        Assert.Equal(ChoosingFindings.SettingNeedsWork, Missing(full.WithWork(null)));
        ProtectionQuestion noTube = full.WithChain(DrivelineChain.Of(
            Tests.Protection.Thornbeck.Stub, Part.Shaft("drive tube"), Place(full), Tests.Protection.Thornbeck.Gearbox,
                Tests.Protection.Thornbeck.Blades));
        Assert.Equal(ChoosingFindings.SettingNeedsPart, Missing(noTube));
        ProtectionQuestion noLimit = full.WithChain(DrivelineChain.Of(Part.Shaft("drive tube"), Place(full), Part.Gearbox("gearbox", 1.5)));
        Assert.Equal(ChoosingFindings.LimitsNotKnown, Missing(noLimit));

        static string Missing(ProtectionQuestion question)
        {
            ClutchChoice choice = Of(question);
            Assert.Null(choice.Window);
            Assert.Null(choice.Best);
            return choice.Findings[0].Code;
        }
    }

    [Theory]
    [InlineData(SurfaceState.Oiled, ChoosingFindings.MendOiled)]
    [InlineData(SurfaceState.Glazed, ChoosingFindings.MendGlazed)]
    public void For_OiledOrGlazedLinings_OffersNoSettingAndSaysFirstWhatToMend(SurfaceState surface, string code)
    {
        ProtectionQuestion question = Question(2500, 20);
        ClutchChoice choice = ClutchChoice.For(
            question, Place(question), Clutch.NineSprings(), Clutch.Clean(RunInState.RunIn).WithSurface(surface));
        Assert.Null(choice.Window);
        Assert.Null(choice.Best);
        Assert.Equal(code, choice.Findings[0].Code);
    }

    [Fact]
    public void For_StuckClutch_OffersNoSetting()
    {
        ProtectionQuestion question = Question(600, 200);
        ClutchChoice choice = ClutchChoice.For(question, Place(question), Clutch.NineSprings(), Clutch.Clean(RunInState.RunIn).Stuck());
        Assert.Null(choice.Window);
        Assert.Equal(ChoosingFindings.SettingNeedsFreeClutch, choice.Findings[0].Code);
    }

    [Fact]
    public void For_TestInWhichItDidNotSlip_OffersNoSetting()
    {
        ProtectionQuestion question = Question(600, 200);
        ClutchCondition tested = Clutch.Clean(RunInState.RunIn).WithSlipTest(SlipTest.DidNotSlip(Clutch.Today));
        ClutchChoice choice = ClutchChoice.For(question, Place(question), Clutch.NineSprings(), tested);
        Assert.Null(choice.Window);
        Assert.Null(choice.Best);
        Assert.Equal(ChoosingFindings.SettingNeedsFreeClutch, choice.Findings[0].Code);
    }

    [Fact]
    public void WithoutClutch_SaysThatAndWhatElseIsMissing()
    {
        ProtectionQuestion question = Question(600, 200).WithPartsComplete(false);
        ClutchChoice choice = ClutchChoice.WithoutClutch(question, Place(question), Clutch.Clean(RunInState.RunIn).Stuck());
        Assert.Null(choice.Clutch);
        Assert.Null(choice.Window);
        Assert.Null(choice.Best);
        Assert.Same(Place(question), choice.Place);
        Assert.Equal([ChoosingFindings.SettingNeedsClutch, ChoosingFindings.SettingNeedsFreeClutch, ChoosingFindings.SettingNeedsList],
            Codes(choice));
        Assert.Throws<ArgumentException>(
            () => ClutchChoice.WithoutClutch(question, Place(Question(600, 200)), Clutch.Clean(RunInState.RunIn)));
    }

    [Fact]
    public void NutTurns_AreDeflectionOverPitch()
    {
        ClutchChoice choice = Of(600, 200);
        Assert.Null(choice.NutTurns(choice.Best!));
        Assert.Null(choice.ThreadPitch);

        // hand: s = 2.9796 mm, over 1.5 mm
        ClutchChoice pitched = choice.WithThreadPitch(Length.FromMillimeters(1.5));
        Assert.Equal(1.9864, pitched.NutTurns(pitched.Best!)!.Value, 0.0005);
        Assert.Equal(1.5, pitched.ThreadPitch!.Value.Millimeters, 1e-12);
        Assert.Same(choice.Window, pitched.Window);
        Assert.Throws<ArgumentOutOfRangeException>(() => choice.WithThreadPitch(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => choice.WithThreadPitch(Length.FromMillimeters(10.1)));
    }

    [Fact]
    public void Window_OnlyABoltSpecified_IsNotTheManuals() => Assert.Contains(
        ChoosingFindings.SettingNotTheManuals,
        Codes(Of(Question(600, 200)
            .WithSpecified(StatedDevice.Of("bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Tests.Protection.Thornbeck.Nm(300))))));

    [Fact]
    public void BoltChoice_ClutchAlone_SaysThatThereIsNoBolt()
    {
        ProtectiveDevice clutch = StatedDevice.Of(
            "clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Tests.Protection.Thornbeck.Nm(300));
        BoltChoice choice = BoltChoice.For(Bench.Question(clutch, 600, 200));
        Assert.Empty(choice.Choices);
        Assert.Equal([ChoosingFindings.NoBolt], choice.Findings.Select(f => f.Code));
        BoltChoice unknown = BoltChoice.For(Bench.Question(StatedDevice.NotIdentified("bolt"), 600, 200));
        Assert.Contains(ChoosingFindings.NoKnownJoint, unknown.Findings.Select(f => f.Code));
    }

    [Fact]
    public void For_PlaceOfAnotherDriveline_IsRefused() => Assert.Throws<ArgumentException>(
        () => ClutchChoice.For(Question(600, 200), Place(Question(600, 200)), Clutch.NineSprings(), Clutch.Clean(RunInState.RunIn)));

    private static ProtectiveDevice Place(ProtectionQuestion question) => question.Chain.Devices[0];

    private static ProtectionQuestion Question(double tubeNm, double workNm) => Bench.Question(tubeNm, workNm).WithSpecified(null);

    private static ClutchChoice Of(double tubeNm, double workNm) => Of(Question(tubeNm, workNm));

    private static ClutchChoice Of(ProtectionQuestion question) =>
        ClutchChoice.For(question, Place(question), Clutch.NineSprings(), Clutch.Clean(RunInState.RunIn));

    private static string[] Codes(ClutchChoice choice) => [.. choice.Findings.Select(f => f.Code)];
}
