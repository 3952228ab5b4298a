using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>How a report is written: its title, units and language. Immutable.</summary>
public sealed class ReportOptions
{
    private ReportOptions(string? title, DisplayUnits units, Language language)
    {
        Title = title;
        Units = units;
        Language = language;
    }

    /// <summary>Metric units, English, no title.</summary>
    public static ReportOptions Default { get; } = new(null, DisplayUnits.Metric, Language.English);

    /// <summary>Title above the report, usually that of the case; null for none.</summary>
    public string? Title { get; }

    /// <summary>The units shown.</summary>
    public DisplayUnits Units { get; }

    /// <summary>The language of the texts.</summary>
    public Language Language { get; }

    /// <summary>The same options with a title; any text is printed safely.</summary>
    public ReportOptions WithTitle(string? title) => new(title, Units, Language);

    /// <summary>The same options with other units.</summary>
    public ReportOptions WithUnits(DisplayUnits units) => new(Title, units, Language);

    /// <summary>The same options with another language.</summary>
    public ReportOptions WithLanguage(Language language) => new(Title, Units, language);
}
