namespace Driveline.Reports.Documents;

/// <summary>One block of a report, free of any markup. Every text in it is cleaned on the way in.</summary>
internal sealed class ReportBlock
{
    private ReportBlock(ReportBlockKind kind, string text, IReadOnlyList<string> items, IReadOnlyList<string[]> rows)
        : this(kind, text, items, rows, LeadTone.Neutral)
    {
    }

    private ReportBlock(ReportBlockKind kind, string text, IReadOnlyList<string> items, IReadOnlyList<string[]> rows, LeadTone tone)
    {
        Tone = tone;
        Kind = kind;
        Text = text;
        Items = items;
        Rows = rows;
    }

    public ReportBlockKind Kind { get; }

    /// <summary>The text of a title, lead, heading or paragraph.</summary>
    public string Text { get; }

    /// <summary>The colour of a lead.</summary>
    public LeadTone Tone { get; }

    /// <summary>The items of a list.</summary>
    public IReadOnlyList<string> Items { get; }

    /// <summary>The rows of a table, heads first. Numbers stand in every column but the first.</summary>
    public IReadOnlyList<string[]> Rows { get; }

    public static ReportBlock Title(string text) => Of(ReportBlockKind.Title, text);

    public static ReportBlock Lead(string text) => Of(ReportBlockKind.Lead, text);

    public static ReportBlock Lead(string text, LeadTone tone) => new(ReportBlockKind.Lead, CleanText.Line(text), [], [], tone);

    public static ReportBlock Heading(string text) => Of(ReportBlockKind.Heading, text);

    public static ReportBlock Paragraph(string text) => Of(ReportBlockKind.Paragraph, text);

    public static ReportBlock Bullets(IEnumerable<string> items) => Of(ReportBlockKind.Bullets, items);

    public static ReportBlock Numbered(IEnumerable<string> items) => Of(ReportBlockKind.Numbered, items);

    public static ReportBlock Table(IEnumerable<string[]> rows) =>
        new(ReportBlockKind.Table, string.Empty, [], [.. rows.Select(row => Array.ConvertAll(row, CleanText.Line))]);

    public static ReportBlock Picture(string heading) => Of(ReportBlockKind.Picture, heading);

    private static ReportBlock Of(ReportBlockKind kind, string text) => new(kind, CleanText.Line(text), [], []);

    private static ReportBlock Of(ReportBlockKind kind, IEnumerable<string> items) =>
        new(kind, string.Empty, [.. items.Select(CleanText.Line)], []);
}
