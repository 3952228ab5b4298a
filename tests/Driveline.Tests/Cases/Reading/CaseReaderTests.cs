using System.Diagnostics;
using System.Text;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Tests.Quantities;
using UnitsNet;

namespace Driveline.Tests.Cases;

public partial class CaseReaderTests
{
    [Fact]
    public void BrushCutter_EveryFact_IsRead()
    {
        CaseFile c = ReadGood(Sample.BrushCutter);
        Assert.Equal("Brush cutter, Thornbeck common", c.Title);
        CaseObject tractor = c.Part(CaseFileMembers.Tractor);
        Assert.Equal(26, (double)tractor.Get(TractorMembers.PtoPower)!.Value.Kilowatts, 12);
        Assert.Equal(1, tractor.Get(TractorMembers.PtoType));
        Assert.Equal(540, tractor.Get(TractorMembers.PtoSpeed)!.Value.RevolutionsPerMinute, 6);
        CaseObject clutch = tractor.Get(TractorMembers.PtoClutch)!;
        Assert.Equal(PtoClutchKind.HandLever, clutch.Get(PtoClutchMembers.Kind));
        Assert.Equal(Exactly(1100), clutch.Get(PtoClutchMembers.Capacity));
        Assert.Equal(MachineKind.RotaryCutter, c.Part(CaseFileMembers.Implement).Get(ImplementMembers.Kind));
        Assert.Equal(1.5, c.Part(CaseFileMembers.Implement).Get(ImplementMembers.Width)!.Value.Meters);
        Assert.Equal([ElementKind.Shaft, ElementKind.ShearBolt, ElementKind.Gearbox, ElementKind.Rotor],
            c.Facts.Get(CaseFileMembers.Driveline).Select(CaseElements.KindOf));
        Assert.Equal("drive tube", CaseElements.NameOf(c.Element(0)));
        Assert.Equal(
            TorqueBand.Between(
                Torque.FromNewtonMeters(2100), Torque.FromNewtonMeters(2300), Torque.FromNewtonMeters(2600), Basis.Given("the case")),
            c.Element(0).Get(ElementMembers.DamagedAt));
        CaseObject bolt = c.Bolt(1);
        Assert.Equal("1/2-13 UNC", bolt.Written(ShearBoltMembers.Thread));
        Assert.Equal(0.0127, bolt.Get(ShearBoltMembers.Thread)!.MajorDiameter.Meters, 9);
        Assert.Equal(SaeJ429.Grade2, bolt.Get(ShearBoltMembers.Grade)!.Grade);
        Assert.Equal(JointLayout.ThroughShaft, bolt.Get(ShearBoltMembers.Layout));
        Assert.Equal(1.25, bolt.Get(ShearBoltMembers.ShaftDiameter)!.Value.Inches, 12);
        Assert.Equal(PlaneThrough.Shank, bolt.Get(ShearBoltMembers.PlaneThrough));
        Assert.Equal(HubState.Free, bolt.Get(ShearBoltMembers.Hub));
        Assert.Equal(1.47, c.Element(2).Get(ElementMembers.Ratio));
        Assert.Equal(4.2, c.Element(3).Get(ElementMembers.Inertia)!.Value.KilogramSquareMeters);
        Assert.True(c.Facts.Get(CaseFileMembers.PartsComplete));
        Assert.Equal("SAE 2", c.Part(CaseFileMembers.Specified).Get(SpecifiedMembers.ShearBolt)!.Written(SpecifiedBoltMembers.Grade));
        Assert.Equal(800, c.Part(CaseFileMembers.Work).Get(WorkMembers.SteadyPeak)!.Expected!.Value.NewtonMeters);
        Assert.Equal(40, c.Part(CaseFileMembers.Work).Get(WorkMembers.PeaksPerHour));
        CaseObject complaint = c.Part(CaseFileMembers.Complaint);
        Assert.Equal(Symptom.BreaksOften, complaint.Get(ComplaintMembers.Symptom));
        Assert.Equal("engaging", ComplaintMembers.FactOf(complaint, "when")!.Answer);
        Assert.Equal("from1to10h", ComplaintMembers.FactOf(complaint, "hoursBetweenBreaks")!.Answer);
        Assert.Equal(2.0, complaint[ComplaintMembers.Facts["hoursBetweenBreaks"]]);
    }

