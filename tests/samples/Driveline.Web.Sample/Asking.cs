using System.Diagnostics.CodeAnalysis;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Web.Sample;

/// <summary>How a caller wants his answer: language, units, the shelf to choose from.</summary>
internal sealed record Asking(Language Language, DisplayUnits Units, StockList? Stock)
{
    public Texts Texts => Texts.In(Language);

    public ReportOptions Report => ReportOptions.Default.WithLanguage(Language).WithUnits(Units);

    public ResultOptions Result => ResultOptions.Default.WithLanguage(Language).WithUnits(Units);

    public static bool TryParse(IQueryCollection query, [NotNullWhen(true)] out Asking? asking, [NotNullWhen(false)] out string? wrong)
    {
        asking = null;
        var language = Language.English;
        if (query["language"].ToString() is { Length: > 0 } code && !Languages.TryParse(code, out language))
        {
            wrong = "language must be en or es; got \"" + code + "\".";
            return false;
        }

        string units = query["units"].ToString();
        if (units is not ("" or "si" or "us"))
        {
            wrong = "units must be si or us; got \"" + units + "\".";
            return false;
        }

        StockList? stock = null;
        if (query["stock"].ToString() is { Length: > 0 } shelf && !StockList.TryParse(shelf, out stock, out string? problem))
        {
            wrong = "stock: " + problem;
            return false;
        }

        wrong = null;
        asking = new Asking(language, units == "us" ? DisplayUnits.UsCustomary : DisplayUnits.Metric, stock);
        return true;
    }
}
