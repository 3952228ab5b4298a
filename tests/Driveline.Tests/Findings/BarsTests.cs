using System.Text.RegularExpressions;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Tests.Clutches;
using Driveline.Tests.Protection;
using UnitsNet;

namespace Driveline.Tests.Findings;

/// <summary>What is not known bars a Yes; whatever does not is listed here with its reason.</summary>
public partial class BarsTests
{
    private static readonly Dictionary<string, string> NotKnownAndBarringNothing = new(StringComparer.Ordinal)
    {
        [ShearBoltFindings.HoleFitNotKnown] = "the low end of the torque already counts the bolts as parting one by one",
        [ClutchFindings.RunInNotKnown] = "the torque band spans the new and the worn-in friction radius",
        [ClutchFindings.FacingLimitNotKnown] = "a limit of pressure, which neither question asks about",
        [ProtectionFindings.SpecifiedNotKnown] = "what the manual names is a third question beside the two",
        [SpecifiedFindings.GradeNotKnown] = "open in the third question; the device itself bars what it leaves open of the two",
        [SpecifiedFindings.HolesNotKnown] = "open in the third question; the device itself bars what it leaves open of the two",
        [SpecifiedFindings.OrderNotKnown] = "open in the third question; the device itself bars what it leaves open of the two",
        [SpecifiedFindings.SettingNotKnown] = "open in the third question; the device itself bars what it leaves open of the two",
    };

    // Dangers and warnings of a device that bar nothing: the numbers carry them.
    private static readonly string[] CarriedByNumbers =
    [
        ShearBoltFindings.HolesWorn, ShearBoltFindings.HoleFitNotKnown, ShearBoltFindings.StandOffBendsBolt,   // lower the low end
        ShearBoltFindings.HolesOvalFirst, ShearBoltFindings.CrossHoleTooLarge,   // parts at the joint, judged as parts
        ShearBoltFindings.FacesMayMove,   // stands beside the gap, the worn hole or the loose bolt
        ClutchFindings.Oiled, ClutchFindings.Glazed, ClutchFindings.NotRunIn, ClutchFindings.FacingPressureHigh,
            ClutchFindings.MeasuredDiffers,
        ClutchFindings.StoodMoist,   // stands beside the finding that no slip test counts
    ];

    // Its facts are stated, and habit cures it; what it lacks, the devices ask for.
    private static readonly string[] NothingToMeasure =
        [ProtectionFindings.EngagementMayTrip, ProtectionFindings.EngagementTrips, ProtectionFindings.FirstNotKnown];

    public static IReadOnlyList<Finding> OfDevices { get; } = [.. Devices().SelectMany(d => d.Findings)];

    public static IReadOnlyList<Finding> OfVerdicts { get; } =
        [.. Enumerable.Range(1, 60).SelectMany(seed => ProtectionSpec.Random(seed).WithOneLess().Append(("", ProtectionSpec.Random(seed))))
            .SelectMany(s => s.Item2.Check().Findings)];

    [Fact]
    public void NotKnown_Made_BarsAQuestionOrIsListed() => Assert.All(
        OfDevices.Concat(OfVerdicts).Where(f => f.Code.EndsWith("NotKnown", StringComparison.Ordinal) && f.Bars == Bars.Nothing),
        f => Assert.Contains(f.Code, NotKnownAndBarringNothing.Keys));

