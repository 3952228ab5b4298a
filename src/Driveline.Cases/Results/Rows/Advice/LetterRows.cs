using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>The head of the letter.</summary>
internal static class LetterRows
{
    public static readonly ShapeOf<LetterHead> Shape = new ShapeOf<LetterHead>(
            "letter", "The head of the letter; each null when not stated. Texts of the case as they are: escape them.")
        .MaybeText("to", l => l.To, "Whom the letter goes to.")
        .MaybeText("from", l => l.From, "Who signs it.")
        .MaybeText("machine", l => l.Machine, "Make and model of the machine.")
        .MaybeText("serial", l => l.Serial, "Serial number of the machine.")
        .MaybeText("reference", l => l.Reference, "The writer's own reference.")
        .MaybeText("ownWords", l => l.OwnWords, "What the owner wrote, in his own words.");

    public static readonly ShapeOf<OwnerAnswer> Answer = new ShapeOf<OwnerAnswer>(
            "letterAnswer", "The short answer to something the owner asked.")
        .Choice("ask", a => a.Ask, "What was asked.")
        .Object("answer", a => a.Answer, FindingRows.Shape, "The answer.");
}
