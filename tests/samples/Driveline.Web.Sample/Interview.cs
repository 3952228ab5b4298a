using System.Text.Json;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;

namespace Driveline.Web.Sample;

/// <summary>
/// A talk with an owner whose whole state is the list of his answers: it fits in an address, so that going back, reloading and keeping it
/// work as on any page, and the host keeps nothing.
/// </summary>
internal sealed class Interview
{
    public const string Machine = "machine";
    public const string Symptom = "symptom";
    public const string Power = "power";
    public const string Manual = "manual";
    public const string GoOn = "goOn";
    public const string NotKnown = "notKnown";
    public const string Yes = "yes";
    private const string Device = "device";
    private const int MostAnswers = 80;
    private const int MostCharacters = 6000;

    private Interview(CaseInterview state, IReadOnlyList<(string Step, string Answer)> told)
    {
        State = state;
        Told = told;
    }

    public static Interview Start { get; } = new(CaseInterview.From(CaseFile.Empty), []);

    public CaseInterview State { get; }

    public IReadOnlyList<(string Step, string Answer)> Told { get; }

    /// <summary>The step that comes next: one of those above or the code of a question; null when nothing is left to ask.</summary>
    public string? Next
    {
        get
        {
            Complaint complaint = State.Advice.Diagnosis.Complaint;
            return !Has(Machine) ? Machine
                : complaint.Facts.All(f => f.Question != Device) ? Device
                : State.NeedsSymptom ? Symptom
                : !Has(Power) ? Power
                : State.Next is { } question ? question.Code
                : State.Further is { } further && (!Has(GoOn) || Told.Contains((GoOn, Yes))) ? Has(GoOn) ? further.Code : GoOn
                : complaint.Says(Fact.Of(Device, "shearBolt")) && !Has(Manual) ? Manual : null;
        }
    }

    /// <summary>The talk as one line of text.</summary>
    public string Line => string.Join('~', Told.Select(t => t.Step + "=" + Uri.EscapeDataString(t.Answer)));

    public Interview Back => Read(string.Join('~', Told.SkipLast(1).Select(t => t.Step + "=" + Uri.EscapeDataString(t.Answer))), out _);

    /// <summary>The talk so far; what cannot be read or contradicts what went before ends it there and is told.</summary>
    public static Interview Read(string line, out string? wrong)
    {
        wrong = null;
        Interview talk = Start;
        if (line.Length > MostCharacters)
        {
            wrong = "The list of answers is too long.";
            return talk;
        }

        foreach (string told in line.Split('~', StringSplitOptions.RemoveEmptyEntries).Take(MostAnswers))
        {
            int at = told.IndexOf('=', StringComparison.Ordinal);
            if (at <= 0)
            {
                continue;
            }

            talk = talk.Answer(told[..at], Uri.UnescapeDataString(told[(at + 1)..]), out wrong);
            if (wrong is not null)
            {
                break;
            }
        }

        return talk;
    }

    public Interview Answer(string step, string answer, out string? wrong)
    {
        wrong = null;
        try
        {
            return new Interview(After(step, answer.Trim()), [.. Told, (step, answer.Trim())]);
        }
        catch (ArgumentException fault)
        {
            wrong = fault.Message;
            return this;
        }
    }

    private CaseInterview After(string step, string answer) => step switch
    {
        GoOn => State,
        Machine or Power or Manual when answer is "" or NotKnown => State,
        Machine => With("implement.kind", answer),
        Power => With("tractor.ptoPower", answer),
        Manual => Specified(answer),
        Symptom => State.Complain(Enum.TryParse(answer, true, out Symptom symptom) ? symptom : throw new ArgumentException(
            "\"" + answer + "\" is none of the symptoms.", nameof(answer))),
        _ => State.Answer(Fact.Of(step, answer)),
    };

    // "3/8-16 UNC, SAE 5": thread and grade.
    private CaseInterview Specified(string line)
    {
        int comma = line.LastIndexOf(',');
        CaseFile thread = Good(State.File.With("specified.shearBolt.thread", Quoted(comma < 0 ? line : line[..comma].Trim())));
        return CaseInterview.From(comma < 0 ? thread : Good(thread.With("specified.shearBolt.grade", Quoted(line[(comma + 1)..].Trim()))));
    }

    private CaseInterview With(string path, string value) => CaseInterview.From(Good(State.File.With(path, Quoted(value))));

    private bool Has(string step) => Told.Any(t => t.Step == step);

    private static CaseFile Good(CaseReadResult read) => read.IsRead ? read.Case : throw new ArgumentException(read.Errors[0].Message);

    private static string Quoted(string text) => "\"" + JsonEncodedText.Encode(text) + "\"";
}
