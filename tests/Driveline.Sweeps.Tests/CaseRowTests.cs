using Driveline.Cases;

namespace Driveline.Sweeps.Tests;

public class CaseRowTests
{
    private static readonly CaseFile Thornbeck = CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile("thornbeck-bolt-right"))).Case!;

    [Fact]
    public void BreakTorque_OfAShaft_IsProportionalToIt()
    {
        // T = m A τ r: of the case's 1 1/4 in (31.75 mm) the torque is T0; of d it is T0 · d / 31.75 mm.
        double at = CaseAssessment.Of(Thornbeck).Verdict().Trip!.Expected!.Value.NewtonMeters;
        StudyTable table = Sweep.Run(Study.Of("t").WithCase(Thornbeck)
            .WithFactors(Factor.Uniform("driveline[2].shearBolt.shaftDiameter", 0.030, 0.034))
            .WithDesign(Design.Sobol(64, 1)).WithCaseOutputs("shearBolt.breakTorqueNm.expected", "assess.tripTorqueNm.expected")).Table!;
        for (int k = 0; k < 64; k++)
        {
            double expected = at * table.Numbers("driveline[2].shearBolt.shaftDiameter")[k] / 0.03175;
            Assert.Equal(expected, table.Numbers("shearBolt.breakTorqueNm.expected")[k], 1e-6);
            Assert.Equal(expected, table.Numbers("assess.tripTorqueNm.expected")[k], 1e-6);
        }
    }

    [Theory]
    [InlineData("driveline[2].shearBolt.shaftDiameter", 0.0317, "\"31.7 mm\"")]
    [InlineData("driveline[1].damagedAt", 1500, "\"1500 N.m\"")]
    [InlineData("work.steadyPeak", 640, "\"640 N.m\"")]
    [InlineData("tractor.ptoSpeed", 56.548667764616276, "\"540 rpm\"")]
    [InlineData("driveline[2].shearBolt.bolts", 2, "2")]
    [InlineData("driveline[3].efficiency", 0.9, "0.9")]
    public void Row_OfOneFact_IsTheCaseWithItWritten(string path, double si, string json)
    {
        CaseAssessment written = CaseAssessment.Of(Thornbeck.With(path, json));
        StudyTable row = Sweep.Run(Study.Of("t").WithCase(Thornbeck).WithFactors(Factor.Values(path, si)).WithDesign(Design.Grid(1))
            .WithCaseOutputs("assess.verdict", "assess.guardMargin", "assess.workMargin")).Table!;
        Assert.Null(row.ErrorOf(0));
        Assert.Equal(written.Verdict().Headline.ToString(), row.Words("assess.verdict")[0]);
        Assert.Equal(written.Verdict().GuardMargin ?? double.NaN, row.Numbers("assess.guardMargin")[0], 1e-9);
        Assert.Equal(written.Verdict().WorkMargin ?? double.NaN, row.Numbers("assess.workMargin")[0], 1e-9);
    }

    [Fact]
    public void Row_OutsideThePermittedRange_FailsAndSaysSo()
    {
        StudyResult result = Sweep.Run(Study.Of("t").WithCase(Thornbeck)
            .WithFactors(Factor.Values("driveline[2].shearBolt.shaftDiameter", 0.0317, 3)).WithDesign(Design.Grid(1))
            .WithCaseOutputs("assess.verdict"));
        Assert.Equal(1, result.Failed);
        Assert.Equal("driveline[2].shearBolt.shaftDiameter must be from 5 mm to 200 mm; got 3 m.", result.Table!.ErrorOf(1));
        Assert.Null(result.Table.Words("assess.verdict")[1]);
    }

    [Fact]
    public void Row_ThatContradictsTheCase_FailsAndSaysSo()
    {
        CaseFile file = CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile("dunmarsh-clutch-well-set"))).Case!;
        StudyResult result = Sweep.Run(Study.Of("t").WithCase(file)
            .WithFactors(Factor.Values("driveline[2].slipClutch.innerDiameter", 0.1, 0.2)).WithDesign(Design.Grid(1))
            .WithCaseOutputs("clutch.slipTorqueNm.expected"));
        Assert.Equal(1, result.Failed);
        Assert.Null(result.Table!.ErrorOf(0));
        Assert.Contains("driveline[2].slipClutch", result.Table.ErrorOf(1), StringComparison.Ordinal);
    }

    [Fact]
    public void Row_SimulatedPeak_IsThatOfTheCase()
    {
        CaseFile file = CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile("ravensmoor-stump"))).Case!;
        StudyTable row = Sweep.Run(Study.Of("t").WithCase(file).WithFactors(Factor.Values("strike.force", 3200)).WithDesign(Design.Grid(1))
            .WithCaseOutputs("simulate.peakTorqueNm[main gearbox]", "simulate.damaged[main gearbox]")).Table!;
        Protection.SimulatedLoad load = CaseAssessment.Of(file).Simulation().Check!.Loads.Single(l => l.Element.Name == "main gearbox");
        Assert.Equal(load.WithProtection!.Value.NewtonMeters, row.Numbers("simulate.peakTorqueNm[main gearbox]")[0], 1e-9);
        Assert.Equal(load.DamagedWith.ToString(), row.Words("simulate.damaged[main gearbox]")[0]);
    }

    [Theory]
    [InlineData("driveline[2].shearBolt.shaftDiamter", "did you mean \"shaftDiameter\"?")]
    [InlineData("drivelin[2].shearBolt.shaftDiameter", "did you mean \"driveline\"?")]
    [InlineData("driveline[7].shearBolt.shaftDiameter", "driveline[0] to [4]")]
    [InlineData("driveline[0].shearBolt.shaftDiameter", "states no \"shearBolt\"")]
    [InlineData("driveline[2].shearBolt", "must lead to one fact")]
    [InlineData("driveline[2]", "must lead to one fact")]
    [InlineData("driveline", "is a list of 5")]
    [InlineData("work.steadyPeak.low", "has nothing in it")]
    public void Path_ThatLeadsNowhere_IsRefusedWithTheNearest(string path, string says) => Assert.Contains(
        says,
        Study.Of("t").WithCase(Thornbeck).WithFactors(Factor.Uniform(path, 0.03, 0.04)).WithCaseOutputs("assess.verdict").Problem,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("assess.gardMargin", "did you mean \"assess.guardMargin\"?")]
    [InlineData("simulate.peakTorqueNm[main gearbx]", "did you mean \"main gearbox\"?")]
    [InlineData("simulate.peakTorqueNm", "must name what it is of")]
    [InlineData("clutch.slipTorqueNm.expected", "no slip clutch")]
    [InlineData("assess.verdict[main gearbox]", "of nothing that has a name")]
    public void Output_ThatIsNone_IsRefusedWithTheNearest(string output, string says) => Assert.Contains(
        says,
        Study.Of("t").WithCase(Thornbeck).WithFactors(Factor.Uniform("driveline[2].shearBolt.shaftDiameter", 0.03, 0.04))
            .WithCaseOutputs(output).Problem,
        StringComparison.Ordinal);
}
