using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Fasteners;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>identify: what a mark on a bolt head can mean.</summary>
internal static class IdentifyCommand
{
    private const int MostLines = 24;

    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var size = new Option<string>("--size") { Description = "The size or thread, e.g. \"1/2 in\", \"M10\".", Required = true };
        var lines = new Option<int>("--lines") { Description = "Number of radial lines on the head, 0 to 24; 0 when there is none." };
        var mark = new Option<string?>(
            "--text")
        { Description = "Letters or numbers on the head, without the maker's mark, e.g. \"8.8\"." };
        var spacing = new Option<LineSpacing>("--spacing") { Description = "How the lines are spaced." };
        var command = new Command(
            "identify", "Says what a bolt may be by the marks on its head, and how to settle it.") { size, lines, mark, spacing };
        command.SetAction(parsed =>
        {
            int count = parsed.GetValue(lines);
            if (count is < 0 or > MostLines)
            {
                throw new BadInputException(FormattableString.Invariant($"--lines must be from 0 to {MostLines}; got {count}."));
            }

            if (!ScrewThread.TryParse(parsed.GetRequiredValue(size), out ScrewThread? thread, out string? problem))
            {
                throw new BadInputException("--size: " + problem);
            }

            string? letters = parsed.GetValue(mark);
            HeadMark seen = HeadMark.RadialLines(count, parsed.GetValue(spacing));
            HeadMarkIdentification identified = (string.IsNullOrWhiteSpace(letters) ? seen : seen.WithText(letters)).Identify(thread!);
            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, IdentifyJson.Of(identified, shared.ResultOf(parsed)));
            }
            else
            {
                terminal.Report(IdentifyText.Of(identified, shared.ReportOf(parsed, string.Empty)), shared.LanguageOf(parsed));
            }

            return ExitCode.Answered;
        });
        return command;
    }
}
