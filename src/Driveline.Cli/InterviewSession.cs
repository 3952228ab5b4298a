using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Findings;
using Driveline.Loads;

namespace Driveline.Cli;

/// <summary>
/// Talks with an owner at a terminal: machine, protection and trouble first, then one question after another, last what the manual names.
/// After each answer the case so far is saved, so that nothing told is lost; b takes back an answer.
/// </summary>
internal sealed class InterviewSession(InterviewDialogue dialogue, string? save)
{
    private readonly Stack<InterviewState> before = new();
    private readonly HashSet<string> cautioned = new(StringComparer.Ordinal);
    private Cause said = Cause.NotKnown;

    /// <summary>
    /// Runs from a case until nothing is left to ask or the owner stops; once a cause is known it goes on only if wanted. Gives the case
    /// with every answer.
    /// </summary>
    /// <exception cref="BadInputException">The case so far cannot be saved.</exception>
    public CaseFile Run(CaseFile file)
    {
        CaseFile titled = file.Title is null
            ? file.With("title", JsonText.Quoted(dialogue.Texts.Of("interview.title"))).Case ?? file : file;
        var state = new InterviewState(CaseInterview.From(titled), []);
        Save(state);
        dialogue.Say("interview.how");
        while (!dialogue.IsStopped && state.NextStep() is { } step)
        {
            dialogue.Line();
            InterviewState asked = state;
            dialogue.Told = () => Told(asked);
            InterviewState? next = Ask(step, state);
            if (dialogue.TakesBack())
            {
                state = before.Count > 0 ? before.Pop() : state;
                Save(state);
            }
            else if (next is not null)
            {
                before.Push(state);
                state = next;
                Save(state);
            }
        }

        dialogue.Say(dialogue.IsStopped ? "interview.stopped"
            : state.Interview.Advice.Diagnosis.IsEnoughKnown ? "interview.known" : "interview.nothingMore");
        dialogue.Line();
        return state.Interview.File;
    }

    private InterviewState? Ask(string step, InterviewState state)
    {
        switch (step)
        {
            case InterviewState.Machine:
                return AskMachine(state);
            case InterviewState.Symptom:
                return AskSymptom(state);
            case InterviewState.Power:
                return Written(step, state, line => state.Interview.File.With("tractor.ptoPower", JsonText.Quoted(line)));
            case InterviewState.Manual:
                return Written(step, state, line => Specified(state.Interview.File, line));
            case InterviewState.GoOn:
                dialogue.Say("interview.goOn");
                return dialogue.YesOrNo() is { } isWanted ? state.Passing(isWanted ? InterviewState.Further : InterviewState.GoOn) : null;
            default:
                return AskFact(FactQuestion.Get(step), state);
        }
    }

    private InterviewState? AskMachine(InterviewState state)
    {
        MachineKind[] kinds = [.. Enum.GetValues<MachineKind>().Where(k => k != MachineKind.NotKnown)];
        dialogue.Say("interview.machine");
        string[] names = [.. kinds.Select(JsonText.Camel)];
        return dialogue.Choice([.. names.Select(n => dialogue.Texts.Of("machine." + n))], names, orNotKnown: true) is not { } chosen ? null
            : chosen == 0 ? state.Passing(InterviewState.Machine)
            : state.With(state.Interview.File.With("implement.kind", JsonText.Quoted(names[chosen - 1])).Case!);
    }

    private InterviewState? AskSymptom(InterviewState state)
    {
        Symptom[] symptoms = [.. state.Interview.Symptoms];
        dialogue.Say("interview.symptom");
        return dialogue.Choice(
            [.. symptoms.Select(s => dialogue.Texts.Of(AdviceCodes.Of(s)))], [.. symptoms.Select(JsonText.Camel)], orNotKnown: false)
            is { } chosen ? state.With(state.Interview.Complain(symptoms[chosen - 1])) : null;
    }

    private InterviewState? AskFact(FactQuestion question, InterviewState state)
    {
        SayLikeliest(state.Interview.Advice.Diagnosis);
        SayCautions(question);
        dialogue.Say(question.TextCode);
        return dialogue.Choice(
            [.. question.Answers.Select(a => dialogue.Texts.Of(Fact.Of(question.Code, a).Code))], question.Answers, orNotKnown: true)
            is not { } number ? null
            : state.With(state.Interview.Answer(Fact.Of(question.Code, number == 0 ? Fact.NotKnown : question.Answers[number - 1])));
    }

    // An empty line leaves it out.
    private InterviewState? Written(string step, InterviewState state, Func<string, CaseReadResult> read)
    {
        dialogue.Say("interview." + step);
        while (dialogue.Written() is { } line)
        {
            if (line.Length == 0)
            {
                return state.Passing(step);
            }

            CaseReadResult result = read(line);
            if (result.Case is { } good && InterviewState.IsConsistent(good))
            {
                return state.With(good);
            }

            dialogue.SayText(result.Errors.Count > 0 ? result.Errors[0].Message : dialogue.Texts.Of("interview.contradicts"));
        }

        return null;
    }

    // "3/8-16 UNC, SAE 5": thread and grade.
    private static CaseReadResult Specified(CaseFile file, string line)
    {
        int comma = line.LastIndexOf(',');
        CaseReadResult thread = file.With("specified.shearBolt.thread", JsonText.Quoted((comma < 0 ? line : line[..comma]).Trim()));
        return comma < 0 || thread.Case is null ? thread
            : thread.Case.With("specified.shearBolt.grade", JsonText.Quoted(line[(comma + 1)..].Trim()));
    }

    private IEnumerable<string> Told(InterviewState state)
    {
        Complaint complaint = state.Interview.Advice.Diagnosis.Complaint;
        IEnumerable<string> symptom = complaint.Symptom == Symptom.NotKnown ? [] : [AdviceCodes.Of(complaint.Symptom)];
        MachineKind kind = state.Interview.Advice.Machine;
        IEnumerable<string> machine = kind == MachineKind.NotKnown ? [] : ["machine." + JsonText.Camel(kind)];
        IEnumerable<string> facts = complaint.Facts.Where(f => f.Answer != Fact.NotKnown).Select(f => f.Code);
        return machine.Concat(symptom).Concat(facts).Select(dialogue.Texts.Of);
    }

    private void SayLikeliest(Diagnosis diagnosis)
    {
        Cause likeliest = diagnosis.Causes[0].Cause;
        if (likeliest != said && likeliest != Cause.NotKnown)
        {
            said = likeliest;
            dialogue.SayText(dialogue.Texts.Of(Finding.Of("interview.soFar", Severity.Note)
                .With("text", dialogue.Texts.Of(AdviceCodes.Of(likeliest)))));
        }
    }

    // Each caution once; after that a word that they hold as before.
    private void SayCautions(FactQuestion question)
    {
        Caution[] news = [.. question.Cautions.Where(c => cautioned.Add(c.Code))];
        foreach (Caution caution in news)
        {
            dialogue.SayText("! " + dialogue.Texts.Of(caution.Code));
        }

        if (news.Length < question.Cautions.Count)
        {
            dialogue.Say("interview.asBefore." + question.Place);
        }
    }

    private void Save(InterviewState state)
    {
        if (save is not null)
        {
            OutFolder.WriteFile(save, CaseWriter.ToJson(state.Interview.File) + "\n", "--save");
        }
    }
}
