using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>What to check next.</summary>
internal static class NextCheckRows
{
    public static readonly ShapeOf<NextCheck> Shape = new ShapeOf<NextCheck>("nextCheck", "What to check next.")
        .Text("code", n => n.Question.Code, "The member of the case's complaint in which the answer is stated.")
        .Words("text", (n, texts, units) => texts.Of(n.Question.TextCode, units), "The question in words.")
        .Words("why", (n, texts, units) => texts.Of(n.Why, units), "Why it is asked.")
        .Number("effort", n => n.Effort, "Its effort; smaller is easier.")
        .Words("danger", (n, texts, units) => texts.Of(AdviceCodes.Of(n.Question.Place), units), "What is dangerous about the place.")
        .Choice("place", n => n.Question.Place, "Where it is done.")
        .Number("minutes", n => n.Question.Minutes, "Minutes it takes.")
        .Number("bits", n => n.Bits, "How much it tells, bit.")
        .List("answers", n => n.Question.Answers, (n, a) => new KeyValuePair<string, string>(n.Question.Code, a),
            new ShapeOf<KeyValuePair<string, string>>("answer", "A possible answer.")
                .Text("code", a => a.Value, "As it is stated in the case.")
                .Words("text", (a, texts, units) => texts.Of(Fact.Of(a.Key, a.Value).Code, units), "It in words."), "The possible answers.")
        .List("cautions", n => n.Question.Cautions, CautionRows.Shape, "Cautions; show them all.");
}
