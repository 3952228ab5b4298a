using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>What a result says of itself: the case it is of, and the language and units of its texts. Immutable.</summary>
/// <remarks>Numbers do not depend on it; only texts do.</remarks>
public sealed class ResultOptions
{
    private ResultOptions(Language language, DisplayUnits units, string? title, DateTime? date)
    {
        Language = language;
        Units = units;
        Title = title;
        Date = date;
        Texts = Texts.In(language);
    }

    /// <summary>English, metric units, of no case.</summary>
    public static ResultOptions Default { get; } = new(Language.English, DisplayUnits.Metric, null, null);

    /// <summary>The language of the texts.</summary>
    public Language Language { get; }

    /// <summary>The units in the texts.</summary>
    public DisplayUnits Units { get; }

    /// <summary>Title of the case; null when it has none.</summary>
    public string? Title { get; }

    /// <summary>The day for which the case is stated; null when it states none.</summary>
    public DateTime? Date { get; }

    internal Texts Texts { get; }

    /// <summary>The same options with another language.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public ResultOptions WithLanguage(Language language) => new(language, Units, Title, Date);

    /// <summary>The same options with other units.</summary>
    public ResultOptions WithUnits(DisplayUnits units) => new(Language, units, Title, Date);

    /// <summary>The same options with title and date of a case.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    public ResultOptions WithCase(CaseFile file) => new(Language, Units, Guard.NotNull(file, nameof(file)).Title, file.Date);
}
