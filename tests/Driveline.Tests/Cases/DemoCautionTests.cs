using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Tests.Cases;

public class DemoCautionTests
{
    private static readonly string[] Entanglement = ["caution.noProudBolt", "caution.bystandersAway", "caution.neverStepOver"];

    [Fact]
    public void PostHoleAuger_EveryVerb_WarnsOfEntanglementFirst()
    {
        CaseFile file = DemoCases.Read("fenwick-auger-plain-bolt");
        Assert.Equal(MachineKind.PostHoleAuger, CaseQuestion.MachineOf(file));
        ProtectionQuestion question = CaseQuestion.Of(file).Question!;
        Assert.Equal(Entanglement, ProtectionCheck.Run(question).Cautions.Take(3));
        Assert.Equal(Entanglement, BoltChoice.For(question).Cautions.Take(3));
        Assert.Equal(Entanglement, CaseAdvice.Of(file).Advice!.Cautions.Take(3).Select(c => c.Code));
        Assert.Equal(Entanglement, CaseSimulation.Engagement(file).Cautions.Take(3));
        Assert.Equal(Entanglement, CaseClutch.CautionsOfMachine(file));
    }

    // 4 in under the head less a hub of 2 in and a nut of 1/2 in: 1 1/2 in turn in the open.
    [Fact]
    public void PostHoleAuger_BoltStandsOut_IsADanger()
    {
        Finding proud = Assert.Single(
            DemoCases.Verdict("fenwick-auger-plain-bolt").Findings, f => f.Code == ShearBoltFindings.BoltStandsProud);
        Assert.Equal(Severity.Danger, proud.Severity);
        Assert.Equal(1.5 * 0.0254, proud.Parameter("protrusion")!.Value, 1e-9);
    }

    [Fact]
    public void Clutch_AssessedOrChosen_CarriesItsOwnCautions()
    {
        ProtectionVerdict verdict = DemoCases.Verdict("dunmarsh-clutch-never-slipped");
        Assert.Contains(verdict.MeasureNext, m => m.Code == "measure.slipTest");
        string[] own = ["caution.bystandersAway", "clutch.caution.hot", "caution.hotClutchDryGrass", "clutch.caution.neverTighter"];
        Assert.Empty(own.Except(verdict.Cautions));
        Assert.Empty(own.Except(BoltChoice.For(verdict.Question).Cautions));
        Assert.Equal("caution.stopAndKeyOut", verdict.Cautions[0]);
    }

    [Fact]
    public void HubToBeTurned_Verdict_SaysToSupportTheHalves()
    {
        foreach (string name in DemoCases.Names)
        {
            ProtectionVerdict verdict = DemoCases.Verdict(name);
            if (verdict.MeasureNext.Any(m => m.Code == "measure.hubTurn"))
            {
                Assert.Contains("caution.supportHalfShafts", verdict.Cautions);
            }

            Assert.Equal(verdict.Cautions.Distinct().Count(), verdict.Cautions.Count);
        }
    }

    [Fact]
    public void EveryCaution_OfTheAdvice_IsPrintedSomewhere()
    {
        var printed = DemoCases.Names.SelectMany(n => CaseAdvice.Of(DemoCases.Read(n)).Advice!.Cautions)
            .Concat(FactQuestion.All.SelectMany(q => q.Cautions)).Select(c => c.Code).ToHashSet(StringComparer.Ordinal);
        // goes with a remedy that no demo needs
        Assert.Empty(Cautions.All.Select(c => c.Code).Except(printed).Except(["caution.keepOverlap"]));
    }
}
