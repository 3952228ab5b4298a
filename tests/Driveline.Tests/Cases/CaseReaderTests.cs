using System.Diagnostics;
using System.Text;
using Driveline.Advice;
using Driveline.Cases;
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
        Assert.Equal(26, (double)c.Tractor!.PtoPower!.Value.Kilowatts, 12);
        Assert.Equal(1, c.Tractor.PtoType);
        Assert.Equal(540, c.Tractor.PtoSpeed!.Value.RevolutionsPerMinute, 6);
        Assert.Equal(PtoClutchKind.HandLever, c.Tractor.PtoClutch!.Kind);
        Assert.Equal(Exactly(1100), c.Tractor.PtoClutch.Capacity);
        Assert.Equal(MachineKind.RotaryCutter, c.Implement!.Kind);
        Assert.Equal(1.5, c.Implement.Width!.Value.Meters);
        Assert.Equal([ElementKind.Shaft, ElementKind.ShearBolt, ElementKind.Gearbox, ElementKind.Rotor], c.Driveline.Select(e => e.Kind));
        Assert.Equal("drive tube", c.Driveline[0].Name);
        Assert.Equal(
            TorqueBand.Between(Torque.FromNewtonMeters(2100), Torque.FromNewtonMeters(2300), Torque.FromNewtonMeters(2600), Basis.Given("the case")),
            c.Driveline[0].DamagedAt);
        ShearBoltFacts bolt = c.Driveline[1].ShearBolt!;
        Assert.Equal("1/2-13 UNC", bolt.Thread);
        Assert.Equal(0.0127, bolt.ParsedThread!.MajorDiameter.Meters, 9);
        Assert.Equal(SaeJ429.Grade2, bolt.ParsedGrade);
        Assert.Equal(JointLayout.ThroughShaft, bolt.Layout);
        Assert.Equal(1.25, bolt.ShaftDiameter!.Value.Inches, 12);
        Assert.Equal(PlaneThrough.Shank, bolt.PlaneThrough);
        Assert.Equal(HubState.Free, bolt.Hub);
        Assert.Equal(1.47, c.Driveline[2].Ratio);
        Assert.Equal(4.2, c.Driveline[3].Inertia!.Value.KilogramSquareMeters);
        Assert.True(c.PartsComplete);
        Assert.Equal("SAE 2", c.Specified!.ShearBolt!.Grade);
        Assert.Equal(800, c.Work!.SteadyPeak!.Expected!.Value.NewtonMeters);
        Assert.Equal(40, c.Work.PeaksPerHour);
        Assert.Equal(Symptom.BreaksOften, c.Complaint!.Symptom);
        Assert.Equal("engaging", c.Complaint.FactOf("when")!.Answer);
        Assert.Equal("from1to10h", c.Complaint.FactOf("hoursBetweenBreaks")!.Answer);
        Assert.Equal(2, c.Complaint.HoursBetweenBreaks);
    }

    [Fact]
    public void Unstated_Facts_AreNullOrNotKnown()
    {
        CaseFile c = ReadGood("""{ "tractor": {}, "driveline": [ { "shearBolt": {} } ] }""");
        Assert.Null(c.Title);
        Assert.Null(c.PartsComplete);
        Assert.Null(c.Work);
        Assert.Null(c.Tractor!.PtoPower);
        ShearBoltFacts bolt = c.Driveline[0].ShearBolt!;
        Assert.Equal(HubState.NotKnown, bolt.Hub);
        Assert.Equal(HoleFit.NotKnown, bolt.HoleFit);
        Assert.Equal(PlaneThrough.NotKnown, bolt.PlaneThrough);
        Assert.Null(bolt.ParsedGrade);
        Assert.False(bolt.IsUnmarked);
        Assert.Null(c.Driveline[0].Name);
        Assert.Empty(ReadGood("{}").Driveline);
    }

    [Fact]
    public void Band_LowAlone_IsAtLeast()
    {
        TorqueBand band = ReadGood(Sample.At("tractor.stubDamagedAt", """{ "low": "900 N.m" }""")).Tractor!.StubDamagedAt!;
        Assert.Equal(TorqueBand.AtLeast(Torque.FromNewtonMeters(900), Basis.Given("the case")), band);
    }

    [Theory]
    [InlineData("""{ "low": "900 N.m", "expected": "unbounded", "high": "unbounded" }""")]
    [InlineData("""{ "high": "unbounded", "low": "900 N.m" }""")]
    public void Band_Unbounded_IsAtLeast(string json) => Assert.Equal(
        TorqueBand.AtLeast(Torque.FromNewtonMeters(900), Basis.Given("the case")),
        ReadGood(Sample.At("tractor.stubDamagedAt", json)).Tractor!.StubDamagedAt);

    [Fact]
    public void Band_WithoutExpected_TakesTheMiddleWithAWeakerBasis()
    {
        TorqueBand band = ReadGood(Sample.At("tractor.stubDamagedAt", """{ "low": "900 N.m", "high": "1100 N.m" }""")).Tractor!.StubDamagedAt!;
        Assert.Equal(1000, band.Expected!.Value.NewtonMeters);
        Assert.Equal(BasisKind.CommonPractice, band.Basis.Expected.Kind);
        Assert.Equal(BasisKind.Given, band.Basis.Low.Kind);
        Assert.Equal(BasisKind.CommonPractice, band.WeakestBasis.Kind);
    }

    [Fact]
    public void Limits_SeveralStated_AllKeptAndDamagedAtUsed()
    {
        DrivelineElement part = ReadGood("""
            { "driveline": [ { "part": "x", "ratedTorque": "400 N.m", "overloadFactor": 2, "outerDiameter": "40 mm", "yieldStrength": "350 MPa", "damagedAt": "2 kN.m" } ] }
            """).Driveline[0];
        Assert.Equal([LimitSource.DamagedAt, LimitSource.Geometry, LimitSource.RatedTorque], part.LimitsStated);
        Assert.Equal(LimitSource.DamagedAt, part.LimitUsed);
        Assert.Equal(LimitSource.Geometry, part.WithDamagedAt(null).LimitUsed);
        Assert.Equal(LimitSource.RatedTorque, part.WithDamagedAt(null).WithYieldStrength(null).LimitUsed);
        Assert.Equal(LimitSource.NotKnown, part.WithDamagedAt(null).WithYieldStrength(null).WithOverloadFactor(null).LimitUsed);
    }

    [Fact]
    public void Branch_Elements_AreRead()
    {
        DrivelineElement branch = ReadGood(Sample.Everything).Driveline[10];
        Assert.Equal(ElementKind.Branch, branch.Kind);
        Assert.Equal("auger", branch.Name);
        Assert.Equal(0.3, branch.PowerShare!.Low, 12);
        Assert.Equal(0.4, branch.PowerShare.High!.Value, 12);
        Assert.Equal(0.95, branch.Driveline[0].Efficiency!.Value, 12);
        Assert.False(branch.IsPart);
    }

    [Fact]
    public void BoltTexts_RodPinAndUnmarked_AreRead()
    {
        CaseFile c = ReadGood(Sample.Everything);
        Assert.Equal("SAE 1018 cold-drawn steel rod", c.Driveline[4].ShearBolt!.ParsedRodMaterial!.Designation);
        Assert.Null(c.Driveline[4].ShearBolt!.ParsedGrade);
        Assert.Equal("ISO 8752", c.Driveline[5].ShearBolt!.ParsedSpringPin!.Standard);
        Assert.Equal(28, c.Driveline[3].ShearBolt!.ParsedHardness!.Value);
        Assert.Equal(HardnessScale.RockwellB, c.Driveline[3].Specified!.ShearBolt!.ParsedHardness!.Scale);
        Assert.True(ReadGood(Sample.At("shearBolt.grade", "\"unmarked\"")).Driveline[0].ShearBolt!.IsUnmarked);
    }

    [Fact]
    public void MemberOrder_Reversed_GivesTheSameCase() =>
        Assert.Equal(
            ReadGood("""{ "driveline": [ { "gearbox": "main", "ratio": 2 } ], "work": { "peaksPerHour": 3, "steadyPeak": "10 N.m" }, "title": "t" }"""),
            ReadGood("""{ "title": "t", "work": { "steadyPeak": "10 N.m", "peaksPerHour": 3 }, "driveline": [ { "ratio": 2, "gearbox": "main" } ] }"""));

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
        var stated = Driveline.Cases.Members.MemberTables.All.SelectMany(t => t.Members.Select(m => "\"" + m.Name + "\":"));
        Assert.Equal(["\"travel\":"], stated.Where(m => !Sample.Everything.Contains(m, StringComparison.Ordinal)).Distinct());
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

            Assert.True(attempt < 5, FormattableString.Invariant($"took {clockMs:F0} ms, {processorMs:F0} ms of processor time, at the fifth try"));
        }
    }
}
