using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.TorsionModels;
using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Monitoring;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.Tests.Cases;

namespace Driveline.Tests.Consistency;

/// <summary>What a result or a parser says is there, the compiler knows to be there: no "!" here, and warnings are errors.</summary>
public class NullableFlowTests
{
    [Fact]
    public void Results_ThatSayTheyHold_NeedNoForgiveness()
    {
        CaseReadResult read = CaseReader.Read(Sample.BrushCutter);
        Assert.NotEmpty(read.IsRead ? read.Case.ToString() : string.Empty);
        CaseAssessment asked = CaseAssessment.Of(Sample.BrushCutter);
        Assert.NotEmpty(asked.IsGood ? asked.File.ToString() : string.Empty);
        TorsionModelReadResult model = TorsionModelReader.Read("{}");
        Assert.Equal(string.Empty, model.IsRead ? model.Model.ToString() : string.Empty);
        SimulationOutcome? run = CaseAssessment.Of(DemoCases.Read("ravensmoor-rock")).Simulation().Check?.With;
        Assert.NotEmpty(run is { Tripped: true } ? run.TrippedDevice.Name + run.TripTime.Value : "none");
    }

    [Fact]
    public void Parsers_ThatSayTheyRead_NeedNoForgiveness()
    {
        Assert.NotEmpty(ScrewThread.TryParse("M10", out ScrewThread? thread, out string? noThread) ? thread.Designation : noThread);
        Assert.NotEmpty(BoltGrade.TryParse("SAE 5", out BoltGrade? grade, out string? noGrade) ? grade.Designation : noGrade);
        Assert.NotEmpty(Hardness.TryParse("30 HRC", out Hardness? hardness, out string? noHardness) ? hardness.ToString() : noHardness);
        Assert.NotEmpty(HeadMark.TryParse("?", out HeadMark? mark, out string? noMark) ? mark.ToString() : noMark);
        Assert.NotEmpty(MaterialName.TryParse("?", out MaterialName? name, out string? noName) ? name.ToString() : noName);
        Assert.NotEmpty(SpringPin.TryParse("?", out SpringPin? pin, out string? noPin) ? pin.ToString() : noPin);
        Assert.NotEmpty(StockFile.TryParse("?", out StockFile? file, out string? noFile) ? file.ToString() ?? "?" : noFile);
        Assert.NotEmpty(PtoTypes.TryOf(1, out PtoType? type) ? type.ToString() ?? "?" : "none");
        Assert.NotEmpty(PowerNeed.TryOf(MachineKind.NotKnown, null, null, out PowerNeed? need) ? need.ToString() ?? "?" : "none");
    }

    [Fact]
    public void Simulation_ThatSaysItRan_NeedsNoForgiveness()
    {
        DrivelineSimulation? simulation = CaseAssessment.Of(DemoCases.Read("ravensmoor-rock")).Simulation().Simulation;
        Assert.NotNull(simulation);
        Assert.True(simulation.TryRun(
            SimulatedDevices.Blocked, BandPoint.Expected, BandPoint.Expected, out SimulationOutcome? outcome, out _)
            && outcome.IsComplete);
        MonitorSettings settings = MonitorSettings.Of(UnitsNet.Torque.FromNewtonMeters(1000), UnitsNet.Duration.FromMilliseconds(10));
        Assert.False(CaseWatch.TryResume(settings, null, [], out CaseWatch? watch, out _) && watch.Counts.Taken >= 0);
    }
}
