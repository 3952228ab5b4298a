using System.Text.Json;
using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>
/// An interview whose whole state is a case file: state in, next question out, answer in. Saved and read again, it asks on as if never
/// stopped.
/// </summary>
/// <remarks>Immutable. What the case states outside its complaint is not asked. First of all the symptom is wanted.</remarks>
public sealed class CaseInterview
{
    private readonly Func<CaseFile, CaseAdvice> advise;
    private IReadOnlyList<Symptom>? symptoms;

    private CaseInterview(CaseFile file, OwnerAdvice advice, Func<CaseFile, CaseAdvice> advise)
    {
        File = file;
        Advice = advice;
        this.advise = advise;
    }

    /// <summary>The state: the case with every answer so far.</summary>
    public CaseFile File { get; }

    /// <summary>The advice from what is known so far.</summary>
    public OwnerAdvice Advice { get; }

    /// <summary>True as long as nobody has said what is wrong; then <see cref="Complain"/> comes first.</summary>
    public bool NeedsSymptom => File.Facts.Get(CaseFileMembers.Complaint)?.Get(ComplaintMembers.Symptom) is null or Symptom.NotKnown;

    /// <summary>What an owner may complain of: of a shear bolt nothing that only a clutch has, and the other way round.</summary>
    public IReadOnlyList<Symptom> Symptoms => symptoms ??= Interview.Symptoms(Advice.Diagnosis.Complaint);

    /// <summary>
    /// The next question; null while the symptom is wanted, and when the cause is known well enough or nothing would tell more.
    /// </summary>
    public FactQuestion? Next => NeedsSymptom ? null : Interview.From(Advice.Diagnosis.Complaint).Next;

    /// <summary>The next question even when the cause is known well enough; null when nothing would tell more.</summary>
    public FactQuestion? Further => NeedsSymptom ? null : Advice.Diagnosis.Next?.Question;

    /// <summary>Starts or resumes with a case.</summary>
    /// <exception cref="ArgumentException">The facts of the case contradict each other; the message lists how.</exception>
    public static CaseInterview From(CaseFile file) => From(file, CaseAdvice.Of);

    internal static CaseInterview From(CaseFile file, Func<CaseFile, CaseAdvice> advise)
    {
        CaseAdvice advice = advise(Guard.NotNull(file, nameof(file)));
        return advice.Advice is { } good
            ? new CaseInterview(file, good, advise)
            : throw new ArgumentException("The facts of the case contradict each other: " + string.Join(" ", advice.Errors), nameof(file));
    }

    /// <summary>The state after the owner has said what is wrong.</summary>
    public CaseInterview Complain(Symptom symptom) =>
        With(ComplaintMembers.Symptom, symptom == Symptom.NotKnown ? null : ComplaintMembers.Symptom.NameOf(symptom));

    /// <summary>The state after an answer to the next question; "notKnown" skips it.</summary>
    /// <exception cref="InvalidOperationException">There is no next question.</exception>
    /// <exception cref="ArgumentException">It is none of the possible answers.</exception>
    public CaseInterview Answer(string answer) => Answer(
        Fact.Of((Next ?? throw new InvalidOperationException("There is no question to answer now.")).Code, answer));

    /// <summary>The state after any fact the owner volunteers; an answer given before is replaced.</summary>
    /// <exception cref="ArgumentException">The rest of the case contradicts it.</exception>
    public CaseInterview Answer(Fact fact) => With(ComplaintMembers.Facts[Guard.NotNull(fact, nameof(fact)).Question], fact.Answer);

    private CaseInterview With(Member member, string? name)
    {
        CaseReadResult read = File.With(
            CaseFileMembers.Complaint.Name + "." + member.Name, name is null ? null : "\"" + JsonEncodedText.Encode(name) + "\"");
        return From(read.Case
            ?? throw new ArgumentException("The facts of the case contradict each other: " + string.Join(" ", read.Errors), nameof(name)),
            advise);
    }
}
