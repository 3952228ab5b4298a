using System.CommandLine;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Cli;

/// <summary>The options every command understands.</summary>
internal sealed class SharedOptions
{
    public Option<bool> Json { get; } = new("--json") { Description = "Print the answer as JSON for other programs.", Recursive = true };

    public Option<string> Units { get; } = new("--units")
    {
        Description = "Units of the answer: si or us.",
        DefaultValueFactory = _ => "si",
        Recursive = true,
    };

    public Option<string> Language { get; } = new("--language")
    {
        Description = "Language of the answer: en or es. Errors and this help are in English.",
        DefaultValueFactory = _ => "en",
        Recursive = true,
    };

    private readonly int columns;

    public SharedOptions(int columns)
    {
        this.columns = columns;
        Units.AcceptOnlyFromAmong("si", "us");
        Language.AcceptOnlyFromAmong(Codes());
    }

    /// <summary>The folder for pictures and reports, for the commands that make them.</summary>
    public Option<string?> Out { get; } = new(
        "--out")
    { Description = "Folder for the pictures and reports; made when it is not there.", HelpName = "DIR" };

    // In a loop: a query over an enumeration is compiled anew at every start.
    private static string[] Codes()
    {
        var codes = new string[Languages.All.Count];
        for (int k = 0; k < codes.Length; k++)
        {
            codes[k] = Languages.CodeOf(Languages.All[k]);
        }

        return codes;
    }

    public DisplayUnits UnitsOf(ParseResult parsed) => parsed.GetValue(Units) == "us" ? DisplayUnits.UsCustomary : DisplayUnits.Metric;

    public Language LanguageOf(ParseResult parsed) => Languages.Parse(parsed.GetValue(Language)!);

    public ResultOptions ResultOf(ParseResult parsed) => ResultOptions.Default.WithLanguage(LanguageOf(parsed)).WithUnits(UnitsOf(parsed));

    public ResultOptions ResultOf(ParseResult parsed, CaseFile file) => ResultOf(parsed).WithCase(file);

    public ReportOptions ReportOf(ParseResult parsed, string title) =>
        ReportOptions.Default.WithTitle(title).WithUnits(UnitsOf(parsed)).WithLanguage(LanguageOf(parsed)).WithTextWidth(columns);
}
