using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Fasteners;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>strength: what a bolt of a grade carries.</summary>
internal static class StrengthCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var thread = new Option<string>("--thread") { Description = "The thread, e.g. \"1/2-13 UNC\", \"M10\".", Required = true };
        var grade = new Option<string>("--grade") { Description = "The grade, e.g. \"SAE 5\", \"8.8\".", Required = true };
        var command = new Command(
            "strength", "Says what a bolt carries: proof load, tensile load, shear load of one plane.") { thread, grade };
        command.SetAction(parsed =>
        {
            BoltStrength strength = StrengthOf(parsed.GetRequiredValue(thread), parsed.GetRequiredValue(grade));
            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, StrengthJson.Of(strength, shared.ResultOf(parsed)));
            }
            else
            {
                terminal.Report(StrengthText.Of(strength, shared.ReportOf(parsed, string.Empty)), shared.LanguageOf(parsed));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static BoltStrength StrengthOf(string threadText, string gradeText)
    {
        var problems = new List<string>();
        if (!ScrewThread.TryParse(threadText, out ScrewThread? thread, out string? threadProblem))
        {
            problems.Add("--thread: " + threadProblem);
        }

        if (!MaterialName.TryParse(gradeText, out MaterialName? material, out string? gradeProblem))
        {
            problems.Add("--grade: " + gradeProblem);
        }
        else if (material!.Grade is null)
        {
            problems.Add("--grade: \"" + material + "\" is no bolt grade, so nothing assures what such a bolt carries; held: "
                + string.Join(", ", BoltGrade.All.Select(g => g.Designation)) + ".");
        }

        if (problems.Count > 0)
        {
            throw new BadInputException(problems);
        }

        return BoltStrength.TryOf(material!.Grade!, thread!, out BoltStrength? strength)
            ? strength!
            : throw new BadInputException("--grade: " + material.ProblemAt(thread!));
    }
}
