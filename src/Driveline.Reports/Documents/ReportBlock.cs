using Driveline.Reports.Pictures;

namespace Driveline.Reports.Documents;

/// <summary>One block of a report, free of any markup. Every text in it is cleaned on the way in.</summary>
internal sealed class ReportBlock
{
    private ReportBlock(ReportBlockKind kind, string text, IReadOnlyList<string> items, IReadOnlyList<string[]> rows)
    {
        Kind = kind;
        Text = text;
        Items = items;
        Rows = rows;
    }

    public ReportBlockKind Kind { get; }

    /// <summary>The text of a title, lead, heading or paragraph; the caption of a picture; the markup of a formula.</summary>
    public string Text { get; }

    /// <summary>The colour of a lead.</summary>
    public LeadTone Tone { get; private set; }

    /// <summary>True for a heading that begins a sheet of paper.</summary>
    public bool IsSheet { get; private set; }

    /// <summary>The items of a list.</summary>
    public IReadOnlyList<string> Items { get; }

    /// <summary>The rows of a table, heads first.</summary>
    public IReadOnlyList<string[]> Rows { get; }

    /// <summary>True for a column of a table that holds words: the first, and one whose every cell begins with a letter.</summary>
    public static bool IsOfWords(IReadOnlyList<string[]> rows, int column) =>
        column == 0 || (rows.Skip(1).Any(r => r[column].Length > 0)
            && rows.Skip(1).All(r => r[column].Length == 0 || char.IsLetter(r[column][0])));

    /// <summary>The insides of the MathML elements of a step; of a table, the symbol of each row below its heads.</summary>
    public IReadOnlyList<string> Math { get; private set; } = [];

    /// <summary>Draws a picture for a page, in a frame.</summary>
    public Func<PictureFrame, string>? Drawn { get; private set; }

    public static ReportBlock Title(string text) => Of(ReportBlockKind.Title, text);

    public static ReportBlock Lead(string text) => Of(ReportBlockKind.Lead, text);

    public static ReportBlock Lead(string text, LeadTone tone) => new(ReportBlockKind.Lead, CleanText.Line(text), [], []) { Tone = tone };

    public static ReportBlock Heading(string text) => Of(ReportBlockKind.Heading, text);

    /// <summary>A heading that begins a sheet of paper.</summary>
    public static ReportBlock Sheet(string text) => new(ReportBlockKind.Heading, CleanText.Line(text), [], []) { IsSheet = true };

    public static ReportBlock Paragraph(string text) => Of(ReportBlockKind.Paragraph, text);

    public static ReportBlock Bullets(IEnumerable<string> items) => Of(ReportBlockKind.Bullets, items);

    public static ReportBlock Numbered(IEnumerable<string> items) => Of(ReportBlockKind.Numbered, items);

    /// <summary>Steps to be done one after the other, each with a box to tick.</summary>
    public static ReportBlock Steps(IEnumerable<string> items) => Of(ReportBlockKind.Steps, items);

    public static ReportBlock Table(IEnumerable<string[]> rows) =>
        new(ReportBlockKind.Table, string.Empty, [], [.. rows.Select(row => Array.ConvertAll(row, CleanText.Line))]);

    /// <summary>A table each of whose rows begins with a symbol, ": " and words.</summary>
    public static ReportBlock Table(IEnumerable<string[]> rows, IReadOnlyList<string> symbols)
    {
        ReportBlock table = Table(rows);
        table.Math = symbols;
        return table;
    }

    /// <summary>One step of a worked sum.</summary>
    public static ReportBlock Step(Sheets.WorkedStep step) =>
        new(ReportBlockKind.Step, CleanText.Line(step.Plain), [CleanText.Line(step.Clause)], []) { Math = step.Math };

    /// <summary>Lines to sign on, each with what belongs there.</summary>
    public static ReportBlock Sign(IEnumerable<string> items) => Of(ReportBlockKind.Sign, items);

    /// <summary>A picture with its caption where enough is known to draw it; else nothing.</summary>
    public static IEnumerable<ReportBlock> PictureIf(Func<PictureFrame, IPicture?> drawing) =>
        drawing(PictureFrame.Wide) is { } known ? [Picture(known.Description, frame => SvgDocument.Fragment(drawing(frame)!))] : [];

    /// <summary>A picture with its caption.</summary>
    public static ReportBlock Picture(string caption, Func<PictureFrame, string> drawn) =>
        new(ReportBlockKind.Picture, CleanText.Line(caption), [], []) { Drawn = drawn };

    private static ReportBlock Of(ReportBlockKind kind, string text) => new(kind, CleanText.Line(text), [], []);

    private static ReportBlock Of(ReportBlockKind kind, IEnumerable<string> items) =>
        new(kind, string.Empty, [.. items.Select(CleanText.Line)], []);
}
