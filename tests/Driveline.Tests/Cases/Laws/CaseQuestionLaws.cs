using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Cases;

/// <summary>Whatever a good case says, its questions give answers or errors with a place, never an exception.</summary>
public class CaseQuestionLaws
{
    [Law(MaxTest = 150)]
    public Property Case_AnyGood_IsAnsweredOrNamesThePlace() => Prop.ForAll(CaseGenerator.Case.ToArbitrary(), c =>
    {
        CaseFile file = c.With("work.peaks", null).Case!;   // simulations have laws of their own
        CaseQuestion asked = CaseQuestion.Of(file);
        if (asked.Question is null)
        {
            return asked.Errors.Count > 0 && asked.Errors.All(e => e.Line > 0 && e.Column > 0 && e.Path.Length > 0);
        }

        ProtectionCheck.Run(asked.Question);
        CaseClutch.AllOf(file);
        CaseChoice.TermsOf(file);
        return true;
    });

    [Theory]
    [InlineData("oiled")]
    [InlineData("damp")]
    [InlineData("cleanInWork")]
    [InlineData("glazed")]
    public void StatedTorque_Exact_KeepsItsOrderInAnySurface(string surface)
    {
        string json = "{ \"driveline\": [ { \"slipClutch\": { \"statedTorque\": \"500 N.m\", \"surface\": \"" + surface + "\" } } ] }";
        Assert.Empty(CaseQuestion.Of(CaseReaderTests.ReadGood(json)).Errors);
    }
}
