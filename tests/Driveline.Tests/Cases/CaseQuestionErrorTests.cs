using Driveline.Cases;
using Driveline.Cases.Questions;

namespace Driveline.Tests.Cases;

/// <summary>
/// Facts that contradict each other only where they meet in the driveline: named with member, line and column, as by the reader.
/// </summary>
public class CaseQuestionErrorTests
{
    [Theory]
    [InlineData("{ \"branch\": \"b\", \"powerShare\": 0.3 }", "driveline[0].driveline", "A branch needs at least one element; got none.")]
    [InlineData(
        "{ \"branch\": \"b\", \"powerShare\": { \"low\": 0.2, \"expected\": 1, \"high\": 1 }, \"driveline\": [ { \"rotor\": \"r\" } ] "
            + "}, { \"shaft\": \"s\" }",
        "driveline[0].powerShare",
        "The power shares of the branches up to 'b' add up to 1; they must leave something for what follows, and never exceed 1.")]
    [InlineData(
        "{ \"slipClutch\": { \"springs\": { \"coil\": { \"count\": 8, \"rate\": \"150 N/mm\", \"freeLength\": \"40 mm\", "
            + "\"solidLength\": \"30 mm\" } }, \"nutTurns\": 27, \"threadPitch\": \"1.5 mm\" } }",
        "driveline[0].slipClutch.nutTurns",
        "Turns of the nut must be fewer than 26.7: so many press springs of 40 mm to nothing; got 27.")]
    public void Contradiction_OfTheDriveline_IsNamedAtItsPlace(string elements, string path, string message)
    {
        CaseError error = ErrorOf("{ \"driveline\": [\n" + elements + " ] }");
        Assert.Equal(path, error.Path);
        Assert.Equal(message, error.Message);
        Assert.Equal(2, error.Line);
        Assert.True(error.Column > 0);
    }

    [Fact]
    public void Contradiction_SpecifiedBoltAsThickAsTheShaft_IsNamedAtTheSpecifiedBolt()
    {
        CaseError error = ErrorOf("""
            { "driveline": [ { "shearBolt": { "thread": "M10", "grade": "8.8", "layout": "throughShaft", "shaftDiameter": "20 mm" } } ],
              "specified": { "shearBolt": { "pinDiameter": "20 mm" } } }
            """);
        Assert.Equal("specified.shearBolt", error.Path);
        Assert.Equal("Bolt diameter must be below the shaft diameter 0.02 m; got 0.02 m.", error.Message);
        Assert.Equal(2, error.Line);
    }

    private static CaseError ErrorOf(string json)
    {
        CaseQuestion question = CaseQuestion.Of(CaseReaderTests.ReadGood(json));
        Assert.Null(question.Question);
        return Assert.Single(question.Errors);
    }
}