    [Fact]
    public void Unstated_Facts_AreNullOrNotKnown()
    {
        CaseFile c = ReadGood("""{ "tractor": {}, "driveline": [ { "shearBolt": {} } ] }""");
        Assert.Null(c.Title);
        Assert.Null(c.Facts.Get(CaseFileMembers.PartsComplete));
        Assert.Null(c.Facts.Get(CaseFileMembers.Work));
        Assert.Null(c.Part(CaseFileMembers.Tractor).Get(TractorMembers.PtoPower));
        CaseObject bolt = c.Bolt(0);
        Assert.Equal(HubState.NotKnown, bolt.Get(ShearBoltMembers.Hub));
        Assert.Equal(HoleFit.NotKnown, bolt.Get(ShearBoltMembers.HoleFit));
        Assert.Equal(PlaneThrough.NotKnown, bolt.Get(ShearBoltMembers.PlaneThrough));
        Assert.Null(bolt.Get(ShearBoltMembers.Grade));
        Assert.Null(CaseElements.NameOf(c.Element(0)));
        Assert.Empty(ReadGood("{}").Facts.Get(CaseFileMembers.Driveline));
    }

    [Fact]
    public void Band_LowAlone_IsAtLeast() =>
        Assert.Equal(TorqueBand.AtLeast(Torque.FromNewtonMeters(900), Basis.Given("the case")), StubDamagedAt("""{ "low": "900 N.m" }"""));

    [Theory]
    [InlineData("""{ "low": "900 N.m", "expected": "unbounded", "high": "unbounded" }""")]
    [InlineData("""{ "high": "unbounded", "low": "900 N.m" }""")]
    public void Band_Unbounded_IsAtLeast(string json) =>
        Assert.Equal(TorqueBand.AtLeast(Torque.FromNewtonMeters(900), Basis.Given("the case")), StubDamagedAt(json));

    [Fact]
    public void Band_WithoutExpected_TakesTheMiddleWithAWeakerBasis()
    {
        TorqueBand band = StubDamagedAt("""{ "low": "900 N.m", "high": "1100 N.m" }""");
        Assert.Equal(1000, band.Expected!.Value.NewtonMeters);
        Assert.Equal(BasisKind.CommonPractice, band.Basis.Expected.Kind);
        Assert.Equal(BasisKind.Given, band.Basis.Low.Kind);
        Assert.Equal(BasisKind.CommonPractice, band.WeakestBasis.Kind);
    }

    [Theory]
    [InlineData("\"ratedTorque\": \"400 N.m\", \"overloadFactor\": 2, \"outerDiameter\": \"40 mm\", \"yieldStrength\": \"350 MPa\", "
        + "\"damagedAt\": \"2 kN.m\"", LimitKind.DamageTorque)]
    [InlineData("\"ratedTorque\": \"400 N.m\", \"overloadFactor\": 2, \"outerDiameter\": \"40 mm\", \"yieldStrength\": \"350 MPa\"",
        LimitKind.Section)]
    [InlineData("\"ratedTorque\": \"400 N.m\", \"overloadFactor\": 2, \"outerDiameter\": \"40 mm\"", LimitKind.UnsourcedOverloadFactor)]
    [InlineData("\"ratedTorque\": \"400 N.m\", \"outerDiameter\": \"40 mm\"", LimitKind.Rating)]
    [InlineData("\"outerDiameter\": \"40 mm\"", null)]
    public void Limits_SeveralStated_TheNearestToThePartIsUsed(string stated, object? used)
    {
        CaseFile file = ReadGood("{ \"driveline\": [ { \"part\": \"x\", " + stated + " } ] }");
        Assert.Equal(used, CaseQuestion.Of(file).Question!.Chain.Parts.Single().Limit?.Kind);
    }

    [Fact]
    public void Branch_Elements_AreRead()
    {
        CaseObject branch = ReadGood(Sample.Everything).Element(10);
        Assert.Equal(ElementKind.Branch, CaseElements.KindOf(branch));
        Assert.Equal("auger", CaseElements.NameOf(branch));
        Assert.Equal(0.3, branch.Get(ElementMembers.PowerShare)!.Low, 12);
        Assert.Equal(0.4, branch.Get(ElementMembers.PowerShare)!.High!.Value, 12);
        Assert.Equal(0.95, branch.Get(ElementMembers.Driveline)[0].Get(ElementMembers.Efficiency)!.Value, 12);
    }

    [Fact]
    public void BoltTexts_RodPinAndUnmarked_AreRead()
    {
        CaseFile c = ReadGood(Sample.Everything);
        MaterialName rod = c.Bolt(4).Get(ShearBoltMembers.Grade)!;
        Assert.Equal("SAE 1018 cold-drawn steel rod", rod.RodMaterial!.Designation);
        Assert.Null(rod.Grade);
        Assert.Equal("ISO 8752", c.Bolt(5).Get(ShearBoltMembers.SpringPin)!.Standard);
        Assert.Equal(28, c.Bolt(3).Get(ShearBoltMembers.Hardness)!.Value);
        Assert.Equal(HardnessScale.RockwellB,
            c.Element(3).Get(ElementMembers.Specified)!.Get(SpecifiedMembers.ShearBolt)!.Get(SpecifiedBoltMembers.Hardness)!.Scale);
        Assert.True(ReadGood(Sample.At("shearBolt.grade", "\"unmarked\"")).Bolt(0).Get(ShearBoltMembers.Grade)!.IsUnmarked);
    }

