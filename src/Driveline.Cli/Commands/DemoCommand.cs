using System.CommandLine;
using System.Text.Json;
using Driveline.Cases.Results;
using Driveline.Cli.Pages;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Cli.Commands;

/// <summary>demo: the built-in cases, as an overview and in full.</summary>
internal static class DemoCommand
{
    private static readonly string[] Heads = ["overview.case", "overview.verdict", "overview.guards", "overview.quiet"];

    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var name = new Argument<string?>(
            "NAME")
        { Description = "One of the built-in cases; without it, all of them.", Arity = ArgumentArity.ZeroOrOne };
        var list = new Option<bool>("--list") { Description = "Only list the names of the built-in cases." };
        var pages = new PageOptions(shared);
        var command = new Command("demo", "Shows the built-in cases: an overview and the first in full, or the one named.")
        {
            name, list,
        };
        pages.AddTo(command);
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(name) is { } one)
            {
                AssessCommand.Print([EmbeddedCases.Of(one)], parsed, terminal, shared, pages);
            }
            else if (parsed.GetValue(list))
            {
                List(parsed.GetValue(shared.Json), terminal);
            }
            else
            {
                All(parsed, terminal, shared, pages);
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static void List(bool asJson, Terminal terminal)
    {
        if (!asJson)
        {
            foreach (string name in EmbeddedCases.Names)
            {
                terminal.Output.WriteLine(name);
            }

            return;
        }

        JsonText.Print(terminal, stream =>
        {
            using var json = new Utf8JsonWriter(stream, JsonText.Options);
            json.WriteStartArray();
            foreach (string name in EmbeddedCases.Names)
            {
                json.WriteStringValue(name);
            }

            json.WriteEndArray();
        });
    }

    private static void All(ParseResult parsed, Terminal terminal, SharedOptions shared, PageOptions pages)
    {
        List<CaseInput> cases = [.. EmbeddedCases.Names.Select(EmbeddedCases.Of)];
        if (cases.Count == 0)
        {
            throw new InvalidOperationException("No demo case is built in.");
        }

        if (parsed.GetValue(shared.Out) is { } folder)
        {
            new PageOutput(pages, terminal, shared).Write(
                parsed, [.. cases.Select(c => CaseReports.Verdict(c, pages.Of(parsed, c.Title)))], parsed.GetValue(pages.Form), folder);
        }

        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, stream => Write(cases, stream, shared.ResultOf(parsed)));
            return;
        }

        Texts texts = Texts.In(shared.LanguageOf(parsed));
        terminal.Table(
            [.. Heads.Select(texts.Of)],
            cases.Select(c => (IReadOnlyList<string>)
            [
                c.Name, texts.Of("overview.verdict." + c.Verdict.Headline),
                texts.Of("answer." + c.Verdict.Guards), texts.Of("answer." + c.Verdict.Quiet),
            ]));
        terminal.Output.WriteLine();
        terminal.Report(VerdictText.Of(cases[0].Verdict, shared.ReportOf(parsed, cases[0].Title)), shared.LanguageOf(parsed));
        terminal.Output.WriteLine(texts.Of("overview.more"));
    }

    private static void Write(List<CaseInput> cases, Stream stream, ResultOptions options)
    {
        using var json = new Utf8JsonWriter(stream, JsonText.Options);
        json.WriteStartObject();
        json.WriteStartArray("cases");
        foreach (CaseInput input in cases)
        {
            json.WriteStartObject();
            json.WriteString("case", input.Name);
            json.WriteString("title", input.Title);
            json.WritePropertyName("result");
            VerdictJson.Of(input.Verdict, options.WithCase(input.File)).Write(json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
