using Driveline.Cases;
using Driveline.Sweeps;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>Whole studies: closed form, typed assessments, cases; on one thread and on two.</summary>
internal sealed class StudyBenchmarks
{
    private readonly CaseFile thornbeck = CaseReader.Read(File.ReadAllBytes(Find("thornbeck-bolt-right"))).Case!;
    private readonly CaseFile ravensmoor = CaseReader.Read(File.ReadAllBytes(Find("ravensmoor-stump"))).Case!;

    /// <summary>Three sampled columns and a product.</summary>
    public static Study ClosedFormOf(long rows) => Study.Of("closed form")
        .WithFactors(Factor.Uniform("areaM2", 60e-6, 80e-6), Factor.Uniform("tauPa", 4e8, 5e8), Factor.Uniform("radiusM", 0.015, 0.017))
        .WithDesign(Design.Sobol(rows, 7))
        .WithOutputs(StudyOutput.OfColumns("breakTorqueNm", ClosedForm.BreakTorque(2, 0, 1, 2)));

    /// <summary>Every row a whole assessment of a case.</summary>
    public Study Cases(int rows) => Study.Of("cases").WithCase(thornbeck)
        .WithFactors(
            Factor.Uniform("driveline[2].shearBolt.shaftDiameter", 0.031, 0.033), Factor.Triangular("driveline[3].damagedAt", 2200, 2500,
                2900),
            Factor.Pert("work.steadyPeak", 420, 500, 650))
        .WithDesign(Design.Sobol(rows, 7)).WithRowsPerGroup(256).WithCaseOutputs("assess.verdict", "assess.guardMargin");

    /// <summary>A study file's closed form: the break torque of the case's bolt over its shaft.</summary>
    public Study OneDevice(int rows) => Study.Of("one device").WithCase(thornbeck)
        .WithFactors(Factor.Uniform("driveline[2].shearBolt.shaftDiameter", 0.031, 0.033))
        .WithDesign(Design.Sobol(rows, 7)).WithCaseOutputs("shearBolt.breakTorqueNm.expected");

    /// <summary>Every row a simulated strike.</summary>
    public Study Simulations(int rows) => Study.Of("simulations").WithCase(ravensmoor)
        .WithFactors(Factor.Triangular("strike.force", 1000, 3200, 9000))
        .WithDesign(Design.Sobol(rows, 7)).WithRowsPerGroup(4).WithCaseOutputs("simulate.peakTorqueNm[main gearbox]");

    /// <summary>The time of a run in memory that earlier runs have had: new pages from the system are not counted.</summary>
    public static double Seconds(Study study, int threads)
    {
        GC.Collect();
        return Sweep.Run(study, SweepOptions.Default.WithThreads(threads), CancellationToken.None).Elapsed.TotalSeconds;
    }

    private static string Find(string name)
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, "shared", "cases", name + ".case.json");
            if (File.Exists(path))
            {
                return path;
            }
        }

        throw new FileNotFoundException(name);
    }
}
