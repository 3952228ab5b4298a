using Driveline.Reports.Documents;
using Driveline.Wording;
using Spectre.Console;

namespace Driveline.Cli;

/// <summary>Where a command reads and writes: answers to one stream, errors and progress to the other.</summary>
internal sealed class Terminal(TextReader input, TextWriter output, TextWriter error, bool isTerminal, int columns)
{
    private const int FewestColumns = 40;
    private const int MostColumns = 100;

    /// <summary>Columns of the window; a wider one is not filled.</summary>
    public int Columns { get; } = Math.Clamp(columns, FewestColumns, MostColumns);

    public TextReader Input { get; } = input;

    public TextWriter Output { get; } = output;

    /// <summary>Where a dialogue is held when the answer goes to a program.</summary>
    public TextWriter Dialogue => error;

    /// <summary>An error of one line, whatever is in it.</summary>
    public void Error(string message) => error.WriteLine("driveline: " + CleanText.Line(message));

    /// <summary>A report; on a terminal its dangers stand out.</summary>
    public void Report(string text, Language language) =>
        Output.Write(isTerminal ? Emphasis.Of(text, Texts.In(language)) : text);

    /// <summary>A word on what is being done, shown to people only.</summary>
    public void Progress(string message)
    {
        if (isTerminal)
        {
            error.WriteLine(CleanText.Line(message));
        }
    }

    /// <summary>A table, with colours and lines only where people look at it.</summary>
    public void Table(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = isTerminal ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = isTerminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(Output),
        });
        console.Profile.Width = Columns;
        Table table = new Table().Border(isTerminal ? TableBorder.Rounded : TableBorder.Ascii2);
        foreach (string head in heads)
        {
            var column = new TableColumn(new Text(head, new Style(decoration: isTerminal ? Decoration.Bold : Decoration.None)));
            table.AddColumn(table.Columns.Count == 0 ? column.NoWrap() : column);
        }

        foreach (IReadOnlyList<string> row in rows)
        {
            table.AddRow(row.Select(cell => new Text(CleanText.Line(cell))));
        }

        console.Write(table);
    }
}
