using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>The advice on a complaint.</summary>
internal static class AdviceRows
{
    public static readonly ShapeOf<OwnerAdvice> Shape = new ShapeOf<OwnerAdvice>(
            "advise", "The advice on a complaint: causes, the next check, remedies and their price in protection.")
        .Object("letter", a => a.Head, LetterRows.Shape, "The head of the letter.")
        .List("answers", a => a.Answers, LetterRows.Answer, "The answers to what the owner asks, in his order.")
        .Object("standing", a => a.Standing, StandingRows.Shape, "Whether the machine may be used as it is.")
        .Choice("symptom", a => a.Diagnosis.Complaint.Symptom, "What the owner complains of.")
        .Flag("isEnoughKnown", a => a.Diagnosis.IsEnoughKnown, "True when no further check is worth its effort.")
        .Texts("pooledCauses", a => [.. a.Diagnosis.Pooled.Select(c => c.ToString())],
            "The likeliest cause and those that its remedy cures too, likeliest first; they count together in isEnoughKnown.")
        .List("causes", a => a.Diagnosis.Causes, CauseRows.Shape, "The causes, likeliest first.")
        .Maybe("nextCheck", a => a.Diagnosis.Next, NextCheckRows.Shape, "What to check next; null when nothing would tell more.")
        .List("remedies", a => a.Remedies, RemedyRows.Shape, "What to do, in order.")
        .MaybeText("currency", a => a.Currency, "Currency of the remedies' costs; null when they have none.")
        .Flag("arePricesGuessed", a => a.ArePricesGuessed, "True when no price is stated and a guess stands in.")
        .List("inspectBefore", a => Steps(a.Inspection?.Before), CodeRows.Shape, "What to do before looking anything over.")
        .List("inspect", a => a.Inspection?.Items ?? [], InspectionRows.Shape, "What to look over.")
        .List("partLoads", a => a.Inspection?.PartLoads ?? [], FindingRows.Shape, "What each part carried.")
        .Maybe("cost", a => a.Costs.Count == 0 ? null : a.Costs, OwnerCostRows.Shape, "What the options cost; null when none is stated.")
        .Maybe("deck", a => a.Deck, DeckRows.Shape, "How the deck hangs; null when it was not measured.")
        .List("boltChange", a => Steps(a.BoltChange?.Steps), CodeRows.Shape, "How to change the bolt.")
        .List("findings", a => a.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("cautions", a => a.Cautions, CautionRows.Shape, "Cautions; show them all.")
        .Object("weakestBasis", a => a.Basis, BasisRows.Shape, "The weakest basis of all numbers.");

    private static string[] Steps(IReadOnlyList<CardStep>? steps) => steps is null ? [] : [.. steps.Select(s => s.Code)];
}
