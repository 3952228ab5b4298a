using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Protection;
using UnitsNet;

namespace Driveline.Tests.Cases;

/// <summary>What a case says about a slip clutch, read and judged.</summary>
public class ClutchCaseTests
{
    [Theory]
    [InlineData("\"outerDiameter\": \"165 mm\", \"innerDiameter\": \"165 mm\"", "innerDiameter")]
    [InlineData("\"faces\": 0", "faces")]
    [InlineData("\"springLength\": \"30 mm\", \"nutTurns\": 3, \"threadPitch\": \"1.5 mm\"", "nutTurns")]
    [InlineData("\"nutTurns\": 3", "nutTurns")]
    [InlineData("\"leverTorque\": \"600 N.m\"", "leverTorque")]
    [InlineData("\"leverForce\": \"600 N\", \"lastSlipTest\": \"2026-05-01\"", "leverForce")]
    [InlineData("\"leverArm\": \"1 m\"", "leverArm")]
    [InlineData("\"breakawayForce\": \"600 N\"", "breakawayForce")]
    [InlineData("\"breakawayTorque\": \"600 N.m\"", "breakawayTorque")]
    [InlineData("\"leverTorque\": \"600 N.m\", \"leverForce\": \"600 N\", \"leverArm\": \"1 m\", \"lastSlipTest\": \"2026-05-01\"",
        "leverForce")]
    [InlineData("\"leverTorque\": { \"low\": \"600 N.m\" }, \"lastSlipTest\": \"2026-05-01\", \"slipTestResult\": \"slipped\"",
        "leverTorque")]
    [InlineData("\"springLength\": { \"low\": \"30 mm\" }", "springLength")]
    [InlineData("\"facing\": \"cardboard\"", "facing")]
    [InlineData("\"facing\": \"FZ\"", "facing")]
    [InlineData("\"springs\": { \"coil\": { \"count\": 8 }, \"disc\": { \"sets\": 1 } }", "disc")]
    [InlineData("\"springs\": { \"coil\": { \"freeLength\": \"30 mm\", \"solidLength\": \"30 mm\" } }", "solidLength")]
    [InlineData("\"springs\": { \"coil\": { \"wire\": \"5 mm\", \"coils\": 5, \"ends\": \"squaredGround\", \"solidLength\": \"25.1 "
        + "mm\" } }", "solidLength")]
    [InlineData("\"springs\": { \"disc\": { \"series\": \"D\", \"outerDiameter\": \"100 mm\" } }", "series")]
    [InlineData("\"springs\": { \"disc\": { \"series\": \"A\" } }", "series")]
    [InlineData("\"springs\": { \"disc\": { \"series\": \"A\", \"outerDiameter\": \"100 mm\", \"thickness\": \"6 mm\" } }", "thickness")]
    [InlineData("\"springs\": { \"disc\": { \"outerDiameter\": \"100 mm\", \"innerDiameter\": \"100 mm\" } }", "innerDiameter")]
    public void Clutch_Contradiction_IsRefusedAtItsMember(string members, string named) => Assert.EndsWith(
        named, CaseReaderTests.ReadOneError("{ \"driveline\": [ { \"slipClutch\": { " + members + " } } ] }").Path,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("slipClutch", "lastSlipTest", "2026-05-05", false)]
    [InlineData("slipClutch", "lastSlipTest", "2026-05-04", true)]
    [InlineData("slipClutch", "lastStorage", "2026-05-05", false)]
    [InlineData("cutOut", "lastTrip", "2026-05-05", false)]
    [InlineData("cutOut", "lastStorage", "2027-01-01", false)]
    [InlineData("cutOut", "lastStorage", "2026-05-04", true)]
    public void Date_AfterTheDateOfTheCase_IsRefusedNamingTheRange(string element, string member, string day, bool isGood)
    {
        CaseReadResult read = CaseReader.Read(
            "{ \"date\": \"2026-05-04\", \"driveline\": [ { \"" + element + "\": { \"" + member + "\": \"" + day + "\" } } ] }");
        Assert.Equal(isGood, read.IsRead);
        Assert.All(read.Errors,
            e => Assert.Contains("up to the date of the case, 2026-05-04; got " + day, e.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"46 mm\"", Headline.TripsInWork, ClutchFindings.SpringsLoose)]
    [InlineData("\"29 mm\"", Headline.DoesNotProtect, ClutchFindings.ShorterThanSolid)]
    public void SpringLength_BeyondWhatTheSpringsCanBe_IsAFinding(string length, Headline headline, string code)
    {
        ProtectionVerdict verdict = WellSet(
            ("\"springLength\": { \"low\": \"33.8 mm\", \"expected\": \"34.2 mm\", \"high\": \"34.6 mm\" }", "\"springLength\": " + length),
            ("\"leverForce\": \"433 N\", \"leverArm\": \"1.5 m\", ", string.Empty));
        Assert.Equal(headline, verdict.Headline);
        Assert.Contains(verdict.Findings, f => f.Code == code);
    }

    [Theory]
    [InlineData("31.6 mm", "34.6 mm", "0 mm", Answer.Maybe)]
    [InlineData("31.6 mm", "34.6 mm", "2 mm", Answer.Yes)] // the wear has let them out again
    [InlineData("33.8 mm", "34.6 mm", "0 mm", Answer.Yes)]
    public void Guards_SpringsTighterThanTheMeasurementFits_IsMaybe(string low, string high, string wear, Answer guards)
    {
        // hand: 4 faces × 0.30 × 8 × 150 N/mm × (40 − 31.6) mm × 67.58 mm = 817 N·m, above the 714 N·m read at most; after 2 mm of wear 623
        // N·m; at 33.8 mm 603 N·m
        ProtectionVerdict verdict = WellSet(
            ("{ \"low\": \"33.8 mm\", \"expected\": \"34.2 mm\", \"high\": \"34.6 mm\" }",
                "{ \"low\": \"" + low + "\", \"expected\": \"34.2 mm\", \"high\": \"" + high + "\" }"),
            ("\"wear\": \"0 mm\"", "\"wear\": \"" + wear + "\""));
        Assert.Equal(guards, verdict.Guards);
        Assert.Equal(guards == Answer.Maybe, verdict.Findings.Any(f => f.Code == ClutchFindings.TighterThanMeasured));
    }

    [Fact]
    public void Guards_FacingNotKnown_IsMaybe() =>
        Assert.Equal(Answer.Maybe, WellSet(("\"facing\": \"moulded organic lining\",", string.Empty)).Guards);

    [Theory]
    [InlineData("3.1 mm", Answer.Yes)] // four faces of 0.794 mm: 3.18 mm
    [InlineData("3.2 mm", Answer.Maybe)]
    public void Quiet_LiningsWornOut_IsMaybe(string wear, Answer quiet) =>
        Assert.Equal(quiet, WellSet(("\"wear\": \"0 mm\"", "\"wear\": \"" + wear + "\"")).Quiet);

    [Fact]
    public void NutTurns_BeyondTheSprings_AreRefusedInTurns()
    {
        CaseFile file = CaseReaderTests.ReadGood(Json("turns", "\"threadPitch\": \"1.5 mm\", \"nutTurns\": 27"));
        CaseError error = Assert.Single(CaseQuestion.Of(file).Errors);
        Assert.Equal("driveline[0].slipClutch.nutTurns", error.Path);
        Assert.True(error.Line == 1 && error.Column > 1);
        Assert.Equal("Turns of the nut must be fewer than 26.7: so many press springs of 40 mm to nothing; got 27.", error.Message);
    }

    [Theory]
    [InlineData("\"date\": \"2026-05-04\",", "", DeviceFindings.SlipTestUndated)]
    [InlineData("\"slipTestResult\": \"slipped\", ", "", ClutchFindings.NoSlipTest)]
    [InlineData("\"2026-04-28\"", "\"2026-04-19\"", ClutchFindings.TestBeforeStorage)]
    [InlineData("\"lastStorage\": \"2026-04-20\", ", "", ClutchFindings.StorageNotKnown)]
    public void Guards_WithoutADatedTestSinceStorage_IsMaybe(string old, string replacement, string code)
    {
        ProtectionVerdict verdict = WellSet((old, replacement));
        Assert.Equal(Answer.Maybe, verdict.Guards);
        Assert.Null(verdict.Devices[0].Device.Breakaway!.High);
        Assert.Contains(verdict.Findings, f => f.Code == code);
    }

    // 500 N at 1.5 m at the first movement: 750 N·m, read within 10 %. Set to the 649.5 N·m read, the springs stay at 34.2 mm.
    [Fact]
    public void Lever_TwoForces_GiveBreakawayAndTheSettingComesBack()
    {
        string json = DemoCases.Json("dunmarsh-clutch-well-set")
            .Replace("\"leverArm\"", "\"breakawayForce\": \"500 N\", \"leverArm\"", StringComparison.Ordinal);
        CaseClutch clutch = CaseClutch.AllOf(CaseReaderTests.ReadGood(json))[0];
        Assert.Equal(750, clutch.Device.Breakaway!.Expected!.Value.NewtonMeters, 1e-6);
        Assert.Equal(825, clutch.Device.Breakaway.High!.Value.NewtonMeters, 1e-6);
        Assert.Equal(34.2, clutch.ReviewSetTo(Torque.FromNewtonMeters(649.5)).Setting!.SpringLength!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void Lever_ForceAndArm_IsReadAndBeatsTheCalculation()
    {
        CaseClutch clutch = CaseClutch.AllOf(DemoCases.Read("dunmarsh-clutch-well-set"))[0];
        Assert.Equal(SlipTorqueSource.Measured, clutch.Device.SlipTorque.Source);
        Assert.Equal(649.5, clutch.Device.Running!.Expected!.Value.NewtonMeters, 1e-9);      // 433 N × 1.5 m
        Assert.Equal(0.9 * 649.5, clutch.Device.Running.Low.NewtonMeters, 1e-6);       // read within 10 %, on faces stated dry
        Assert.Equal(1.1 * 1.4 * 649.5, clutch.Device.Breakaway!.High!.Value.NewtonMeters, 1e-6);
    }

    [Fact]
    public void Review_WellSetClutch_IsWhatTheHandWorks()
    {
        ClutchReview review = CaseClutch.AllOf(DemoCases.Read("dunmarsh-clutch-well-set"))[0].Review();
        Assert.Equal(6960, review.ClampForce!.Value.Newtons, 1e-6);                           // 8 × 150 N/mm × (40 − 34.2) mm
        Assert.Equal(34.2, review.SpringLength!.Value.Millimeters, 1e-9);
        Assert.Equal(4.2, review.TravelToSolid!.Value.Millimeters, 1e-9);
        // 6960 N / (π/4 · (0.165² − 0.1²) m²) = 6960 / 0.0135285
        Assert.Equal(514.47, review.FacingPressure!.Value.Kilopascals, 0.005);
        Assert.Equal(36728, (double)review.Slip!.PeakPower.Watts, 1.0);                         // 649.5 N·m × 540 · π/30 rad/s
        Assert.NotNull(review.TimeToLimit);
        Assert.True(review.TimeToLimit < review.TimeToSmoke);                                 // 200 °C before 230 °C
        Assert.True(review.TimeToSmoke < review.TimeToMaximum);                               // 230 °C before 350 °C
    }

    [Theory]
    [InlineData(650)]
    [InlineData(300)]
    public void ReviewSetTo_WantedTorque_IsWhatItPredicts(double nm)
    {
        ClutchReview review = CaseClutch.AllOf(DemoCases.Read("dunmarsh-clutch-well-set"))[0].ReviewSetTo(Torque.FromNewtonMeters(nm));
        Assert.Equal(nm, review.Device.Running!.Expected!.Value.NewtonMeters, 1e-9 * nm);
        // 649.5 N·m were read at 8 × 150 N/mm × 5.8 mm
        double clamp = nm / 649.5 * 6960;
        Assert.Equal(clamp, review.ClampForce!.Value.Newtons, 1e-9 * clamp);
        Assert.Equal(40 - (clamp / 1200), review.SpringLength!.Value.Millimeters, 1e-9);
        Assert.Equal(clamp / 1200 / 1.5, review.Setting!.NutTurns!.Value, 1e-9);
        Assert.Equal(649.5 / 5.8 * 1.5, review.Setting.TorquePerTurn!.Value.NewtonMeters, 1e-9);
        Assert.Null(review.Device.Breakaway!.High);                                           // no test counts for a new setting
    }

    [Fact]
    public void ReviewSetTo_BeyondTheSprings_IsAnAnswerWithAFinding()
    {
        ClutchReview review = CaseClutch.AllOf(DemoCases.Read("dunmarsh-clutch-well-set"))[0].ReviewSetTo(Torque.FromNewtonMeters(2000));
        Assert.False(review.Setting!.IsReached);
        Assert.Null(review.SpringLength);
        Assert.Contains(review.Findings, f => f.Code == ClutchFindings.SettingNotReached);
    }

    [Fact]
    public void Baler_BoltBehindItsFlywheel_AloneGuardsWhatItDrives()
    {
        // The flywheel's energy goes past the clutch; the bolt parts at 2050 N·m at most, the gearbox takes 2600.
        ProtectionVerdict verdict = DemoCases.Verdict("cranley-baler-flywheel");
        PartCheck gearbox = verdict.Parts.Single(p => p.Part.Name == "plunger gearbox");
        Assert.Equal("flywheel bolt", gearbox.GuardedBy!.Name);
        Assert.Null(gearbox.InertiaBetween);
        Assert.All(verdict.Parts.Where(p => p.Part.Limit is not null), p => Assert.Equal(Answer.Yes, p.Guards));
        Assert.All(verdict.Parts.TakeWhile(p => p.Part.Kind != PartKind.Flywheel), p => Assert.Equal("flywheel clutch", p.GuardedBy!.Name));
        Assert.Equal("flywheel clutch", verdict.FirstDevice!.Name);
    }

    [Fact]
    public void TooHot_RepeatedSlips_AreTheOnlyThingInTheWay()
    {
        ProtectionVerdict verdict = DemoCases.Verdict("wickerby-clutch-too-hot");
        Assert.Equal([DeviceFindings.SlipsTooHot], verdict.Doubts.Select(o => o.Finding.Code));
        Assert.Equal(Answer.Yes, verdict.Guards);
    }

    [Fact]
    public void NutTurns_InPlaceOfTheLength_GiveTheSameTorque()
    {
        string turns = Json("thornbeck", "\"nutTurns\": 4, \"threadPitch\": \"1.5 mm\"");
        // 40 mm − 4 × 1.5 mm
        string length = Json("thornbeck", "\"springLength\": \"34 mm\", \"threadPitch\": \"1.5 mm\"");
        Assert.Equal(Running(length), Running(turns), 1e-9);
    }

    [Fact]
    public void DiscSprings_BySeriesOrByMeasures_GiveTheSameTorque()
    {
        const string Series = "\"disc\": { \"series\": \"A\", \"outerDiameter\": \"100 mm\", \"parallel\": 1, \"sets\": 2, \"stacks\": 1 }";
        const string Measures =
            "\"disc\": { \"outerDiameter\": \"100 mm\", \"innerDiameter\": \"51 mm\", \"thickness\": \"6 mm\", \"freeHeight\": \"8.2 "
                + "mm\", \"parallel\": 1, \"sets\": 2, \"stacks\": 1 }";
        Assert.Equal(Running(Disc(Series)), Running(Disc(Measures)), 1e-9);
    }

    private static string Disc(string springs) =>
        "{ \"driveline\": [ { \"slipClutch\": { \"outerDiameter\": \"165 mm\", \"innerDiameter\": \"100 mm\", \"faces\": 2, \"facing\": "
            + "\"FE\", \"springs\": { " + springs + " }, \"springLength\": \"14 mm\" } } ] }";

    private static string Json(string title, string setting) =>
        "{ \"title\": \"" + title
            + "\", \"driveline\": [ { \"slipClutch\": { \"outerDiameter\": \"165 mm\", \"innerDiameter\": \"100 mm\", \"faces\": 4, "
                + "\"facing\": \"FE\","
        + " \"springs\": { \"coil\": { \"count\": 8, \"rate\": \"150 N/mm\", \"freeLength\": \"40 mm\", \"solidLength\": \"30 mm\" } }, "
            + "\"wear\": \"0 mm\", " + setting + " } } ] }";

    private static double Running(string json) =>
        CaseClutch.AllOf(CaseReaderTests.ReadGood(json))[0].Device.Running!.Expected!.Value.NewtonMeters;

    private static ProtectionVerdict WellSet(params (string Old, string New)[] changes)
    {
        string json = DemoCases.Json("dunmarsh-clutch-well-set");
        foreach ((string old, string replacement) in changes)
        {
            Assert.Contains(old, json, StringComparison.Ordinal);
            json = json.Replace(old, replacement, StringComparison.Ordinal);
        }

        return ProtectionCheck.Run(CaseQuestion.Of(CaseReaderTests.ReadGood(json)).Question!);
    }
}
