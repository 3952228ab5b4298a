using Driveline.Cases;
using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;
using Driveline.Torsion;

namespace Driveline.Sweeps.Tests;

/// <summary>Simulated rows: the values of the case alone, from no more runs than are asked for, in memory that is used again.</summary>
public class SimulatedRowTests
{
    private static readonly string[] All =
    [
        "simulate.peakTorqueNm[main gearbox]", "simulate.peakTorqueUnprotectedNm[main gearbox]", "simulate.tripTimeS",
        "simulate.slipEnergyJ", "simulate.damaged[main gearbox]", "simulate.tripped",
    ];

    private static CaseFile Stump => TestStudies.Case("ravensmoor-stump");

    [Theory]
    [InlineData("ravensmoor-stump", "strike.force", 1500, 9000)]
    [InlineData("ravensmoor-stump", "driveline[1].stiffness", 5000, 20000)]
    public void Rows_WithAllOutputs_GiveWhatTheCaseAloneGives(string name, string path, double low, double high)
    {
        CaseFile file = TestStudies.Case(name);
        StudyTable table = Sweep.Run(Study.Of("all").WithCase(file).WithFactors(Factor.Uniform(path, low, high))
            .WithDesign(Design.Sobol(6, 3)).WithCaseOutputs(All)).Table!;
        Assert.True(CaseTarget.TryFind(file, path, out CaseTarget? target, out _));
        for (int row = 0; row < table.Rows; row++)
        {
            var patch = new CasePatch(file, [target]);
            var alone = CaseAssessment.Of(patch.With([target.Member.OfSi(table.Numbers(path)[row])!], out _)!);
            foreach (string output in All)
            {
                Assert.True(CaseOutputs.TryFind(file, output, out CaseOutput? asked, out _, out _));
                if (asked.IsWord)
                {
                    Assert.Equal(asked.Word(alone, CancellationToken.None), table.Words(output)[row]);
                }
                else
                {
                    Assert.Equal(asked.Number(alone, CancellationToken.None), table.Numbers(output)[row]);
                }
            }
        }
    }

    // Peaks of two runs; damage asks for every end of what is stated.
    [Fact]
    public void Rows_OfPeaksAlone_HaveThePeaksOfRowsWithDamage()
    {
        Study study = Study.Of("peaks").WithCase(Stump).WithFactors(Factor.Uniform("strike.force", 1500, 9000))
            .WithDesign(Design.Sobol(16, 5));
        StudyTable peaks = Sweep.Run(study.WithCaseOutputs(All[0], All[2])).Table!;
        StudyTable whole = Sweep.Run(study.WithCaseOutputs(All[0], All[2], All[4])).Table!;
        Assert.Equal(whole.Numbers(All[0]).ToArray(), peaks.Numbers(All[0]).ToArray());
        Assert.Equal(whole.Numbers(All[2]).ToArray(), peaks.Numbers(All[2]).ToArray());
    }

    [Fact]
    public void Workspaces_OfShapesByTurns_AreTheOnesUsedBefore()
    {
        var workspaces = new TransientWorkspaces();
        Mechanism[] shapes = [.. Enumerable.Range(2, 3).Select(Chain)];
        TransientWorkspace[] first = [.. shapes.Select(Fitted)];
        Assert.Equal(3, first.Distinct().Count());
        Assert.Equal(first, shapes.Select(Fitted));

        TransientWorkspace Fitted(Mechanism shape)
        {
            TransientWorkspace workspace = workspaces.Of(shape);
            workspace.FitTo(shape);
            return workspace;
        }
    }

    private static Mechanism Chain(int rotors)
    {
        var model = new TorsionModelBuilder();
        for (int k = 0; k < rotors; k++)
        {
            model.AddRotor("r" + k, UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(1));
            if (k > 0)
            {
                model.AddShaft("s" + k, "r" + (k - 1), "r" + k, Shaft.OfStiffness(
                    UnitsNet.RotationalStiffness.FromNewtonMetersPerRadian(1000)));
            }
        }

        return model.Build().Mechanism;
    }
}
