using System.Globalization;
using System.Text;
using Driveline.Cases.Results;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Sweeps;

/// <summary>What a study found as text for a terminal.</summary>
public static class StudyText
{
    /// <summary>The text in English.</summary>
    /// <exception cref="ArgumentNullException">The result is missing.</exception>
    public static string Of(StudyResult result) => Of(result, ReportOptions.Default);

    /// <summary>The text; numbers stand in SI whatever the units of the options.</summary>
    /// <exception cref="ArgumentNullException">The result or the options are missing.</exception>
    public static string Of(StudyResult result, ReportOptions options)
    {
        Guard.NotNull(options, nameof(options));
        StudyFigures figures = Guard.NotNull(result, nameof(result)).Figures;
        var words = new Phrase(options.Texts, options.Units);
        var text = new StringBuilder();
        text.Append(CleanText.Title(options.Title ?? result.Study.Title)).Append("\n\n");
        text.Append(words.Of(Phrase.Code("study.rows").With("rows", Whole(figures.Rows)).With("seconds", Number(figures.Seconds))
            .With("perSecond", Whole((long)figures.RowsPerSecond)))).Append('\n');
        if (figures.Rows == 0)
        {
            return text.Append(words.Of("study.none")).Append('\n').ToString();
        }

        Failures(text, figures, words);
        Spreads(text, figures, words);
        foreach (KeyValuePair<string, IReadOnlyList<KeyValuePair<string, double>>> output in figures.Shares)
        {
            text.Append(output.Key).Append(": ")
                .AppendJoin(", ", output.Value.Select(s => s.Key + " " + Number(100 * s.Value) + " %")).Append('\n');
        }

        foreach (IGrouping<string, IndexFigures> output in figures.Sensitivity.GroupBy(s => s.Output))
        {
            Head(text, words, "study.indices", output.Key);
            Table(text, [words.Of("study.factor"), words.Of("study.first"), words.Of("study.total")],
                output.OrderByDescending(i => i.Total ?? -1).Select(i => new[]
                {
                    i.Factor, Ends(i.First, i.FirstLow, i.FirstHigh, words), Ends(i.Total, i.TotalLow, i.TotalHigh, words),
                }));
        }

        if (figures.SensitivityRefused is { } reason)
        {
            text.Append('\n').Append(words.Of(Phrase.Code("study.indices.refused").With("reason", reason))).Append('\n');
        }

        foreach (IGrouping<string, EffectFigures> output in figures.Morris.GroupBy(s => s.Output))
        {
            Head(text, words, "study.effects", output.Key);
            Table(text, [words.Of("study.factor"), "μ", "μ*", "σ"], Effects([.. output], words));
        }

        Tornado(text, figures, words);
        return text.ToString();
    }

    internal static string Number(double value) => double.IsInfinity(value) ? value > 0 ? "∞" : "-∞"
        : Significant.Digits(value, 4);

    private static void Failures(StringBuilder text, StudyFigures figures, Phrase words)
    {
        if (figures.Failed == 0)
        {
            return;
        }

        text.Append(words.Of(Phrase.Code("study.failed").With("failed", Whole(figures.Failed)))).Append('\n');
        foreach (FailureFigures failure in figures.Failures.Take(5))
        {
            text.Append("  ").Append(words.Of(Phrase.Code("study.reason").With("rows", Whole(failure.Rows))
                .With("first", Whole(failure.FirstRow)).With("reason", CleanText.Line(failure.Reason)))).Append('\n');
        }
    }

    private static void Spreads(StringBuilder text, StudyFigures figures, Phrase words)
    {
        text.Append('\n');
        if (figures.Quantiles.Count == 0)
        {
            return;
        }

        Table(text,
            [string.Empty, words.Of("study.spread.head"), words.Of("study.spread.middle"), words.Of("study.spread.high"), string.Empty],
            figures.Quantiles.Select(q => new[]
            {
                q.Key, Number(q.Value.P05, words), Number(q.Value.P50, words), Number(q.Value.P95, words),
                q.Value.NotKnown > 0 ? words.Of(Phrase.Code("study.notKnown").With("rows", Whole(q.Value.NotKnown))) : string.Empty,
            }));
        text.Append('\n');
    }

    private static void Tornado(StringBuilder text, StudyFigures figures, Phrase words)
    {
        foreach (IGrouping<string, SwingFigures> output in figures.Tornado.GroupBy(s => s.Output))
        {
            Head(text, words, "study.tornado", output.Key);
            Table(text, [words.Of("study.factor"), words.Of("study.lowest"), words.Of("study.highest"), words.Of("study.rank")],
                output.Select(s => new[]
                {
                    s.Factor, Number(s.AtLow, words), Number(s.AtHigh, words),
                    figures.RankCorrelation.First(r => r.Output == s.Output && r.Factor == s.Factor).Spearman is { } rank
                        ? Fixed(rank) : words.Of("band.notKnown"),
                }));
        }
    }

    private static void Head(StringBuilder text, Phrase words, string code, string output) =>
        text.Append('\n').Append(words.Of(Phrase.Code(code).With("output", output))).Append('\n');

    private static void Table(StringBuilder text, string[] heads, IEnumerable<string[]> rows)
    {
        string[][] all = [heads, .. rows];
        int[] widths = [.. heads.Select((_, c) => all.Max(r => r[c].Length))];
        foreach (string[] row in all)
        {
            text.Append(("  " + string.Concat(row.Select((cell, c) => c == 0 ? cell.PadRight(widths[c] + 2)
                : cell.PadLeft(widths[c]) + "  "))).TrimEnd()).Append('\n');
        }
    }

    // What is rounding beside the largest effect is none.
    private static IEnumerable<string[]> Effects(EffectFigures[] effects, Phrase words)
    {
        double least = 1e-9 * effects.Max(e => e.MuStar ?? 0);
        string Shown(double? value) => value is { } known && Math.Abs(known) < least ? "0" : Number(value, words);
        return effects.OrderByDescending(e => e.MuStar ?? -1).Select(
            e => new[] { e.Factor, Shown(e.Mu), Shown(e.MuStar), Shown(e.Sigma) });
    }

    private static string Ends(double? value, double? low, double? high, Phrase words) =>
        value is { } known && low is { } from && high is { } to
            ? words.Of(Phrase.Code("study.interval").With("value", Fixed(known)).With("low", Fixed(from)).With("high", Fixed(to)))
            : words.Of("band.notKnown");

    // A share or a correlation; a small negative one is no negative zero.
    private static string Fixed(double value)
    {
        string text = value.ToString("F3", CultureInfo.InvariantCulture);
        return text == "-0.000" ? "0.000" : text;
    }

    private static string Number(double? value, Phrase words) => value is { } known ? Number(known) : words.Of("band.notKnown");

    private static string Whole(long value) => value.ToString("N0", CultureInfo.InvariantCulture);
}
