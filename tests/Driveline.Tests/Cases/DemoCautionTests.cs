using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Tests.Cases;

public class DemoCautionTests
{
    private static readonly Caution[] Entanglement = [Caution.NoProudBolt, Caution.BystandersAway, Caution.NeverStepOver];

    [Fact]
    public void PostHoleAuger_EveryVerb_WarnsOfEntanglementFirst()
    {
        CaseFile file = DemoCases.Read("fenwick-auger-plain-bolt");
        Assert.Equal(MachineKind.PostHoleAuger, CaseQuestion.MachineOf(file));
        ProtectionQuestion question = CaseQuestion.Of(file).Question!;
        Assert.Equal(Entanglement, ProtectionCheck.Run(question).Cautions.Take(3));
        Assert.Equal(Entanglement, BoltChoice.For(question).Cautions.Take(3));
        Assert.Equal(Entanglement, CaseAdvice.Of(file).Advice!.Cautions.Take(3));
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
        Caution[] own = [Caution.BystandersAway, Caution.HotClutch, Caution.HotClutchDryGrass, Caution.NeverTighter];
        Assert.Empty(own.Except(verdict.Cautions));
        Assert.Empty(own.Except(BoltChoice.For(verdict.Question).Cautions));
        Assert.Equal(Caution.StopAndKeyOut, verdict.Cautions[0]);
    }

    [Fact]
    public void HubToBeTurned_Verdict_SaysToSupportTheHalves()
    {
        foreach (string name in DemoCases.Names)
        {
            ProtectionVerdict verdict = DemoCases.Verdict(name);
            if (verdict.MeasureNext.Any(m => m.Code == "measure.hubTurn"))
            {
                Assert.Contains(Caution.SupportHalfShafts, verdict.Cautions);
            }

            Assert.Equal(verdict.Cautions.Distinct().Count(), verdict.Cautions.Count);
        }
    }

    [Fact]
    public void EveryCaution_OfTheAdvice_IsPrintedSomewhere()
    {
        var printed = DemoCases.Names.SelectMany(n => DemoCases.Advice(n).Advice!.Cautions)
            .Concat(FactQuestion.All.SelectMany(q => q.Cautions)).Concat(ClutchReview.OfEveryClutch).Select(c => c.Code)
                .ToHashSet(StringComparer.Ordinal);
        // goes with a remedy that no demo needs
        Assert.Empty(Caution.All.Select(c => c.Code).Except(printed).Except(["caution.keepOverlap"]));
    }
}
