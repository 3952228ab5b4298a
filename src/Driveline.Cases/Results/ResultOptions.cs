using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>What a result says of itself: the case it is of, and the language and units of its texts. Immutable.</summary>
/// <remarks>Numbers do not depend on it; only texts do.</remarks>
public sealed class ResultOptions
{
    private ResultOptions(Texts texts, DisplayUnits units, string? title, DateTime? date, bool hasDoubts)
    {
        HasDoubts = hasDoubts;
        Units = units;
        Title = title;
        Date = date;
        Texts = texts;
    }

    /// <summary>English, metric units, of no case.</summary>
    public static ResultOptions Default { get; } = new(Texts.English, DisplayUnits.Metric, null, null, false);

    /// <summary>The language of the texts.</summary>
    public Language Language => Texts.Language;

    /// <summary>The units in the texts.</summary>
    public DisplayUnits Units { get; }

    /// <summary>Title of the case; null when it has none.</summary>
    public string? Title { get; }

    /// <summary>The day for which the case is stated; null when it states none.</summary>
    public DateTime? Date { get; }

    /// <summary>The texts, which may be the caller's own.</summary>
    public Texts Texts { get; }

    /// <summary>True when a verdict also says where the doubt about each device's torque comes from.</summary>
    public bool HasDoubts { get; }

    /// <summary>The same options with another language.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public ResultOptions WithLanguage(Language language) => new(Texts.In(language), Units, Title, Date, HasDoubts);

    /// <summary>The same options with texts of the caller's own.</summary>
    /// <exception cref="ArgumentNullException">The texts are missing.</exception>
    public ResultOptions WithTexts(Texts texts) => new(Guard.NotNull(texts, nameof(texts)), Units, Title, Date, HasDoubts);

    /// <summary>The same options with other units.</summary>
    public ResultOptions WithUnits(DisplayUnits units) => new(Texts, units, Title, Date, HasDoubts);

    /// <summary>The same options with a title, such as that of a model; null for none.</summary>
    public ResultOptions WithTitle(string? title) => new(Texts, Units, title, Date, HasDoubts);

    /// <summary>The same options with title and date of a case.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    public ResultOptions WithCase(CaseFile file) => new(Texts, Units, Guard.NotNull(file, nameof(file)).Title, file.Date, HasDoubts);

    /// <summary>The same options; a verdict also says where the doubt about each device's torque comes from, or leaves it out.</summary>
    public ResultOptions WithDoubts(bool shown) => new(Texts, Units, Title, Date, shown);
}
