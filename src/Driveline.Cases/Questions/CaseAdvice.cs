using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>The advice on a case file's complaint: its answers, what the rest of the case says, and the model's numbers.</summary>
/// <remarks>
/// The model's "fitted against specified" is left
/// out where grade or size are known as facts, so that one observation is not counted twice.
/// </remarks>
internal sealed class CaseAdvice
{
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
    public static CaseAdvice Of(CaseFile file, SimulationLimits limits) => Of(file, new WorkMeter(limits));

    internal static CaseAdvice Of(CaseFile file, WorkMeter meter)
    {
        MappedCase mapped = MappedCase.Of(file);
        CaseQuestion asked = CaseQuestion.Of(mapped, meter);
        return Of(mapped, asked, asked.Question is { } question ? ProtectionCheck.Run(question) : null, meter);
    }

    /// <summary>The advice on a case whose question was asked and answered.</summary>
    public static CaseAdvice Of(MappedCase mapped, CaseQuestion asked, ProtectionVerdict? verdict, WorkMeter meter)
    {
        CaseFile file = mapped.File;
        if (asked.Question is null)
        {
            return new CaseAdvice(null, mapped.Errors, meter.Done);
        }

        var errors = new List<CaseError>(asked.Errors);
        CaseComplaint told = mapped.Complaint ?? CaseComplaint.Of(file, asked.Question, errors);
        var notes = new List<Finding>(told.Notes);
        verdict = file.Facts.Get(CaseFileMembers.Driveline).Count > 0 ? verdict : null;
        Complaint complaint = told.Complaint.WithModel(Model(
            file, told.Complaint, verdict, notes, () => asked.Strike ?? CaseSimulation.Of(mapped, SimulatedEvent.Strike, meter)));
        OwnerAdvice advice = OwnerAdvice.On(complaint, CaseQuestion.MachineOf(file));
        advice = told.Deck is { } deck ? advice.WithDeck(deck) : advice;
        advice = CaseLetter.AddTo(advice, file);
        advice = CaseCosts.AddTo(advice, file.Facts.Get(CaseFileMembers.Costs)).WithNotes(notes);
        return new CaseAdvice(advice, errors.AsReadOnly(), meter.Done);
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
}
