using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>choose CASE: the bolts that fit, best first, and the settings that suit its slip clutches.</summary>
internal static class ChooseCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.case.json); - reads standard input." };
        var bolt = new Option<string?>(
            "--bolt")
        {
            Description = "Name of the shear bolt to choose for; the first from the tractor when left out.",
            HelpName = "NAME"
        };
        var command = new Command(
            "choose", "Ranks the bolts that fit by the worse of their two margins and finds the settings that suit a slip clutch, or "
                + "says what would help when there is none.") { path, bolt };
        command.SetAction(parsed =>
        {
            CaseInput input = CaseInput.Of(parsed.GetRequiredValue(path), terminal);
            BoltChoice choice = ChoiceOf(input, parsed.GetValue(bolt));
            IReadOnlyList<ClutchChoice> settings = input.Asked.Settings();
            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, ChoiceJson.Of(choice, settings, shared.ResultOf(parsed, input.File)));
            }
            else
            {
                terminal.Output.Write(ChoiceText.Of(choice, settings, shared.ReportOf(parsed, input.Title)));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static BoltChoice ChoiceOf(CaseInput input, string? name)
    {
        if (!input.Asked.HasAnyToChoose())
        {
            throw new BadInputException("The case '" + input.Name
                + "' has neither a shear bolt nor a slip clutch: add an element { \"shearBolt\": { … } } or { \"slipClutch\": { … } } "
                    + "to its driveline.");
        }

        string[] names = [.. input.Verdict.Question.Chain.Devices.OfType<Chains.ShearBoltDevice>().Select(d => d.Name)];
        return name is null ? input.Asked.Choice()
            : names.Contains(name) ? input.Asked.Choice(input.Asked.Terms(name), CancellationToken.None)
            : throw new BadInputException(
                "--bolt: there is no known shear bolt '" + name + "'; "
                    + (names.Length > 0 ? "there are: " + string.Join(", ", names) : "the case has none") + ".");
    }
}
