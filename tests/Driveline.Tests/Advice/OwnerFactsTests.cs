using System.Reflection;
using Driveline.Advice;

namespace Driveline.Tests.Advice;

public class OwnerFactsTests
{
    [Fact]
    public void EveryAnswerOfTheCatalogue_HasItsNameAndNoOtherHas()
    {
        Fact[] named = [.. typeof(OwnerFacts).GetNestedTypes().SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static))
            .Select(f => (Fact)f.GetValue(null)!)];
        Fact[] catalogue = [.. FactQuestion.All.SelectMany(q => q.Answers.Select(a => Fact.Of(q.Code, a)))];
        Assert.Empty(catalogue.Except(named));
        Assert.Empty(named.Except(catalogue));
        Assert.Equal(catalogue.Length, named.Length);
    }

    [Fact]
    public void EveryName_IsThatOfItsCodes() => Assert.All(
        typeof(OwnerFacts).GetNestedTypes().SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static)),
        f => Assert.Equal(
            (f.DeclaringType!.Name + "." + f.Name).ToUpperInvariant(),
            (((Fact)f.GetValue(null)!).Question + "." + ((Fact)f.GetValue(null)!).Answer).ToUpperInvariant()));

    [Fact]
    public void Says_WhatTheSymptomImplies_IsTrue()
    {
        Assert.True(Complaint.Of(Symptom.BreaksOften).Says(OwnerFacts.Device.ShearBolt));
        Assert.False(Complaint.Of(Symptom.BreaksOften).Says(OwnerFacts.Device.None));
        Assert.True(Complaint.Of(Symptom.BreaksOften).With(OwnerFacts.HubTurns.Freely).Says(OwnerFacts.HubTurns.Freely));
    }
}
