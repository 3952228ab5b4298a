using Driveline.Cases;
using Driveline.Cases.TorsionModels;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Tests.Cases;

public class LongWorkTests
{
    private static readonly CancellationToken Stopped = new(true);

    private static SimulationCheck Check => CaseAssessment.Of(DemoCases.Read("ravensmoor-rock")).Simulation().Check!;

    [Fact]
    public void Traces_Stopped_End()
    {
        SimulationCheck check = Check;
        SimulationOutcome run = check.Without!;
        Assert.ThrowsAny<OperationCanceledException>(
            () => run.Traces([check.Loads[0].Element], 5, run.Length, SimulationLimits.Usual, Stopped));
    }

    [Fact]
    public void Traces_LimitsOfNoWork_AreNotANumberButAtTheStart()
    {
        SimulationCheck check = Check;
        SimulationOutcome run = check.Without!;
        IReadOnlyList<double> trace = run.Traces(
            [check.Loads[0].Element], 5, run.Length, SimulationLimits.OfWork(0), CancellationToken.None)[0];
        Assert.All(trace.Skip(1), nm => Assert.Equal(double.NaN, nm));
    }

    [Fact]
    public void TableAndPicture_Stopped_End()
    {
        SimulationCheck check = Check;
        Assert.ThrowsAny<OperationCanceledException>(() => SimulationCsv.Of(check, ReportOptions.Default, Stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => SimulationPicture.Svg(check, ReportOptions.Default, Stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => SimulationPicture.Fragment(check, ReportOptions.Default, Stopped));
    }

    [Fact]
    public void TracesOfAModel_Stopped_End()
    {
        string json = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "cases", "break-between-two.model.json"));
        TorsionModelFile file = TorsionModelReader.Read(json).Model!;
        TransientLimits stopped = TransientLimits.Usual.WithStop(Stopped);
        double[] samples = new double[5];
        Duration time = Duration.FromMilliseconds(20);
        Assert.ThrowsAny<OperationCanceledException>(() => Transient.TraceTorque(
            file.Start, time, stopped, new TransientWorkspace(), file.Start.Model.Elements[0], samples));
        Assert.ThrowsAny<OperationCanceledException>(() => Transient.TraceSpeed(
            file.Start, time, stopped, new TransientWorkspace(), file.Start.Model.Rotors[0], samples));
    }
}
