using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Loads;

namespace Driveline.Cli;

/// <summary>How far a talk with an owner has come: the case with every answer, and what was passed over. Immutable.</summary>
internal sealed record InterviewState(CaseInterview Interview, IReadOnlyList<string> Passed)
{
    public const string Machine = "machine";
    public const string Symptom = "symptom";
    public const string Power = "power";
    public const string Manual = "manual";

    /// <summary>Whether to go on although a cause is known.</summary>
    public const string GoOn = "goOn";

    /// <summary>Passed when the owner wants to go on.</summary>
    public const string Further = "further";

    private const string Device = "device";

    /// <summary>What to ask next: one of the steps above, or the code of a question; null when nothing is left.</summary>
    public string? NextStep()
    {
        OwnerAdvice advice = Interview.Advice;
        if (advice.Machine == MachineKind.NotKnown && !Passed.Contains(Machine))
        {
            return Machine;
        }

        if (advice.Diagnosis.Complaint.Facts.All(f => f.Question != Device))
        {
            return Device;
        }

        if (Interview.NeedsSymptom)
        {
            return Symptom;
        }

        if (!Interview.File.IsStated("tractor") && !Passed.Contains(Power))
        {
            return Power;
        }

        if (Interview.Next is { } question)
        {
            return question.Code;
        }

        if (Interview.Further is { } further && !Passed.Contains(GoOn))
        {
            return Passed.Contains(Further) ? further.Code : GoOn;
        }

        return advice.Diagnosis.Complaint.Says(OwnerFacts.Device.ShearBolt) && !Interview.File.IsStated("specified")
            && !Passed.Contains(Manual) ? Manual : null;
    }

    public InterviewState Passing(string step) => this with { Passed = [.. Passed, step] };

    public InterviewState With(CaseFile file) => With(CaseInterview.From(file));

    public InterviewState With(CaseInterview interview) => this with { Interview = interview };

    /// <summary>True when the facts of the case do not contradict each other.</summary>
    public static bool IsConsistent(CaseFile file)
    {
        try
        {
            _ = CaseInterview.From(file);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
