using Driveline.Cases;
using Driveline.Sweeps.Kernels;
using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Tests;

public class CaseKernelTests
{
    private const string Bolt = "driveline[2].shearBolt.";
    private const string Clutch = "driveline[2].slipClutch.";

    private static readonly string[] BoltOutputs =
        ["shearBolt.breakTorqueNm.low", "shearBolt.breakTorqueNm.expected", "shearBolt.breakTorqueNm.high"];

    private static readonly string[] ClutchOutputs =
    [
        "clutch.slipTorqueNm.low", "clutch.slipTorqueNm.expected", "clutch.slipTorqueNm.high", "clutch.breakawayTorqueNm.low",
        "clutch.breakawayTorqueNm.expected", "clutch.breakawayTorqueNm.high", "clutch.clampForceN.low", "clutch.clampForceN.expected",
        "clutch.clampForceN.high",
    ];

    public static TheoryData<string, string, bool> Studies => new()
    {
        { "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}shaftDiameter", "uniform": ["30 mm", "34 mm"] }""", true },
        { "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}shaftDiameter", "normal": ["1 1/4 in", "0.1 mm"] }""", true },
        {
            "thornbeck-bolt-right", $$"""
            { "path": "{{Bolt}}shaftDiameter", "uniform": ["30 mm", "34 mm"] },
            { "path": "{{Bolt}}grade", "values": ["SAE 2", "SAE 5", "unmarked"] },
            { "path": "{{Bolt}}hub", "values": ["free", "stiff", "seized"] }
            """, true
        },
        { "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}grade", "values": ["SAE 2", "SAE 5"] }""", true },
        { "dunmarsh-clutch-never-slipped", $$"""{ "path": "{{Clutch}}springLength", "uniform": ["33.5 mm", "36 mm"] }""", true },
        { "dunmarsh-clutch-never-slipped", $$"""{ "path": "{{Clutch}}springLength", "uniform": ["28 mm", "45 mm"] }""", true },
        {
            "dunmarsh-clutch-never-slipped", $$"""
            { "path": "{{Clutch}}springLength", "band": true }, { "path": "{{Clutch}}wear", "uniform": ["0 mm", "2 mm"] },
            { "path": "{{Clutch}}outerDiameter", "pert": ["160 mm", "165 mm", "166 mm"] },
            { "path": "{{Clutch}}innerDiameter", "uniform": ["98 mm", "102 mm"] },
            { "path": "{{Clutch}}runIn", "values": ["new", "runIn"] },
            { "path": "{{Clutch}}surface", "values": ["dry", "oiled", "cleanInWork"] }
            """, true
        },
        // A shaft thinner than its bolt contradicts the case, so that rows are computed by cases.
        { "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}shaftDiameter", "uniform": ["6 mm", "34 mm"] }""", false },
        { "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}hubFriction", "uniform": ["10 N.m", "40 N.m"] }""", false },
        { "thornbeck-bolt-right", """{ "path": "work.steadyPeak", "uniform": ["300 N.m", "400 N.m"] }""", false },
        { "dunmarsh-clutch-well-set", $$"""{ "path": "{{Clutch}}springLength", "uniform": ["33.5 mm", "36 mm"] }""", false },
    };

    [Theory]
    [MemberData(nameof(Studies))]
    public void Rows_OfAKernel_AreThoseOfTheCase(string name, string factors, bool hasKernel)
    {
        StudyPlan plan = PlanOf(name, factors, factors.Contains("slipClutch", StringComparison.Ordinal) ? ClutchOutputs : BoltOutputs);
        Assert.Equal(hasKernel, plan.Kernel is not null);
        Assert.Equal(hasKernel ? 65536 : 4096, plan.RowsPerGroup);
        StudyTable table = Sweep.Run(plan.Study).Table!;
        CaseOutput[] outputs = [.. plan.Outputs.Select(o => o.OfCase!)];
        double[] numbers = new double[outputs.Length];
        var group = new RowGroup(plan);
        new GroupWork(plan).Compute(0, group, default);
        for (int k = 0; k < plan.Count; k++)
        {
            string? problem = plan.Rows!.Answer(
                group.Factors, k, new CaseScratch(plan.Study.Factors.Count), outputs, numbers, new string?[outputs.Length], default);
            Assert.Equal(problem, table.ErrorOf(k));
            for (int o = 0; o < outputs.Length && problem is null; o++)
            {
                double found = table.Numbers(outputs[o].Name)[k];
                Assert.True(found.Equals(numbers[o]) || Math.Abs(found - numbers[o]) <= CaseKernel.Tolerance * Math.Abs(numbers[o]),
                    FormattableString.Invariant($"{outputs[o].Name} in row {k}: {found:R}, of the case {numbers[o]:R}"));
            }
        }
    }

    [Fact]
    public void BreakTorque_OverShafts_IsInProportion()
    {
        // T = m A τ r: of the case's 1 1/4 in (31.75 mm) the torque is T0; of d it is T0 · d / 31.75 mm.
        double at = CaseAssessment.Of(CaseOf("thornbeck-bolt-right")).Verdict().Trip!.Expected!.Value.NewtonMeters;
        StudyPlan plan = PlanOf(
            "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}shaftDiameter", "uniform": ["30 mm", "34 mm"] }""", BoltOutputs);
        StudyTable table = Sweep.Run(plan.Study).Table!;
        Assert.All(Enumerable.Range(0, 256), k => Assert.Equal(
            at * table.Numbers(Bolt + "shaftDiameter")[k] / 0.03175, table.Numbers("shearBolt.breakTorqueNm.expected")[k], 1e-6));
    }

    [Fact]
    public void ClampForce_OverSpringLengths_IsThatOfTheSprings()
    {
        // 8 springs of 150 N/mm, 40 mm free, at 35 mm: 8 · 150 · 5 = 6000 N; at 36 mm 4800 N.
        Study study = Study.Of("t").WithCase(CaseOf("dunmarsh-clutch-never-slipped")).WithDesign(Design.Grid(2))
            .WithFactors(Factor.Uniform(Clutch + "springLength", 0.035, 0.036)).WithCaseOutputs("clutch.clampForceN.expected");
        Assert.NotNull(StudyPlan.Of(study).Kernel);
        Assert.Equal([6000, 4800], Sweep.Run(study).Table!.Numbers("clutch.clampForceN.expected").ToArray().Select(v => Math.Round(v, 6)));
    }

    [Fact]
    public void Row_BeyondTheBoxOfTheKernel_FailsAsACase()
    {
        // The bolt is 9.525 mm thick: (34 − 9.525)/9 = 2.719 deviations below the middle,
        // so 0.327 % of 8192 rows, 27, have too thin a shaft.
        StudyPlan plan = PlanOf(
            "thornbeck-bolt-right", $$"""{ "path": "{{Bolt}}shaftDiameter", "normal": ["34 mm", "9 mm"] }""", BoltOutputs, 8192);
        Assert.NotNull(plan.Kernel);
        StudyResult result = Sweep.Run(plan.Study);
        Assert.InRange(result.Failed, 26, 28);
    }

    private static CaseFile CaseOf(string name) => CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile(name))).Case!;

    private static StudyPlan PlanOf(string name, string factors, string[] outputs, int rows = 256)
    {
        string json = $$"""
            {
              "title": "t", "case": {{File.ReadAllText(TestStudies.CaseFile(name))}}, "factors": [ {{factors}} ],
              "outputs": [ {{string.Join(", ", outputs.Select(o => "\"" + o + "\""))}} ],
              "design": { "kind": "sobol", "n": {{rows}}, "seed": 3 }
            }
            """;
        StudyReadResult read = StudyReader.Read(json);
        Assert.True(read.IsRead, string.Join("\n", read.Errors));
        return StudyPlan.Of(read.Study);
    }
}
