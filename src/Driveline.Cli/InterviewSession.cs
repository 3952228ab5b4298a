using System.Globalization;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Wording;

namespace Driveline.Cli;

/// <summary>
/// Asks an owner one question after another at a terminal. After each answer the case so far is saved, so that nothing told is lost.
/// </summary>
internal sealed class InterviewSession(TextReader input, TextWriter output, Language language, string? save)
{
    private const int Columns = 78;
    private readonly Texts texts = Texts.In(language);
    private bool isStopped;

    /// <summary>
    /// Runs from a case until the cause is known, nothing is left to ask, or the owner stops. Gives the case with every answer.
    /// </summary>
    /// <exception cref="BadInputException">The case so far cannot be saved.</exception>
    public CaseFile Run(CaseFile file)
    {
        CaseInterview interview = CaseInterview.From(file);
        Save(interview.File);
        Say(texts.Of("interview.how"));
        while (!isStopped && (interview.NeedsSymptom || interview.Next is not null))
        {
            if (Ask(interview) is { } next)
            {
                interview = next;
                Save(interview.File);
            }
        }

        Say(texts.Of(
            isStopped ? "interview.stopped" : interview.Advice.Diagnosis.IsEnoughKnown ? "interview.known" : "interview.nothingMore"));
        output.WriteLine();
        return interview.File;
    }

    private CaseInterview? Ask(CaseInterview interview)
    {
        output.WriteLine();
        if (interview.NeedsSymptom)
        {
            Symptom[] symptoms = [.. Enum.GetValues<Symptom>().Where(s => s != Symptom.NotKnown)];
            Say(texts.Of("interview.symptom"));
            List([.. symptoms.Select(s => texts.Of(AdviceCodes.Of(s)))], orNotKnown: false);
            return Choice(1, symptoms.Length) is { } chosen ? interview.Complain(symptoms[chosen - 1]) : null;
        }

        FactQuestion question = interview.Next!;
        SayLikeliest(interview.Advice.Diagnosis);
        foreach (Caution caution in question.Cautions)
        {
            Say("! " + texts.Of(caution.Code));
        }

        Say(texts.Of(question.TextCode));
        List([.. question.Answers.Select(a => texts.Of(Fact.Of(question.Code, a).Code))], orNotKnown: true);
        return Choice(0, question.Answers.Count) is { } number
            ? interview.Answer(number == 0 ? Fact.NotKnown : question.Answers[number - 1]) : null;
    }

    private void SayLikeliest(Diagnosis diagnosis)
    {
        if (diagnosis.Causes[0].Cause != Cause.NotKnown)
        {
            Say(texts.Of(Finding.Of("interview.soFar", Severity.Note)
                .With("probability", QuantityKind.Probability, diagnosis.Causes[0].Probability.Value)
                .With("text", texts.Of(AdviceCodes.Of(diagnosis.Causes[0].Cause)))));
        }
    }

    private void List(IReadOnlyList<string> answers, bool orNotKnown)
    {
        for (int k = 0; k < answers.Count; k++)
        {
            Item(k + 1, answers[k]);
        }

        if (orNotKnown)
        {
            Item(0, texts.Of("interview.notKnown"));
        }
    }

    // The end of the input stops the interview as q does.
    private int? Choice(int least, int most)
    {
        while (true)
        {
            output.Write("> ");
            output.Flush();
            string? line = input.ReadLine()?.Trim();
            if (line is null || string.Equals(line, "q", StringComparison.OrdinalIgnoreCase))
            {
                isStopped = true;
                return null;
            }

            if (int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most)
            {
                return number;
            }

            Say(texts.Of(Finding.Of("interview.notAnAnswer", Severity.Note)
                .With("text", CleanText.Name(line))
                .With("least", QuantityKind.Count, least)
                .With("most", QuantityKind.Count, most)));
        }
    }

    private void Save(CaseFile file)
    {
        if (save is not null)
        {
            OutFolder.WriteFile(save, CaseWriter.ToJson(file) + "\n", "--save");
        }
    }

    private void Item(int number, string text) => Say(text, FormattableString.Invariant($"{number,4}. "));

    private void Say(string text) => Say(text, string.Empty);

    private void Say(string text, string first)
    {
        string indent = first;
        foreach (string line in WrappedText.Lines(text, Columns - first.Length))
        {
            output.WriteLine(indent + line);
            indent = new string(' ', first.Length);
        }
    }
}
