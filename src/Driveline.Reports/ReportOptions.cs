using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>
/// How a report is written: its title, units, language, the width of its text and pictures and the head of its pages. Immutable.
/// </summary>
public sealed class ReportOptions
{
    private const double LeastWidth = 320;
    private const double MostWidth = 2000;
    private const int FewestColumns = 40;
    private const int MostColumns = 200;
    private const int UsualColumns = 78;

    private ReportOptions(
        string? title, DisplayUnits units, Texts texts, double pictureWidth, int textWidth, ReportHead head, bool hasDoubts)
    {
        HasDoubts = hasDoubts;
        Title = title;
        Units = units;
        Texts = texts;
        PictureWidth = pictureWidth;
        TextWidth = textWidth;
        Head = head;
    }

    /// <summary>Metric units, English, no title, text of 78 columns, pictures of 1000 px, an empty head.</summary>
    public static ReportOptions Default { get; } =
        new(null, DisplayUnits.Metric, Texts.English, 1000, UsualColumns, ReportHead.Empty, false);

    /// <summary>Title above the report, usually that of the case; null for none.</summary>
    public string? Title { get; }

    /// <summary>The units shown.</summary>
    public DisplayUnits Units { get; }

    /// <summary>The language of the texts.</summary>
    public Language Language => Texts.Language;

    /// <summary>The texts, which may be the caller's own.</summary>
    public Texts Texts { get; }

    /// <summary>Width for which a picture is laid out, px; below 640 its words stand above its bars.</summary>
    public double PictureWidth { get; }

    /// <summary>Columns that a plain text is wrapped at; a table that is wider is stacked.</summary>
    public int TextWidth { get; }

    /// <summary>Who hands a page over, to whom, for which machine, when, under which number.</summary>
    public ReportHead Head { get; }

    /// <summary>True when a verdict also says where the doubt about each device's torque comes from.</summary>
    public bool HasDoubts { get; }

    /// <summary>The same options with a title; any text is printed safely.</summary>
    public ReportOptions WithTitle(string? title) => new(title, Units, Texts, PictureWidth, TextWidth, Head, HasDoubts);

    /// <summary>The same options with other units.</summary>
    public ReportOptions WithUnits(DisplayUnits units) => new(Title, units, Texts, PictureWidth, TextWidth, Head, HasDoubts);

    /// <summary>The same options with another language.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public ReportOptions WithLanguage(Language language) => new(Title, Units, Texts.In(language), PictureWidth, TextWidth, Head, HasDoubts);

    /// <summary>The same options with texts of the caller's own.</summary>
    /// <exception cref="ArgumentNullException">The texts are missing.</exception>
    public ReportOptions WithTexts(Texts texts) =>
        new(Title, Units, texts ?? throw new ArgumentNullException(nameof(texts)), PictureWidth, TextWidth, Head, HasDoubts);

    /// <summary>The same options with plain text of another width, from 40 to 200 columns.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside this range.</exception>
    public ReportOptions WithTextWidth(int columns) => columns is >= FewestColumns and <= MostColumns
        ? new ReportOptions(Title, Units, Texts, PictureWidth, columns, Head, HasDoubts)
        : throw new ArgumentOutOfRangeException(nameof(columns), columns, "must be from 40 to 200 columns");

    /// <summary>The same options with pictures of another width, from 320 to 2000 px.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside this range or no number.</exception>
    public ReportOptions WithPictureWidth(double pixels) => pixels is >= LeastWidth and <= MostWidth
        ? new ReportOptions(Title, Units, Texts, pixels, TextWidth, Head, HasDoubts)
        : throw new ArgumentOutOfRangeException(nameof(pixels), pixels, "must be from 320 to 2000 px");

    /// <summary>The same options with the head of a page.</summary>
    /// <exception cref="ArgumentNullException">The head is missing.</exception>
    public ReportOptions WithHead(ReportHead head) =>
        new(Title, Units, Texts, PictureWidth, TextWidth, head ?? throw new ArgumentNullException(nameof(head)), HasDoubts);

    /// <summary>The same options; a verdict also says where the doubt about each device's torque comes from, or leaves it out.</summary>
    public ReportOptions WithDoubts(bool shown) => new(Title, Units, Texts, PictureWidth, TextWidth, Head, shown);
}
