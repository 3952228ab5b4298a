using Driveline.Advice;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Charts;

/// <summary>What each option has cost by the end of each year.</summary>
internal static class CostChart
{
    private static readonly SvgInk[] Inks = [SvgInk.Work, SvgInk.Trip, SvgInk.Part, SvgInk.Room, SvgInk.Overlap, SvgInk.Faint];

    private const int Dashes = 4;

    public static IPicture? Of(IReadOnlyList<OwnershipCost> costs, ReportOptions options, PictureFrame frame)
    {
        OwnershipCost[] known = [.. costs.Where(c => c.Total.Expected is not null).Take(Inks.Length)];
        if (known.Length == 0 || known[0].Terms.Years < 2)
        {
            return null;
        }

        var phrase = new Phrase(options.Texts, options.Units);
        OwnershipTerms terms = known[0].Terms;
        (double X, double Y)[][] curves = [.. known.Select(c => Curve(c, terms))];
        OwnershipCost least = known.OrderBy(c => c.Total.Expected).First();
        double low = Math.Min(0, curves.Min(c => c.Min(p => p.Y)));
        var chart = new Chart(
            frame, phrase, phrase.Of(Phrase.Code("picture.cost.lead")
                .With("option", phrase.Capital(least.Option.Name)).With("years", QuantityKind.Count, terms.Years)),
            phrase.Of("picture.cost.description"),
            new ChartAxis(0, terms.Years, phrase.Of("picture.cost.years")),
            new ChartAxis(low, Math.Max(1, curves.Max(c => c.Max(p => p.Y)) * 1.08),
                phrase.Of(Phrase.Code("picture.cost.money").With("currency", CleanText.Name(terms.Currency)))));
        for (int k = 0; k < known.Length; k++)
        {
            chart.Line(curves[k], Inks[k], (LineDash)(k % Dashes), phrase.Capital(known[k].Option.Name));
        }

        return chart;
    }

    private static (double X, double Y)[] Curve(OwnershipCost cost, OwnershipTerms terms) =>
    [
        (0, cost.Option.Outlay.Expected - cost.Option.Proceeds.Expected ?? 0),
        .. Enumerable.Range(1, terms.Years).Select(year => ((double)year, OwnershipCost.Of(
            cost.Option, OwnershipTerms.Of(terms.Currency, year, terms.DiscountRate)
                .WithHourOfWork(terms.HourOfWork).WithHourOfDowntime(terms.HourOfDowntime)).Total.Expected ?? 0)),
    ];
}