    [Fact]
    public void NotKnown_SaidInTheSourceToBarNothing_IsListed()
    {
        string root = Path.Combine(AppContext.BaseDirectory, "source", "Driveline");
        string[] said =
        [
            .. Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
                .SelectMany(f => BarringNothing().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
                    .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(
            ["FacingLimitNotKnown", "GradeNotKnown", "HoleFitNotKnown", "HolesNotKnown", "OrderNotKnown", "RunInNotKnown",
                "SettingNotKnown", "SpecifiedNotKnown"],
            said.Distinct());
        Assert.All(NotKnownAndBarringNothing, entry => Assert.NotEmpty(entry.Value));
    }

    [Fact]
    public void Device_DangerOrWarning_BarsOrIsCarriedByNumbers() =>
        Assert.All(OfDevices.Where(f => f.Severity != Severity.Note && f.Bars == Bars.Nothing),
            f => Assert.Contains(f.Code, CarriedByNumbers));

    [Fact]
    public void Barring_Made_NamesWhatSettlesIt() =>
        Assert.All(OfDevices.Concat(OfVerdicts).Where(f => f.Bars != Bars.Nothing && !NothingToMeasure.Contains(f.Code)),
            f => Assert.NotNull(f.SettledBy));

    [Fact]
    public void Device_Bars_AreThoseOfItsFindings() => Assert.All(Devices(), device =>
    {
        Assert.Equal(device.Findings.Where(f => f.IsBarring(Bars.Guards)), device.GuardBars);
        Assert.Equal(device.Findings.Where(f => f.IsBarring(Bars.Quiet)), device.QuietBars);
    });

    [Theory]
    [InlineData(Bars.Guards, Answer.Maybe, Answer.Yes)]
    [InlineData(Bars.Quiet, Answer.Yes, Answer.Maybe)]
    [InlineData(Bars.Both, Answer.Maybe, Answer.Maybe)]
    [InlineData(Bars.Nothing, Answer.Yes, Answer.Yes)]
    public void Verdict_NoteThatBars_HasNoYesToThatQuestion(Bars bars, Answer guards, Answer quiet)
    {
        Finding note = Finding.NotKnown("made.up").Barring(bars).WithSettledBy(Measurements.PartsList);
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(Thornbeck.Bolt(1200, 1400, 1600)).WithNotes([note]));
        Assert.Equal(guards, verdict.Guards);
        Assert.Equal(quiet, verdict.Quiet);
        Assert.Contains(note, verdict.Findings);
    }

    private static IEnumerable<ProtectiveDevice> Devices() => [.. Bolts(), .. Clutches(), .. CutOuts()];

    private static IEnumerable<ProtectiveDevice> Bolts()
    {
        ScrewThread thread = ScrewThread.Parse("M10");
        ShearBolt[] bolts =
        [
            ShearBolt.Special(thread, PlaneThrough.Neck, null, null),
            ShearBolt.Of(thread, FastenerMaterial.NotKnown), ShearBolt.Of(thread, FastenerMaterial.UnmarkedMetricBolt),
                ShearBolt.Of(thread, BoltGrade.Parse("8.8")),
        ];
        foreach (ShearBolt bolt in bolts)
        {
            foreach (HubState hub in Enum.GetValues<HubState>())
            {
                yield return ShearBoltDevice.Of("bolt",
                    ShearBoltJoint.ThroughShaft(bolt, Length.FromMillimeters(35)).WithHole(Length.FromMillimeters(14)).WithHub(hub));
                yield return ShearBoltDevice.Of("bolt", ShearBoltJoint.BoltCircle(bolt, Length.FromMillimeters(100), 2).WithHub(hub));
            }
        }
    }

    private static IEnumerable<ProtectiveDevice> Clutches()
    {
        ClutchCondition[] conditions =
        [
            ClutchCondition.AsOf(Build.Today), Build.Trusted(RunInState.NotKnown),
                Build.Clean(RunInState.New).WithSlipTest(SlipTest.DidNotSlip(Build.Today)),
            .. Enum.GetValues<SurfaceState>().Select(s => Build.Trusted(RunInState.RunIn).WithSurface(s)),
            Build.Trusted(RunInState.RunIn).WithStorage(Build.Today), Build.Clean(RunInState.RunIn).WithStorage(Build.Today.AddDays(-900))
                .WithSlipTest(SlipTest.Slipped(Build.Today.AddDays(-800))),
        ];
        foreach (ClutchCondition condition in conditions)
        {
            foreach (double springMm in new[] { 39.0, 40, 45, 51 })
            {
                LengthBand length = LengthBand.Exactly(Length.FromMillimeters(springMm), Build.Stated);
                yield return SlipClutchDevice.Of(
                    "clutch", SlipTorque.Of(Build.NineSprings().WithFacing(Facings.MouldedLining).WithSpringLength(length), condition))
                    .WithSlipsInWork(3);
                yield return SlipClutchDevice.Of("clutch",
                    SlipTorque.Of(Build.NineSprings().WithFacing(Facings.NotKnown).WithSpringLength(length), condition)).Undated();
            }

            yield return SlipClutchDevice.Of("clutch", SlipTorque.OfStated(Thornbeck.Nm(900), condition));
            yield return SlipClutchDevice.Of("clutch", SlipTorque.NotKnown(condition));
        }
    }

    private static IEnumerable<ProtectiveDevice> CutOuts() =>
        Enum.GetValues<CutOutKind>().Select(kind => CutOutDevice.Of("cut-out", CutOutClutch.Of(kind)));

    [GeneratedRegex(@"(\w+NotKnown)\b[^;]*?BarringNothing\(\)")]
    private static partial Regex BarringNothing();
}
