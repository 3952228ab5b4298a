using System.CommandLine;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Cli.Pages;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>
/// advise CASE: from a complaint to causes, the next check, and remedies with their price in protection; --interview asks for the facts.
/// </summary>
internal static class AdviseCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        Argument<string[]> paths = CaseArgument.Several(
            "A case file (*.case.json) with a complaint, or the name of a built-in case, or several; - reads standard input.",
            isNeeded: false);
        var pages = new PageOptions(shared);
        var interview = new Option<bool>(
            "--interview")
        { Description = "Ask one question after another first; without CASE, from the beginning." };
        var save = new Option<string?>(
            "--save")
        {
            Description = "File for the case with every answer so far; advise FILE --interview goes on from there.",
            HelpName = "FILE"
        };
        var questions = new Option<bool>("--questions")
        {
            Description = "Print one sheet of all open questions, with the photographs to ask for, to send to the owner.",
        };
        var command = new Command("advise",
            "Says why bolts keep breaking or why nothing gave, what to check next, what to change, and what that costs in protection.")
        {
            paths, interview, save, questions,
        };
        pages.AddTo(command);
        command.SetAction(parsed =>
        {
            string[] from = parsed.GetValue(paths) ?? [];
            bool isInterview = parsed.GetValue(interview);
            Check(from, isInterview, parsed.GetValue(save));
            CheckSeveral(from, isInterview || parsed.GetValue(shared.Json));
            List<CaseInput> cases = [.. from.DefaultIfEmpty(null).Select(f => InputOf(f, terminal))];
            if (isInterview)
            {
                // The dialogue leaves standard output to the JSON.
                TextWriter dialogue = parsed.GetValue(shared.Json) ? terminal.Dialogue : terminal.Output;
                var talk = new InterviewDialogue(terminal.Input, dialogue, shared.LanguageOf(parsed), terminal.Columns);
                cases = [CaseInput.Of(cases[0].Name, new InterviewSession(talk, parsed.GetValue(save)).Run(cases[0].File))];
            }

            if (parsed.GetValue(questions))
            {
                terminal.Report(
                    string.Join("\n", cases.Select(c => QuestionsText.Of(c.Asked.Advice(), shared.ReportOf(parsed, c.Title)))),
                    shared.LanguageOf(parsed));
                return ExitCode.Answered;
            }

            Print(cases, parsed, terminal, shared, pages);
            return ExitCode.Answered;
        });
        return command;
    }

    private static void CheckSeveral(string[] from, bool isOneAnswer)
    {
        if (from.Length > 1 && isOneAnswer)
        {
            throw new BadInputException("--interview and --json take one case at a time; several were given.");
        }
    }

    private static void Check(string[] from, bool isInterview, string? save)
    {
        if (!isInterview && from.Length == 0)
        {
            throw new BadInputException("CASE is missing; without a case file, advise --interview asks for the facts.");
        }

        if (!isInterview && save is not null)
        {
            throw new BadInputException("--save keeps the answers of an interview; add --interview.");
        }

        if (isInterview && from.Contains("-"))
        {
            throw new BadInputException("--interview reads your answers from standard input; the case must be a file.");
        }
    }

    private static CaseInput InputOf(string? from, Terminal terminal) =>
        from is null ? CaseInput.Of("interview", CaseFile.Empty) : CaseInput.Of(from, terminal);

    private static void Print(
        List<CaseInput> cases, ParseResult parsed, Terminal terminal, SharedOptions shared, PageOptions pages)
    {
        OwnerAdvice[] advices = [.. cases.Select(c => c.Asked.Advice())];
        new PageOutput(pages, terminal, shared).Put(
            parsed, [.. cases.Select((c, k) => CaseReports.Advice(c, advices[k], pages.Of(parsed, c.Title)))]);
        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, AdviceJson.Of(advices[0], shared.ResultOf(parsed, cases[0].File)));
        }
    }
}
