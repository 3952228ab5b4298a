using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>A margin or torque of a verdict has the same digits in text, Markdown, page, picture, sheet and letter of every demo.</summary>
public partial class OneNumberTests
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Number_OfAVerdict_IsRoundedOneWayEverywhere(string demo)
    {
        ProtectionVerdict verdict = DemoCases.Verdict(demo);
        var texts = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["text"] = VerdictText.Of(verdict, ReportOptions.Default),
            ["Markdown"] = VerdictMarkdown.Of(verdict, ReportOptions.Default),
            ["page"] = Tags().Replace(VerdictHtml.Of(verdict, ReportOptions.Default), " "),
            ["findings"] = string.Join("\n", verdict.Findings.Select(f => Texts.English.Of(f, DisplayUnits.Metric))),
        };
        if (DemoCases.Advice(demo).Advice is { } advice)
        {
            texts["letter"] = AdviceText.Of(advice, ReportOptions.Default);
        }

        string[] wrong = [.. texts.SelectMany(t => Torques(verdict, t.Value).Select(w => t.Key + ": " + w))];
        Assert.True(wrong.Length == 0, string.Join("\n", wrong));
        string sheet = CalculationSheet.Markdown(verdict, ReportOptions.Default);
        foreach (double margin in Margins(verdict))
        {
            string shown = QuantityWords.Of(margin, QuantityKind.Margin, DisplayUnits.Metric);
            foreach (KeyValuePair<string, string> text in texts.Append(new("sheet", sheet)))
            {
                Assert.All(
                    Decimals().Matches(text.Value).Select(m => m.Value).Where(n => n.Length >= shown.Length && IsOf(n, margin)),
                    n => Assert.True(n == shown, text.Key + ": " + n + " for " + margin.ToString("R", CultureInfo.InvariantCulture)));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Page_HasTheNumbersOfItsText(string demo)
    {
        ProtectionVerdict verdict = DemoCases.Verdict(demo);
        string[] said = [.. Numbers().Matches(VerdictText.Of(verdict, ReportOptions.Default)).Select(m => m.Value).Distinct()];
        string page = Tags().Replace(VerdictHtml.Of(verdict, ReportOptions.Default), " ");
        string[] shown = [.. Numbers().Matches(page).Select(m => m.Value)];
        Assert.Empty(said.Except(shown));
    }

    // A number that is nearly a torque of the verdict and stands in N\u00B7m must be that torque, or another, as it is shown.
    private static IEnumerable<string> Torques(ProtectionVerdict verdict, string text)
    {
        double[] known = [.. Known(verdict)];
        string[] shown =
        [
            .. known.Select(k => QuantityWords.Of(k, QuantityKind.Torque, DisplayUnits.Metric))
                .Select(w => w[..w.IndexOf(' ', StringComparison.Ordinal)]),
        ];
        return TorqueNumbers().Matches(text).Select(m => m.Groups[1].Value).Distinct()
            .Where(n => known.Any(k => Math.Abs(Value(n) - k) < 0.004 * k) && !shown.Contains(n) && n.TrimEnd('0').Length > 3);
    }

    private static IEnumerable<double> Known(ProtectionVerdict verdict) => verdict.Devices.Select(d => d.TripAtPto)
        .Concat(verdict.Parts.Select(p => p.DamagedAtPto)).Append(verdict.WorkPeak)
        .OfType<TorqueBand>().SelectMany(b => new[] { b.Low, b.Expected, b.High })
        .OfType<UnitsNet.Torque>().Select(t => t.NewtonMeters).Where(t => t > 0);

    private static IEnumerable<double> Margins(ProtectionVerdict verdict) =>
        new[] { verdict.WorkMargin, verdict.GuardMargin }.OfType<double>().Where(m => m is > 0.1 and < 20);

    // The margin rounded or cut to as many digits as the number has: then it is that margin, told in another way. Fewer digits than are
    // shown may be anything, such as a ratio of 0.6.
    private static bool IsOf(string number, double margin)
    {
        double per = Math.Pow(10, number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1);
        double scaled = Value(number) * per;
        return Math.Abs(scaled - Math.Round(margin * per)) < 1e-6 || Math.Abs(scaled - Math.Floor(margin * per)) < 1e-6;
    }

    private static double Value(string number) => double.Parse(number, CultureInfo.InvariantCulture);

    [GeneratedRegex("<style.*?</style>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Tags();

    [GeneratedRegex(@"(?<![\d.,/:-])(?:\d{2,}(?:\.\d+)?|\d\.\d+)(?![\d/:]|\.\d)")]
    private static partial Regex Numbers();

    [GeneratedRegex(@"(?<![\d.,\w])\d\.\d+(?![\d.]|\s?(?:%|N|mm|MPa|kPa|s\b|ms\b|kW|J|h\b|°|times as much as the fitted))")]
    private static partial Regex Decimals();

    [GeneratedRegex(@"(?<![\d.,])(\d+(?:\.\d+)?)[\s\u00A0]N·m")]
    private static partial Regex TorqueNumbers();
}
