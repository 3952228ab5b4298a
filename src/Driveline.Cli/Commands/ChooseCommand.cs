using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Cli.Pages;

namespace Driveline.Cli.Commands;

/// <summary>choose CASE: the bolts that fit, best first, and the settings that suit its slip clutches.</summary>
internal static class ChooseCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        Argument<string[]> paths = CaseArgument.Several(
            "A case file (*.case.json), or the name of a built-in case, or several; - reads standard input.", isNeeded: true);
        var pages = new PageOptions(shared);
        var quote = new QuoteOptions();
        var bolt = new Option<string?>(
            "--bolt")
        {
            Description = "Name of the shear bolt to choose for; the first from the tractor when left out.",
            HelpName = "NAME"
        };
        var command = new Command(
            "choose", "Ranks the bolts that fit by the worse of their two margins and finds the settings that suit a slip clutch, or "
                + "says what would help when there is none.") { paths, bolt };
        pages.AddTo(command);
        quote.AddTo(command);
        command.SetAction(parsed =>
        {
            var output = new PageOutput(pages, terminal, shared);
            IReadOnlyList<CaseInput> cases = output.Cases(parsed, parsed.GetRequiredValue(paths));
            StockFile? stock = quote.StockOf(parsed, terminal);
            BoltChoice[] choices = [.. cases.Select(c => ChoiceOf(c, parsed.GetValue(bolt), stock))];
            output.Put(parsed,
                [.. cases.Select((c, k) => stock is null
                    ? CaseReports.Choice(c, choices[k], c.Asked.Settings(), pages.Of(parsed, c.Title))
                    : CaseReports.Quote(c, choices[k], stock, quote.Of(parsed), pages.Of(parsed, c.Title)))]);
            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, ChoiceJson.Of(choices[0], cases[0].Asked.Settings(), shared.ResultOf(parsed, cases[0].File)));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static BoltChoice ChoiceOf(CaseInput input, string? name, StockFile? stock)
    {
        if (!input.Asked.HasAnyToChoose())
        {
            throw new BadInputException("The case '" + input.Name
                + "' has neither a shear bolt nor a slip clutch: add an element { \"shearBolt\": { … } } or { \"slipClutch\": { … } } "
                    + "to its driveline.");
        }

        string[] names = [.. input.Verdict.Question.Chain.Devices.OfType<Chains.ShearBoltDevice>().Select(d => d.Name)];
        if (name is not null && !names.Contains(name))
        {
            throw new BadInputException(
                "--bolt: there is no known shear bolt '" + name + "'; "
                    + (names.Length > 0 ? "there are: " + string.Join(", ", names) : "the case has none") + ".");
        }

        if (stock is null)
        {
            return name is null ? input.Asked.Choice() : input.Asked.Choice(input.Asked.Terms(name), CancellationToken.None);
        }

        ChoiceTerms terms = name is null ? input.Asked.Terms() : input.Asked.Terms(name);
        return input.Asked.Choice(terms.WithStock(stock.List), CancellationToken.None);
    }
}
