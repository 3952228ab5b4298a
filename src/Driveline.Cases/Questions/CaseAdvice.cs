using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>The advice on a case file's complaint: its answers, what the rest of the case says, and the model's numbers.</summary>
/// <remarks>
/// What the case states outside its complaint counts as answered. A stated answer that the rest of the case contradicts is refused
/// where both are exact; where one is a judgement, the stated answer is believed. The model's "fitted against specified" is left
/// out where grade or size are known as facts, so that one observation is not counted twice.
/// </remarks>
public sealed class CaseAdvice
{
    private static readonly HashSet<string> Exact = new(StringComparer.Ordinal)
    {
        "gradeAgainstManual", "boltSize", "planeThrough", "hubTurns", "engagementManner", "ptoClutch", "deckAttitude",
    };

    private CaseAdvice(OwnerAdvice? advice, IReadOnlyList<CaseError> errors, long simulationWork)
    {
        Advice = errors.Count == 0 ? advice : null;
        Errors = errors;
        SimulationWork = simulationWork;
    }

    /// <summary>Work of the simulations that the case asks for; 0 when it asks for none.</summary>
    public long SimulationWork { get; }

    /// <summary>The advice; null when the facts contradict each other.</summary>
    public OwnerAdvice? Advice { get; }

    /// <summary>Facts that contradict each other; empty when there is an advice.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>
    /// The advice on a case. A strike that the case describes is simulated, unless its complaint states the strike's peak.
    /// </summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    public static CaseAdvice Of(CaseFile file) => Of(file, SimulationLimits.Usual);

    /// <summary>The same; all that is simulated runs within limits together.</summary>
    /// <exception cref="ArgumentNullException">The case or the limits are missing.</exception>
    public static CaseAdvice Of(CaseFile file, SimulationLimits limits)
    {
        var meter = new WorkMeter(limits);
        CaseQuestion asked = CaseQuestion.Of(file, meter);
        var errors = new List<CaseError>(asked.Errors);
        var notes = new List<Finding>();
        DeckReading? deck = CaseDeck.Of(file.Facts.Get(CaseFileMembers.Deck), notes);
        ProtectionVerdict? verdict = asked.Question is { } question && file.Facts.Get(CaseFileMembers.Driveline).Count > 0
            ? ProtectionCheck.Run(question) : null;
        Complaint complaint = ComplaintOf(file, asked.Question, deck, errors);
        complaint = complaint.WithModel(
            Model(file, complaint, verdict, notes, () => asked.Strike ?? CaseSimulation.Of(file, SimulatedEvent.Strike, meter)));
        OwnerAdvice advice = OwnerAdvice.On(complaint, CaseQuestion.MachineOf(file));
        advice = deck is null ? advice : advice.WithDeck(deck);
        return new CaseAdvice(CaseCosts.AddTo(advice, file.Facts.Get(CaseFileMembers.Costs)).WithNotes(notes), errors, meter.Done);
    }

    private static Complaint ComplaintOf(CaseFile file, ProtectionQuestion? question, DeckReading? deck, List<CaseError> errors)
    {
        CaseObject? told = file.Facts.Get(CaseFileMembers.Complaint);
        Symptom symptom = told?.Get(ComplaintMembers.Symptom) ?? Symptom.NotKnown;
        Complaint complaint = ComplaintMembers.FactsOf(told).Aggregate(Complaint.Of(symptom), (c, fact) => c.With(fact));
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

    private static ModelEvidence Model(
        CaseFile file, Complaint complaint, ProtectionVerdict? verdict, List<Finding> notes, Func<CaseSimulation> strike)
    {
        TorqueBand? stated = file.Facts.Get(CaseFileMembers.Complaint)?.Get(ComplaintMembers.StrikePeak);
        bool isComparable = verdict?.Trip is { HasExpected: true };
        if (stated is not null && !isComparable)
        {
            notes.Add(Finding.Of(AdviceFindings.StrikeNotCompared, Severity.Note));
        }

        if (verdict is null)
        {
            return ModelEvidence.None;
        }

        ModelEvidence model = ModelEvidence.Of(verdict);
        if (stated is not null)
        {
            model = model.WithStrike(stated);
        }
        else if (file.Facts.Get(CaseFileMembers.Strike) is not null && strike().Check is { Without: not null } simulated)
        {
            model = model.WithStrike(simulated);
            isComparable = true;   // by itself, and only where it rests on facts
        }

        // That a blow was too soft is said of blows at which nothing gave; what the parts carried is said of all.
        bool gaveNothing = complaint.Symptom is Symptom.NothingGaveAtStrike or Symptom.ClutchNeverSlips;
        model = isComparable && gaveNothing ? model : model.Without(ModelEvidence.StrikeAgainstTrip);
        bool isKnownAsFact = complaint.AnswerTo("gradeAgainstManual") is not null || complaint.AnswerTo("boltSize") is not null;
        return isKnownAsFact ? model.Without(ModelEvidence.FittedAgainstSpecified) : model;
    }

    // A bolt without marks is unmarked and, against a marked grade, most likely softer: both are true of it.
    private static bool Contradicts(Fact stated, Fact seen) => !stated.Equals(seen) && Exact.Contains(seen.Question)
        && !(seen.Question == "gradeAgainstManual" && (stated.Answer == "unmarked" || seen.Answer == "unmarked"));
}
