using System.Text.RegularExpressions;
using Driveline.Advice;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Wording;

namespace Driveline.Tests.Advice;

/// <summary>
/// Reads every procedure as a person does who follows it step by step: nobody reaches in before all is off, no PTO turns before all is
/// closed.
/// </summary>
public class ProcedureOrderTests
{
    // Looked up, logged or computed away from the machine, or from the seat.
    private static readonly string[] AwayFromTheMachine =
    [
        "measure.boltHardness", "measure.workPeak", "measure.ptoClutchCapacity", "measure.slipsInWork", "measure.flywheelTransient",
            "measure.manualSpecification", "measure.fitLimiter", "measure.hoursWithoutBreak",
        "measure.shaftSteelAtHole",
    ];

    public static TheoryData<string> Procedures => [.. AllSteps().Select(p => p.Key)];

    [Theory]
    [MemberData(nameof(Procedures))]
    public void Procedure_FirstStep_StopsTakesTheKeyAndWaits(string name)
    {
        string first = AllSteps()[name][0].Code;
        foreach (string words in new[] { "PTO", "engine", "key out", "still" })
        {
            Assert.Contains(words, Texts.English.Of(first), StringComparison.Ordinal);
        }

        Assert.Contains("llave", Texts.Spanish.Of(first), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Procedures))]
    public void Procedure_StepThatTurnsThePto_ComesRightAfterGuardPeopleAndSeat(string name)
    {
        (string Code, bool TurnsPto)[] steps = AllSteps()[name];
        for (int k = 0; k < steps.Length; k++)
        {
            if (steps[k].TurnsPto)
            {
                string before = Texts.English.Of(steps[k - 1].Code);
                Assert.Matches("guard|shield", before);
                Assert.Contains("everybody", before, StringComparison.Ordinal);
                Assert.Contains("seat", before, StringComparison.Ordinal);
                Assert.StartsWith("From the seat", Texts.English.Of(steps[k].Code), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Procedure_StepThatSaysToEngage_IsMarkedAsTurningThePto()
    {
        var turning = AllSteps().Values.SelectMany(s => s).ToArray();
        Assert.All(turning, s => Assert.Equal(Regex.IsMatch(Texts.English.Of(s.Code), @"\b[Ee]ngage the PTO"), s.TurnsPto));
        Assert.Equal(4, turning.Where(s => s.TurnsPto).Select(s => s.Code).Distinct().Count());   // run-in, yearly, slip test, bolt change
    }

    [Fact]
    public void Springs_AfterASlip_GoBackToTheManualsLength()
    {
        foreach (string code in new[] { "clutch.service.runIn.reset", "clutch.service.scribeLine.reset", "clutch.service.storage.after" })
        {
            Assert.Contains("spring length in the manual", Texts.English.Of(code), StringComparison.Ordinal);
            Assert.Contains("longitud de resorte del manual", Texts.Spanish.Of(code), StringComparison.Ordinal);
            Assert.DoesNotContain("you wrote down", Texts.English.Of(code), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TurningByHand_OnTheCards_IsWithTheKeyOut()
    {
        foreach (string code in new[] { "boltChange.turnHub", "boltChange.turnByHand", "boltChange.freeTheJam", "inspect.joints",
            "inspect.gearbox", "inspect.bladeCarrier" })
        {
            Assert.Matches("key (still )?out", Texts.English.Of(code));
            Assert.Contains("llave", Texts.Spanish.Of(code), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Inspection_PtoWithNothingAttached_IsFromTheSeatWithGuardAndNobodyNear()
    {
        string text = Texts.English.Of("inspect.ptoClutch");
        Assert.All(new[] { "guard on", "everybody", "seat", "key out" }, words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Punch_OnTheBoltCard_ComesAfterGlovesAndEyeProtection()
    {
        string[] codes = [.. BoltChangeCard.For(MachineKind.RotaryCutter, BoltAccess.NotKnown).Steps.Select(s => s.Code)];
        Assert.True(Array.IndexOf(codes, "boltChange.protect") < Array.IndexOf(codes, "boltChange.freeTheJam"));
        Assert.Contains("eye protection", Texts.English.Of("boltChange.protect"), StringComparison.Ordinal);
        Assert.Contains("eye protection", Texts.English.Of("boltChange.getStubOut"), StringComparison.Ordinal);
    }

    [Fact]
    public void Measurement_AtTheMachine_SaysThatItStandsStill()
    {
        string[] measured =
            [.. Texts.English.Codes.Where(c => c.StartsWith("measure.", StringComparison.Ordinal)).Except(AwayFromTheMachine)];
        Assert.True(measured.Length >= 8);
        Assert.All(measured, code => Assert.Contains("key out", Texts.English.Of(code), StringComparison.Ordinal));
    }

    [Fact]
    public void Remedy_DoneFromTheSeat_CarriesNoCautionOfReachingIn()
    {
        // hand: whoever engages gently or drives more slowly reaches nowhere
        Diagnosis diagnosis = Diagnosis.Of(Complaint.Of(Symptom.BreaksWhenEngaging).With(Fact.Of("engagementManner", "abruptly")));
        Assert.Equal(Caution.BystandersAway, diagnosis.Remedies.Single(r => r.Code == Remedies.EngageGently).Caution);
    }

    private static Dictionary<string, (string Code, bool TurnsPto)[]> AllSteps()
    {
        var all = ServiceProcedure.All.ToDictionary(p => p.Code, p => p.Steps.Select(s => (s.Code, s.TurnsPto)).ToArray());
        foreach (MachineKind machine in new[] { MachineKind.RotaryCutter, MachineKind.PostHoleAuger })
        {
            foreach (BoltAccess access in Enum.GetValues<BoltAccess>())
            {
                all.Add("bolt " + machine + " " + access, [.. BoltChangeCard.For(machine, access).Steps.Select(s => (s.Code, s.TurnsPto))]);
            }
        }

        InspectionList list = InspectionList.After(StruckBy.Blade);
        all.Add("inspection", [.. list.Before.Select(s => (s.Code, s.TurnsPto)), .. list.Items.Select(i => (i.Code, false))]);
        return all;
    }
}
