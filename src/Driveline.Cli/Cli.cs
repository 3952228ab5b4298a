using System.CommandLine;
using Driveline.Cases;
using Driveline.Cli.Commands;

namespace Driveline.Cli;

/// <summary>The command line: wires the commands, turns every trouble into a message and an exit code.</summary>
internal static class Cli
{
    /// <summary>Columns of what is written to a file or another program.</summary>
    public const int ColumnsOfAFile = 80;

    private static readonly (string Name, Func<Terminal, SharedOptions, Command> Create)[] Commands =
    [
        ("demo", DemoCommand.Create), ("assess", AssessCommand.Create), ("choose", ChooseCommand.Create), ("clutch", ClutchCommand.Create),
        ("advise", AdviseCommand.Create), ("strength", StrengthCommand.Create), ("identify", IdentifyCommand.Create),
        ("simulate", SimulateCommand.Create), ("watch", WatchCommand.Create), ("sweep", SweepCommand.Create),
        ("merge", MergeCommand.Create), ("fleet", FleetCommand.Create), ("schema", SchemaCommand.Create),
    ];

    /// <summary>Runs as if the output went to a file.</summary>
    public static int Run(string[] args, TextReader input, TextWriter output, TextWriter error) =>
        Run(args, input, output, error, isTerminal: false, ColumnsOfAFile);

    /// <summary>Runs one command in a window of so many columns. Never throws.</summary>
    public static int Run(string[] args, TextReader input, TextWriter output, TextWriter error, bool isTerminal, int columns)
    {
        var terminal = new Terminal(input, output, error, isTerminal, columns);
        try
        {
            RootCommand root = Root(terminal, args);
            ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0)
            {
                return Refuse(parsed, terminal);
            }

            return parsed.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });
        }
        catch (BadInputException bad)
        {
            foreach (string problem in bad.Problems)
            {
                terminal.Error(problem);
            }

            return ExitCode.BadInput;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            terminal.Error("internal fault: " + fault.GetType().Name + ": " + fault.Message);
            return ExitCode.InternalFault;
        }
    }

    private static RootCommand Root(Terminal terminal, string[] args)
    {
        var shared = new SharedOptions(terminal.Columns);
        var root = new RootCommand(
            "Sizes, checks and explains the overload protection of tractor PTO drivelines. An estimate, no certification.")
        {
            shared.Json, shared.Units, shared.Language,
        };

        // A command named first is the only one made: making all of them takes longer than most answers.
        int named = args.Length == 0 ? -1 : Array.FindIndex(Commands, c => c.Name == args[0]);
        foreach ((string _, Func<Terminal, SharedOptions, Command> create) in named < 0 ? Commands : [Commands[named]])
        {
            root.Add(create(terminal, shared));
        }

        root.SetAction(parsed => root.Parse(["--help"]).Invoke(parsed.InvocationConfiguration));
        return root;
    }

    private static int Refuse(ParseResult parsed, Terminal terminal)
    {
        foreach (string message in parsed.Errors.Select(e => e.Message).Distinct())
        {
            terminal.Error(message);
        }

        Command command = parsed.CommandResult.Command;
        IEnumerable<string> names = command.Subcommands.Select(c => c.Name)
            .Concat(command.Options.Select(o => o.Name))
            .Concat(parsed.RootCommandResult.Command.Options.Select(o => o.Name));
        IEnumerable<string> wrong = parsed.UnmatchedTokens.Concat(
            parsed.CommandResult.Tokens.Select(t => t.Value).Where(Pages.CaseArgument.IsOption));
        foreach (string token in wrong.Distinct().Take(3))
        {
            if (NearestName.Of(token, names) is { } near)
            {
                terminal.Error("Did you mean '" + near + "'?");
            }
        }

        string path = command is RootCommand ? string.Empty : command.Name + " ";
        terminal.Error("See 'driveline " + path + "--help'.");
        return ExitCode.BadInput;
    }
}
