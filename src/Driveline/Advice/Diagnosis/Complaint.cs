using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What an owner complains of and what is known about it. The order of the facts has no meaning. Immutable.</summary>
public sealed class Complaint
{
    private Complaint(Symptom symptom, IReadOnlyList<Fact> facts, ModelEvidence model, MachineKind machine)
    {
        Machine = machine;
        Symptom = symptom;
        Facts = facts;
        Model = model;
    }

    /// <summary>The symptom.</summary>
    public Symptom Symptom { get; }

    /// <summary>The facts, in the order given.</summary>
    public IReadOnlyList<Fact> Facts { get; }

    /// <summary>The kind of machine: what it cannot have is neither asked for nor proposed.</summary>
    public MachineKind Machine { get; }

    /// <summary>What the model says; <see cref="ModelEvidence.None"/> when there is no model.</summary>
    internal ModelEvidence Model { get; }

    /// <summary>A symptom without facts yet.</summary>
    public static Complaint Of(Symptom symptom) => new(symptom, [], ModelEvidence.None, MachineKind.NotKnown);

    /// <summary>The same complaint with a fact more; the same fact again changes nothing.</summary>
    /// <exception cref="ArgumentException">
    /// The question is answered otherwise already, or question or answer is not in the catalogue.
    /// </exception>
    public Complaint With(string question, string answer) => With(Fact.Of(question, answer));

    /// <summary>The same complaint with a fact more; the same fact again changes nothing.</summary>
    /// <exception cref="ArgumentException">The question is answered otherwise already.</exception>
    public Complaint With(Fact fact)
    {
        Guard.NotNull(fact, nameof(fact));
        Fact? held = Facts.FirstOrDefault(f => f.Question == fact.Question);
        return held is null ? new Complaint(Symptom, [.. Facts, fact], Model, Machine)
            : held.Equals(fact) ? this
            : held.Answer == Fact.NotKnown ? new Complaint(
                Symptom, [.. Facts.Select(f => f.Question == fact.Question ? fact : f)], Model, Machine)
            : throw new ArgumentException(
                "'" + fact.Question + "' is answered with '" + held.Answer + "' already; got '" + fact.Answer + "'.", nameof(fact));
    }

    /// <summary>The same complaint with what the model says.</summary>
    internal Complaint WithModel(ModelEvidence model) => new(Symptom, Facts, Guard.NotNull(model, nameof(model)), Machine);

    /// <summary>The same complaint of a kind of machine.</summary>
    public Complaint WithMachine(MachineKind machine) => new(Symptom, Facts, Model, machine);

    /// <summary>True when the owner says so, or the complaint itself does, e.g. that a bolt that breaks is a shear bolt.</summary>
    public bool Says(Fact fact) => AnswerTo(Guard.NotNull(fact, nameof(fact)).Question) == fact.Answer;

    /// <summary>
    /// The answer to a question, or what the complaint itself says, e.g. that a bolt that breaks is a shear bolt; null when nobody knows.
    /// </summary>
    /// <exception cref="ArgumentException">The question is not in the catalogue.</exception>
    public string? AnswerTo(string question)
    {
        string code = FactQuestion.Get(question).Code;
        string? told = Facts.FirstOrDefault(f => f.Question == code && f.Answer != Fact.NotKnown)?.Answer;
        return told ?? LikelihoodTable.Held.Implied(Symptom).FirstOrDefault(f => f.Question == code)?.Answer;
    }
}
