using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>
/// An interview any host can drive: state in, next question out, answer in. Its whole state is a symptom and a list of facts.
/// </summary>
/// <remarks>
/// Immutable: each answer gives a new state, so that a host can save, go back or branch. Resuming asks on as if never stopped.
/// </remarks>
internal sealed class Interview
{
    private const string Device = "device";

    private Interview(Complaint complaint)
    {
        Complaint = complaint;
        Diagnosis = Diagnosis.Of(complaint);
    }

    /// <summary>The state: symptom, facts so far (those answered "notKnown" too), and the model.</summary>
    public Complaint Complaint { get; }

    /// <summary>The diagnosis from what is known so far.</summary>
    public Diagnosis Diagnosis { get; }

    /// <summary>The next question; null when the cause is known well enough or nothing would tell more.</summary>
    public FactQuestion? Next => Diagnosis.IsEnoughKnown ? null : Diagnosis.Next?.Question;

    /// <summary>True when there is no next question.</summary>
    public bool IsOver => Next is null;

    /// <summary>What an owner may complain of, by what is known to protect the driveline; all while that is not known.</summary>
    public static IReadOnlyList<Symptom> Symptoms(Complaint complaint)
    {
        string? told = complaint.Facts.FirstOrDefault(f => f.Question == Device && f.Answer != Fact.NotKnown)?.Answer;
        return
        [
            .. Enumerable.Range(1, AdviceCodes.Symptoms - 1).Select(k => (Symptom)k).Where(s => told is null
                || LikelihoodTable.Held.Implied(s).All(f => f.Question != Device || f.Answer == told)),
        ];
    }

    /// <summary>Starts with a symptom.</summary>
    public static Interview Start(Symptom symptom) => From(Complaint.Of(symptom));

    /// <summary>Starts or resumes with a complaint: its facts count as answered.</summary>
    public static Interview From(Complaint complaint) => new(Guard.NotNull(complaint, nameof(complaint)));

    /// <summary>Resumes from a saved symptom and its facts.</summary>
    public static Interview Resume(Symptom symptom, IEnumerable<Fact> facts) =>
        From(Guard.NotNull(facts, nameof(facts)).Aggregate(Complaint.Of(symptom), (complaint, fact) => complaint.With(fact)));

    /// <summary>The state after an answer to the next question; "notKnown" skips it.</summary>
    /// <exception cref="InvalidOperationException">There is no next question.</exception>
    /// <exception cref="ArgumentException">It is none of the possible answers.</exception>
    public Interview Answer(string answer) => Answer(
        Fact.Of((Next ?? throw new InvalidOperationException("The interview is over: there is no question to answer.")).Code, answer));

    /// <summary>The state after any fact the owner volunteers.</summary>
    public Interview Answer(Fact fact) => From(Complaint.With(fact));
}