    [Fact]
    public void MemberOrder_Reversed_GivesTheSameCase() =>
        Assert.Equal(
            ReadGood("""{ "driveline": [ { "gearbox": "main", "ratio": 2 } ], "work": { "peaksPerHour": 3, "steadyPeak": "10 N.m" },"""
                + """ "title": "t" }"""),
            ReadGood("""{ "title": "t", "work": { "steadyPeak": "10 N.m", "peaksPerHour": 3 }, "driveline": [ { "ratio": 2,"""
                + """ "gearbox": "main" } ] }"""));

    [Fact]
    public void Input_BytesTextStreamAndMark_ReadTheSame()
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(Sample.Everything);
        CaseFile expected = ReadGood(Sample.Everything);
        Assert.Equal(expected, CaseReader.Read(utf8).Case);
        Assert.Equal(expected, CaseReader.Read(new MemoryStream(utf8)).Case);
        Assert.Equal(expected, CaseReader.Read([0xEF, 0xBB, 0xBF, .. utf8]).Case);
    }

    [Fact]
    public void Everything_NamesEveryMemberOfTheFormat()
    {
        var stated = MemberTables.All.SelectMany(t => t.Members.Select(m => "\"" + m.Name + "\":"));
        Assert.Equal(
            ["\"travel\":", "\"passes\":"], stated.Where(m => !Sample.Everything.Contains(m, StringComparison.Ordinal)).Distinct());
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void AnyCulture_ReadsTheSame(string culture)
    {
        CaseFile expected = ReadGood(Sample.Everything);
        string errors = Shown(CaseReader.Read("""{ "tractor": { "PTOTYPE": 1, "ptoPower": "1,200 kW" } }"""));
        QuantityTextTests.InCulture(culture, () =>
        {
            Assert.Equal(expected, ReadGood(Sample.Everything));
            Assert.Equal(expected, ReadGood(CaseWriter.ToJson(expected)));
            Assert.Equal(errors, Shown(CaseReader.Read("""{ "tractor": { "PTOTYPE": 1, "ptoPower": "1,200 kW" } }""")));
        });
    }

    [Fact]
    public void Null_Arguments_AreRefused()
    {
        Assert.Throws<ArgumentNullException>(() => CaseReader.Read((string)null!));
        Assert.Throws<ArgumentNullException>(() => CaseReader.Read((Stream)null!));
        Assert.Throws<ArgumentNullException>(() => CaseWriter.Write(null!));
    }

    internal static CaseFile ReadGood(string json)
    {
        CaseReadResult result = CaseReader.Read(json);
        Assert.True(result.IsRead, Shown(result));
        return result.Case!;
    }

    internal static CaseError ReadOneError(string json)
    {
        CaseReadResult result = CaseReader.Read(json);
        Assert.Null(result.Case);
        return Assert.Single(result.Errors);
    }

    internal static string Shown(CaseReadResult result) => string.Join("\n", result.Errors);

    private static TorqueBand StubDamagedAt(string json) =>
        ReadGood(Sample.At("tractor.stubDamagedAt", json)).Part(CaseFileMembers.Tractor).Get(TractorMembers.StubDamagedAt)!;

    private static TorqueBand Exactly(double nm) => TorqueBand.Exactly(Torque.FromNewtonMeters(nm), Basis.Given("the case"));

    /// <summary>
    /// The result, given in under a second in one of five tries: a second on the clock, or of this process's processor time,
    /// since other work on the machine may hold up a single try.
    /// </summary>
    internal static CaseReadResult Timed(Func<CaseReadResult> read)
    {
        using var process = Process.GetCurrentProcess();
        for (int attempt = 1; ; attempt++)
        {
            TimeSpan before = process.TotalProcessorTime;
            var clock = Stopwatch.StartNew();
            CaseReadResult result = read();
            double clockMs = clock.Elapsed.TotalMilliseconds;
            process.Refresh();
            double processorMs = (process.TotalProcessorTime - before).TotalMilliseconds;
            if (Math.Min(clockMs, processorMs) < 1000)
            {
                return result;
            }

            Assert.True(attempt < 5,
                FormattableString.Invariant($"took {clockMs:F0} ms, {processorMs:F0} ms of processor time, at the fifth try"));
        }
    }
}
