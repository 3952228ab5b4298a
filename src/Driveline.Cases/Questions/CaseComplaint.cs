using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>What the owner of a case complains of: the stated answers, what the rest of the case says, and the deck.</summary>
/// <remarks>
/// What the case states outside its complaint counts as answered. A stated answer that the rest of the case contradicts is refused
/// where both are exact; where one is a judgement, the stated answer is believed.
/// </remarks>
internal sealed class CaseComplaint
{
    private static readonly HashSet<string> Exact = new(StringComparer.Ordinal)
    {
        "gradeAgainstManual", "boltSize", "planeThrough", "hubTurns", "engagementManner", "ptoClutch", "deckAttitude",
    };

    private CaseComplaint(Complaint complaint, DeckReading? deck, IReadOnlyList<Finding> notes)
    {
        Complaint = complaint;
        Deck = deck;
        Notes = notes;
    }

    public Complaint Complaint { get; }

    /// <summary>The deck; null when its attitude cannot be had.</summary>
    public DeckReading? Deck { get; }

    /// <summary>What is missing of the deck.</summary>
    public IReadOnlyList<Finding> Notes { get; }

    /// <summary>The complaint of a case; answers that contradict the rest of it are added to the errors.</summary>
    public static CaseComplaint Of(CaseFile file, ProtectionQuestion? question, List<CaseError> errors)
    {
        var notes = new List<Finding>();
        DeckReading? deck = CaseDeck.Of(file.Facts.Get(CaseFileMembers.Deck), notes);
        return new CaseComplaint(ComplaintOf(file, question, deck, errors), deck, notes);
    }

    /// <summary>True when no answer of a complaint can contradict the rest of its case, whatever that says.</summary>
    public static bool IsSure(CaseObject? told) => told is null || ComplaintMembers.FactsOf(told).All(f => !Exact.Contains(f.Question));

    private static Complaint ComplaintOf(CaseFile file, ProtectionQuestion? question, DeckReading? deck, List<CaseError> errors)
    {
        CaseObject? told = file.Facts.Get(CaseFileMembers.Complaint);
        Symptom symptom = told?.Get(ComplaintMembers.Symptom) ?? Symptom.NotKnown;
        Complaint complaint = ComplaintMembers.FactsOf(told).Aggregate(
            Complaint.Of(symptom).WithMachine(CaseQuestion.MachineOf(file)), (c, fact) => c.With(fact));
        foreach (Fact seen in SeenFacts.Of(file, question, deck))
        {
            // A bolt that is stated does not make a clutch's trouble the bolt's.
            if (seen.Question == "device" && Complaint.Of(symptom).AnswerTo("device") is { } implied && implied != seen.Answer)
            {
                continue;
            }

            Fact? stated = told is null ? null : ComplaintMembers.FactOf(told, seen.Question);
            if (stated is null || stated.Answer == Fact.NotKnown)
            {
                complaint = complaint.With(seen);
            }
            else if (Contradicts(stated, seen))
            {
                errors.Add(told!.Contradiction(
                    ComplaintMembers.Facts[seen.Question],
                    "The complaint says \"" + stated.Answer + "\", the rest of the case says \"" + seen.Answer
                        + "\"; state one of the two.",
                    seen.Answer,
                    stated.Answer));
            }
        }

        return complaint;
    }

    // A bolt without marks is unmarked and, against a marked grade, most likely softer: both are true of it.
    private static bool Contradicts(Fact stated, Fact seen) => !stated.Equals(seen) && Exact.Contains(seen.Question)
        && !(seen.Question == "gradeAgainstManual" && (stated.Answer == "unmarked" || seen.Answer == "unmarked"));
}
