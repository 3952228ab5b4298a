namespace Driveline.Sweeps.Tests;

public class ClosedFormTests
{
    [Fact]
    public void BreakTorque_WorkedCase_Matches()
    {
        // 2 × 50 mm² × 300 MPa × 60 mm = 1800 N·m; 2 × 50 × 300 × 70 = 2100.
        StudyTable table = Sweep.Run(Study.Of("t")
            .WithFactors(Factor.Values("a", 50e-6), Factor.Values("tau", 300e6), Factor.Values("r", 0.06, 0.07))
            .WithDesign(Design.Grid(1)).WithOutputs(StudyOutput.OfColumns("t", ClosedForm.BreakTorque(2, 0, 1, 2)))).Table!;
        Assert.Equal([1800, 2100], table.Numbers("t").ToArray().Select(v => Math.Round(v, 9)));
    }

    [Fact]
    public void SlipTorque_WorkedCase_Matches()
    {
        // 250/175 mm run in: r = (125 + 87.5)/2 = 106.25 mm; 2 × 0.35 × 7200 N × 106.25 mm = 535.5 N·m (the example of SlipTorque).
        Study study = Study.Of("t").WithFactors(Factor.Values("mu", 0.35), Factor.Values("f", 7200), Factor.Values("r", 0.10625))
            .WithDesign(Design.Random(13, 1)).WithOutputs(
                StudyOutput.OfColumns("t", ClosedForm.SlipTorque(2, 0, 1, 0.10625)),
                StudyOutput.OfColumns("u", ClosedForm.SlipTorque(2, 0, 1, 2)));
        StudyTable table = Sweep.Run(study).Table!;
        Assert.All(table.Numbers("t").ToArray(), v => Assert.Equal(535.5, v, 1e-9));
        Assert.All(table.Numbers("u").ToArray(), v => Assert.Equal(535.5, v, 1e-9));
    }
}
