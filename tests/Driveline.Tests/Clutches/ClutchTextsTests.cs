using System.Reflection;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Tests.Clutches;

public class ClutchTextsTests
{
    private static readonly string[] FindingCodes = typeof(ClutchFindings).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (string)f.GetRawConstantValue()!).ToArray();

    [Fact]
    public void EveryFindingCode_HasWords() => Assert.Empty(FindingCodes.Except(Texts.English.Codes));

    [Fact]
    public void EveryClutchText_BelongsToSomething()
    {
        IEnumerable<string> used = FindingCodes
            .Concat(ServiceProcedure.All.Select(p => p.Code))
            .Concat(ServiceProcedure.All.SelectMany(p => p.Steps).Select(s => s.Code));
        Assert.Empty(Texts.English.Codes.Where(c => c.StartsWith("clutch.", StringComparison.Ordinal)).Except(used));
    }

    [Fact]
    public void EveryServiceStep_IsRenderedWhole()
    {
        foreach (ServiceStep step in ServiceProcedure.All.SelectMany(p => p.Steps))
        {
            string words = Texts.English.Of(step.Words);
            Assert.DoesNotContain("{", words, StringComparison.Ordinal);
            Assert.NotEqual(step.Code, words);
            Assert.NotEmpty(step.Cautions);
            Assert.All(step.Cautions, c => Assert.NotEqual(c.Code, Texts.English.Of(c.Code)));
        }
    }

    [Fact]
    public void EveryServiceStepThatReachesIn_StopsTheEngineFirst()
    {
        string[] driving = ["clutch.service.runIn.slip", "clutch.service.scribeLine.slip", "clutch.service.yearly.slipTest"];
        string[] naming =
            ["clutch.service.runIn.when", "clutch.service.yearly.when", "clutch.service.wear.slipsOften", "clutch.service.lever.record"];
        foreach (ServiceStep step in ServiceProcedure.All.SelectMany(p => p.Steps)
            .Where(s => !driving.Contains(s.Code) && !naming.Contains(s.Code)))
        {
            Assert.Equal(Caution.StopAndKeyOut, step.Cautions[0]);
        }

        foreach (ServiceStep step in ServiceProcedure.All.SelectMany(p => p.Steps).Where(s => driving.Contains(s.Code)))
        {
            Assert.Equal(Caution.BystandersAway, step.Cautions[0]);
        }
    }

    [Fact]
    public void EveryFindingOfManyClutches_IsRenderedWhole()
    {
        var findings = new List<Finding>();
        foreach (double mm in new[] { 39.0, 40, 40.2, 45, 50, 55 })
        {
            foreach (ClutchCondition condition in Conditions())
            {
                DiscClutch clutch = Build.NineSprings().WithFacing(Facings.WovenLining)
                    .WithSpringLength(UnitsNet.Length.FromMillimeters(mm), UnitsNet.Length.FromMillimeters(0.3));
                findings.AddRange(SlipTorque.Of(clutch, condition).Findings);
            }
        }

        foreach (double nm in new[] { 100.0, 400, 1050, 3000 })
        {
            findings.AddRange(
                ClutchSetting.For(Build.NineSprings(), UnitsNet.Torque.FromNewtonMeters(nm), Build.Clean(RunInState.RunIn)).Findings);
        }

        findings.AddRange(CutOutClutch.Of(CutOutKind.Cam).Findings);
        Assert.All(findings, f => Assert.DoesNotContain("{", Texts.English.Of(f), StringComparison.Ordinal));
        Assert.True(findings.Select(f => f.Code).Distinct().Count() >= 20);
    }

    [Fact]
    public void Of_UnreachedSetting_ReadsAsPeopleDo()
    {
        Finding finding = ClutchSetting.For(
            Build.NineSprings(), UnitsNet.Torque.FromNewtonMeters(3000), Build.Clean(RunInState.RunIn)).Findings[0];
        Assert.StartsWith("These springs cannot give 3000 N·m: they are solid before that (1070 N·m at most).", Texts.English.Of(finding),
            StringComparison.Ordinal);
    }

    private static IEnumerable<ClutchCondition> Conditions()
    {
        ClutchCondition unknown = ClutchCondition.AsOf(Build.Today);
        yield return unknown;
        yield return unknown.Stuck().WithSurface(SurfaceState.Glazed).WithRunIn(RunInState.New);
        yield return unknown.WithStorage(Build.Today, 6).WithSurface(SurfaceState.Oiled)
            .WithSlipTest(SlipTest.Slipped(Build.Today.AddDays(-9)));
        yield return unknown.WithStorage(Build.Today).WithWear(LengthBand.Exactly(UnitsNet.Length.FromMillimeters(2), Build.Stated))
            .WithSlipTest(SlipTest.Slipped(Build.Today.AddDays(-9)));
        yield return unknown.WithSlipTest(
            SlipTest.Lever(Build.Today.AddDays(-2), UnitsNet.Force.FromNewtons(900), UnitsNet.Length.FromMeters(3)));
        yield return unknown.WithStorage(Build.Today.AddDays(-800)).WithSlipTest(SlipTest.Slipped(Build.Today.AddDays(-500)));
    }
}
