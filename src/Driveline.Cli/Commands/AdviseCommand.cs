using System.CommandLine;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>
/// advise CASE: from a complaint to causes, the next check, and remedies with their price in protection; --interview asks for the facts.
/// </summary>
internal static class AdviseCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var path = new Argument<string?>("CASE")
        {
            Description = "A case file (*.case.json) with a complaint, or the name of a built-in case; - reads standard input.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var interview = new Option<bool>(
            "--interview")
        { Description = "Ask one question after another first; without CASE, from the beginning." };
        var save = new Option<string?>(
            "--save")
        {
            Description = "File for the case with every answer so far; advise FILE --interview goes on from there.",
            HelpName = "FILE"
        };
        var command = new Command("advise",
            "Says why bolts keep breaking or why nothing gave, what to check next, what to change, and what that costs in protection.")
        {
            path, interview, save, shared.Out,
        };
        command.SetAction(parsed =>
        {
            string? from = parsed.GetValue(path);
            bool isInterview = parsed.GetValue(interview);
            Check(from, isInterview, parsed.GetValue(save));
            CaseInput input = InputOf(from, terminal);
            if (isInterview)
            {
                // The dialogue leaves standard output to the JSON.
                TextWriter dialogue = parsed.GetValue(shared.Json) ? terminal.Dialogue : terminal.Output;
                var session = new InterviewSession(terminal.Input, dialogue, shared.LanguageOf(parsed), parsed.GetValue(save));
                input = CaseInput.Of(input.Name, session.Run(input.File));
            }

            Print(input, parsed, terminal, shared);
            return ExitCode.Answered;
        });
        return command;
    }

    private static void Check(string? from, bool isInterview, string? save)
    {
        if (!isInterview && from is null)
        {
            throw new BadInputException("CASE is missing; without a case file, advise --interview asks for the facts.");
        }

        if (!isInterview && save is not null)
        {
            throw new BadInputException("--save keeps the answers of an interview; add --interview.");
        }

        if (isInterview && from == "-")
        {
            throw new BadInputException("--interview reads your answers from standard input; the case must be a file.");
        }
    }

    private static CaseInput InputOf(string? from, Terminal terminal) => from is null ? CaseInput.Of("interview", CaseFile.Empty)
        : from != "-" && !File.Exists(from) && EmbeddedCases.Names.Contains(from, StringComparer.OrdinalIgnoreCase) ? EmbeddedCases.Of(from)
        : CaseInput.Of(from, terminal);

    private static void Print(CaseInput input, ParseResult parsed, Terminal terminal, SharedOptions shared)
    {
        OwnerAdvice advice = input.Asked.Advice();
        ReportOptions options = shared.ReportOf(parsed, input.Title);
        if (parsed.GetValue(shared.Out) is { } folder)
        {
            OutFolder.WriteAdvice(folder, input, advice, options, terminal);
        }

        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, AdviceJson.Of(advice, shared.ResultOf(parsed, input.File)));
        }
        else
        {
            terminal.Output.Write(AdviceText.Of(advice, options));
        }
    }
}
