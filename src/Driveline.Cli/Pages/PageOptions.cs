using System.CommandLine;
using Driveline.Reports;

namespace Driveline.Cli.Pages;

/// <summary>The options of commands that make reports: in which form, over what, and the head of a page.</summary>
internal sealed class PageOptions(SharedOptions shared)
{
    public const string Html = "html";
    public const string Markdown = "md";

    public Option<string?> Form { get; } = Formed();

    public Option<bool> Force { get; } = new("--force") { Description = "Write over files that are there." };

    public Option<string?> Dealer { get; } = Named("--dealer", "Who hands the page over.");

    public Option<string?> Customer { get; } = Named("--customer", "Whom the page is for.");

    public Option<string?> Machine { get; } = Named("--machine", "The machine, its model and number.");

    public Option<string?> Date { get; } = Named("--date", "The date as it shall be printed.");

    public Option<string?> Number { get; } = Named("--number", "The number of the job or quote.");

    /// <summary>Adds all of them, and --out, to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(shared.Out);
        command.Add(Form);
        command.Add(Force);
        command.Add(Dealer);
        command.Add(Customer);
        command.Add(Machine);
        command.Add(Date);
        command.Add(Number);
    }

    public ReportOptions Of(ParseResult parsed, string title) => shared.ReportOf(parsed, title).WithHead(ReportHead.Empty
        .WithDealer(parsed.GetValue(Dealer))
        .WithCustomer(parsed.GetValue(Customer))
        .WithMachine(parsed.GetValue(Machine))
        .WithDate(parsed.GetValue(Date))
        .WithNumber(parsed.GetValue(Number)));

    private static Option<string?> Formed()
    {
        var form = new Option<string?>("--report")
        {
            Description = "Form of the report: html, md or text. With --out it is written there, else printed.",
        };
        form.AcceptOnlyFromAmong(Html, Markdown, "text");
        return form;
    }

    private static Option<string?> Named(string name, string description) =>
        new(name) { Description = description, HelpName = "TEXT" };
}
