using System.CommandLine;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Chains;
using Driveline.Cli.Pages;
using Driveline.Clutches;
using UnitsNet;

namespace Driveline.Cli.Commands;

/// <summary>clutch CASE: what the slip clutch of a case does, and how to set it.</summary>
internal static class ClutchCommand
{
    private static readonly Dictionary<string, IReadOnlyList<ServiceProcedure>> Procedures = new(StringComparer.Ordinal)
    {
        ["run-in"] = [ServiceProcedure.RunIn],
        ["yearly"] = [ServiceProcedure.YearlyCheck],
        ["slip-test"] = [ServiceProcedure.ScribeLineTest],
        ["lever"] = [ServiceProcedure.LeverSetting],
        ["wear"] = [ServiceProcedure.WearLimits],
        ["after-slip"] = [ServiceProcedure.AfterSlip],
        ["storage"] = [ServiceProcedure.Storage],
        ["all"] = ServiceProcedure.All,
        ["none"] = [],
    };

    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        Argument<string[]> paths = CaseArgument.Several(
            "A case file (*.case.json) with a slip clutch, or the name of a built-in case, or several; - reads standard input.",
            isNeeded: true);
        var pages = new PageOptions(shared);
        var set = new Option<string?>(
            "--set")
        {
            Description = "The slip torque wanted while it slips, e.g. \"650 N.m\": how to set the springs for it.",
            HelpName = "TORQUE"
        };
        var name = new Option<string?>(
            "--name")
        { Description = "The clutch of that name, when the case has several; without it the first.", HelpName = "NAME" };
        var steps = new Option<string?>("--steps")
        {
            Description = "Service steps to show: one of " + string.Join(", ", Procedures.Keys)
            + "; without it those that its state calls for."
        };
        steps.AcceptOnlyFromAmong([.. Procedures.Keys]);
        var command = new Command(
            "clutch", "Says at what torque a slip clutch slips, whether it may be trusted to, how hot it gets, and how to set it.")
        {
            paths, set, name, steps,
        };
        pages.AddTo(command);
        command.SetAction(parsed =>
        {
            Torque? wanted = parsed.GetValue(set) is { } text ? TorqueOption.Parse("--set", text) : null;
            var output = new PageOutput(pages, terminal, shared);
            IReadOnlyList<CaseInput> cases = output.Cases(parsed, parsed.GetRequiredValue(paths));
            ClutchReview[] reviews = [.. cases.Select(c => ReviewOf(ClutchOf(c, parsed.GetValue(name)), wanted)
                .WithFirstCautions(CaseClutch.CautionsOfMachine(c.File)))];
            IReadOnlyList<ServiceProcedure> StepsOf(ClutchReview review) =>
                parsed.GetValue(steps) is { } chosen ? Procedures[chosen] : review.Procedures;
            output.Put(parsed,
                [.. cases.Select((c, k) => CaseReports.Clutch(c, reviews[k], StepsOf(reviews[k]), pages.Of(parsed, c.Title)))]);
            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, ClutchJson.Of(reviews[0], StepsOf(reviews[0]), shared.ResultOf(parsed, cases[0].File)));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static CaseClutch ClutchOf(CaseInput input, string? name)
    {
        IReadOnlyList<CaseClutch> clutches = input.Asked.Clutches();
        if (clutches.Count == 0)
        {
            throw new BadInputException(
                "The case '" + input.Name + "' has no slip clutch: add an element { \"slipClutch\": { … } } to its driveline.");
        }

        return name is null ? clutches[0]
            : clutches.FirstOrDefault(c => string.Equals(c.Device.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? throw new BadInputException(
                "There is no slip clutch '" + name + "'; there are: " + string.Join(", ", clutches.Select(c => c.Device.Name)) + ".");
    }

    private static ClutchReview ReviewOf(CaseClutch clutch, Torque? wanted) => wanted is not { } torque ? clutch.Review()
        : clutch.Clutch is null
            ? throw new BadInputException(
                "--set needs outerDiameter, innerDiameter, faces and springs of '" + clutch.Device.Name + "'; state them in the case.")
            : clutch.ReviewSetTo(torque);
}
