using System.Text.Json;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Tests.Cases;

/// <summary>Whether a machine may be used as it is stands first in every answer.</summary>
public class CaseStandingTests
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [InlineData("dunmarsh-clutch-rusted", true)]            // the test failed
    [InlineData("wickerby-clutch-coil-bound", true)]        // by the numbers it outlasts the drive tube
    [InlineData("thornbeck-seized-hub", true)]              // seen with the bolt out
    [InlineData("larkfield-oak-root", true)]                // letter (b): most likely stuck, nobody has looked
    [InlineData("dunmarsh-clutch-well-set", false)]
    [InlineData("dunmarsh-clutch-never-slipped", false)]    // not known is not known to be stuck
    [InlineData("larkfield-soft-bolts", false)]
    public void Demo_WithoutProtection_SaysFirstToStop(string name, bool expected)
    {
        OwnerAdvice advice = GoodAdvice.Of(name);
        Assert.Equal(expected, advice.Standing.State == StandingState.Stop);
        string text = AdviceText.Of(advice.WithHead(LetterHead.Empty), ReportOptions.Default);
        Assert.Equal(expected, text.StartsWith("Stop using it", StringComparison.Ordinal));
    }

    [Fact]
    public void Letter_WithHeadAndOwnWords_SaysStopBeforeTheWords()
    {
        LetterHead head = LetterHead.Empty.WithTo("Ms Oakes").WithOwnWords("It hums along well.");
        string text = AdviceText.Of(GoodAdvice.Of("thornbeck-seized-hub").WithHead(head), ReportOptions.Default);
        int stop = text.IndexOf("Stop using it", StringComparison.Ordinal);
        Assert.InRange(stop, text.IndexOf("Ms Oakes", StringComparison.Ordinal), text.IndexOf("hums along", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("thornbeck-seized-hub", StandingFindings.HubSeized)]
    [InlineData("dunmarsh-clutch-rusted", StandingFindings.ClutchStuck)]
    [InlineData("ravensmoor-rusted-clutch-rock", StandingFindings.ClutchStuck)]
    [InlineData("wickerby-clutch-coil-bound", StandingFindings.ClutchSolid)]
    [InlineData("wickerby-clutch-too-hot", StandingFindings.ClutchOverheats)]
    [InlineData("fenwick-twisted-tube", StandingFindings.TubeTwisted)]
    [InlineData("orchard-row-shaking-mower", StandingFindings.BladesBent)]
    [InlineData("hollinmoor-no-bolt-fits", StandingFindings.WorkTooHeavy)]
    [InlineData("thornbeck-too-strong", StandingFindings.FittedStronger)]
    public void Demo_MustNotRun_VerdictAndAdviceHeadWithStop(string name, string reason)
    {
        ProtectionVerdict verdict = DemoCases.Verdict(name);
        Assert.True(verdict.Standing.State == StandingState.Stop && verdict.Standing.Has(reason), verdict.Standing.ToString());
        Assert.StartsWith("Stop using it", VerdictText.Of(verdict, ReportOptions.Default), StringComparison.Ordinal);
        OwnerAdvice advice = GoodAdvice.Of(name);
        Assert.True(advice.Standing.Has(reason), advice.Standing.ToString());
        Assert.StartsWith(
            "Deje de usarla",
            AdviceText.Of(advice.WithHead(LetterHead.Empty), ReportOptions.Default.WithLanguage(Language.Spanish)),
            StringComparison.Ordinal);
    }

    [Fact]
    public void SmokingClutch_FirstLines_SayToDisengageCoolAndLook()
    {
        OwnerAdvice advice = GoodAdvice.Of("hay-bottom-smoking-clutch");
        Assert.Equal(StandingFindings.ClutchSmokes, advice.Standing.Reasons[0].Why.Code);
        string first = Line(AdviceText.Of(advice, ReportOptions.Default)).Substring(0, 500);
        foreach (string words in new[] { "Stop using it", "Disengage", "dry grass", "fire extinguisher", "Do not touch it",
            "looked at the linings" })
        {
            Assert.Contains(words, first, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void DefectsSeen_WhateverTheSymptom_AreNamedFirst()
    {
        OwnerAdvice advice = GoodAdvice.Of(CaseFile.Empty.With(
            "complaint",
            """{ "symptom": "breaksOften", "hubTurns": "notAtAll", "holes": "oval", "damageSeen": "tubeTwisted","""
                + """ "bladeCondition": "bentOrUnequal" }""").Case!);
        Assert.Equal(
            [StandingFindings.HubSeized, StandingFindings.TubeTwisted, StandingFindings.BladesBent],
            advice.Standing.Reasons.Select(r => r.Why.Code));
    }

    [Fact]
    public void Silence_IsNeverGoOn()
    {
        Assert.Equal(StandingState.NotKnown, GoodAdvice.Of(CaseFile.Empty).Standing.State);
        Assert.All(DemoCases.Names, name => Assert.NotEqual(StandingState.GoOn, DemoCases.Verdict(name).Standing.State));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Demo_Json_CarriesTheStanding(string name)
    {
        OwnerAdvice advice = GoodAdvice.Of(name);
        using var stream = new MemoryStream();
        AdviceJson.Of(advice).Write(stream);
        JsonElement standing = JsonDocument.Parse(stream.ToArray()).RootElement.GetProperty("standing");
        Assert.Equal(advice.Standing.State.ToString(), standing.GetProperty("state").GetString());
        Assert.Equal(advice.Standing.Reasons.Count, standing.GetProperty("reasons").GetArrayLength());
        Assert.All(standing.GetProperty("reasons").EnumerateArray(),
            r => Assert.DoesNotContain("standing.", r.GetProperty("lift").GetProperty("text").GetString(), StringComparison.Ordinal));
    }

    private static string Line(string text) => string.Join(" ", text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
