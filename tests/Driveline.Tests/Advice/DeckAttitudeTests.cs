using Driveline.Advice;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Advice;

public class DeckAttitudeTests
{
    private static readonly Basis Measured = Basis.Given("the test");

    [Theory]
    [InlineData(60, 90, 1.5, -1.146, "hand: asin(−30/1500)")]
    [InlineData(90, 60, 1.5, 1.146, "hand: asin(30/1500)")]
    [InlineData(80, 80, 1.2, 0, "level")]
    public void Pitch_WorkedCase_Matches(double front, double rear, double span, double degrees, string source) =>
        Assert.True(Math.Abs(Tips(front, rear, span).Pitch.Degrees - degrees) < 5e-4, source);

    [Fact]
    public void FromHitchAndTailWheel_WorkedCase_Matches()
    {
        // Points 2.0 m apart, 450 and 490 mm high: sin θ = −0.02. Rotor 1.0 m behind the hitch, blades 380 mm below, span 1.5 m:
        // front tip 0.25 m behind the hitch: 450 + 5 − 380 cos θ (379.924) = 75.08 mm; rear 1.75 m: 450 + 35 − 379.924 = 105.08 mm.
        var geometry = DeckGeometry.Of(Length.FromMeters(2), Length.FromMeters(1), Length.FromMillimeters(380), Length.FromMeters(1.5));
        DeckAttitude deck = DeckAttitude.FromHitchAndTailWheel(
            Length.FromMillimeters(450), Length.FromMillimeters(490), geometry, Measured);
        Assert.Equal(75.076, deck.FrontTip.Millimeters, 2);
        Assert.Equal(105.076, deck.RearTip.Millimeters, 2);
        Assert.Equal(-1.146, deck.Pitch.Degrees, 3);
        Assert.Equal(30, deck.FrontBelowRear.Millimeters, 9);
    }

    [Theory]
    [InlineData(10, 30, 59.9, Answer.No, "highest bump just below the lower tip of 60 mm")]
    [InlineData(10, 30, 60, Answer.Maybe, "highest bump at the tip")]
    [InlineData(59.9, 70, 80, Answer.Maybe, "lowest bump just below the tip")]
    [InlineData(60, 70, 80, Answer.Yes, "even the lowest bump reaches")]
    public void ReachesGround_AtItsBoundaries_AnswersAsDefined(double low, double expected, double high, Answer answer, string why)
    {
        LengthBand bumps = LengthBand.Between(
            Length.FromMillimeters(low), Length.FromMillimeters(expected), Length.FromMillimeters(high), Measured);
        Assert.True(Tips(60, 90, 1.5).ReachesGround(bumps) == answer, why);
    }

    [Fact]
    public void ReachesGround_UnknownGround_IsNeverNo() =>
        Assert.Equal(Answer.NotKnown, Tips(60, 90, 1.5).ReachesGround(LengthBand.AtLeast(Length.Zero, Measured)));

    [Fact]
    public void Findings_NoseDownLowDeck_SaySo()
    {
        string[] codes = [.. Tips(60, 90, 1.5).FindingsOver(LengthBand.Exactly(Length.FromMillimeters(70), Measured)).Select(f => f.Code)];
        Assert.Equal([DeckFindings.NoseDown, DeckFindings.BelowUsualHeight, DeckFindings.ReachesGround], codes);
        Assert.Empty(Tips(80, 90, 1.5).Findings);
        Assert.Equal(DeckFindings.NoseUp, Tips(120, 90, 1.5).Findings.Single().Code);
    }

    [Theory]
    [InlineData(76.1, true)]
    [InlineData(76.2, false)]
    public void Findings_LeastHeight_IsThreeInches(double height, bool isLow) =>
        Assert.Equal(isLow, Tips(height, height, 1.5).Findings.Any(f => f.Code == DeckFindings.BelowUsualHeight));

    [Fact]
    public void TopLink_WorkedCase_Matches()
    {
        // sin θ = −0.02, cos θ = 0.9998; rise 0.5 · 0.9998 − 0.45 = 0.0499; a = √(0.36 − 0.00249) + 0.01 = 0.607921;
        // level: √(0.607921² + 0.05²) = 0.609974; change 9.97 mm longer.
        TopLink link = TopLink.Of(Length.FromMeters(0.5), Length.FromMeters(0.6), Length.FromMeters(0.45));
        Assert.Equal(9.974, link.ChangeFor(Tips(60, 90, 1.5), Length.Zero).Millimeters, 3);
        Assert.Equal(0, link.ChangeFor(Tips(60, 90, 1.5), Length.FromMillimeters(30)).Millimeters, 9);
        // The tail, 2 m behind the pins, sinks by 2 m · (0 + 0.02) = 40 mm.
        Assert.Equal(40, Tips(60, 90, 1.5).TailWheelDropFor(Length.Zero, Length.FromMeters(2)).Millimeters, 9);
    }

    [Fact]
    public void TopLink_ImpossibleLengths_AreRefusedWithBothNumbers()
    {
        TopLink link = TopLink.Of(Length.FromMeters(1), Length.FromMeters(0.3), Length.FromMeters(0.2));
        var error = Assert.Throws<ArgumentException>(() => link.ChangeFor(Tips(60, 90, 1.5), Length.Zero));
        Assert.Contains("0.3 m cannot span", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromBladeTips_HeightsThatCannotBe_AreRefused()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Tips(-1, 90, 1.5));
        Assert.Contains("Height of the front blade tip must be from 0 to 1 m; got -0.001 m", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Tips(0, 900, 0.5));
    }

    [Theory]
    [InlineData("CI22", "minimum recommended, rotary cutter", 76.2)]
    [InlineData("CI20", "front below rear, riding mower", 6.3)]
    public void Practice_MatchesTheReference(string id, string quantity, double mm)
    {
        ReferenceRow row = ReferenceTable.Read("pto", "cutter-inertia.csv").Single(r => r["id"] == id);
        Assert.Equal(quantity, row["quantity"]);
        Assert.Equal(mm, row.Number("value_SI"));
        Assert.Contains(mm, new[] { DeckPractice.LeastHeight.Value, DeckPractice.LawnMowerFrontLow.Value });
    }

    private static DeckAttitude Tips(double frontMm, double rearMm, double spanM) => DeckAttitude.FromBladeTips(
        Length.FromMillimeters(frontMm), Length.FromMillimeters(rearMm), Length.FromMeters(spanM), Measured);
}
