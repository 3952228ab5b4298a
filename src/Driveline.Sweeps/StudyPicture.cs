using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Sweeps.Pictures;

namespace Driveline.Sweeps;

/// <summary>
/// Pictures of a study as SVG, in the look of the reports and as wide as the options say. The same result gives the same bytes.
/// </summary>
public static class StudyPicture
{
    /// <summary>
    /// What an output depends on: its median in the lowest and the highest tenth of each factor, the widest swing on top.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such output, or it is a word.</exception>
    public static string Tornado(StudyResult result, string output) => Tornado(result, output, ReportOptions.Default);

    /// <summary>The same, with language and title.</summary>
    /// <exception cref="ArgumentException">There is no such output, or it is a word.</exception>
    public static string Tornado(StudyResult result, string output, ReportOptions options) => new TornadoDrawing(
            Guard.NotNull(result, nameof(result)), Known(result, output), Guard.NotNull(options, nameof(options))).Svg();

    /// <summary>An output against a factor: a point a row, of at most 3000 rows.</summary>
    /// <exception cref="ArgumentException">There is no such factor or output, or the output is a word.</exception>
    public static string Scatter(StudyResult result, string factor, string output) =>
        Scatter(result, factor, output, ReportOptions.Default);

    /// <summary>The same, with language and title.</summary>
    /// <exception cref="ArgumentException">There is no such factor or output, or the output is a word.</exception>
    public static string Scatter(StudyResult result, string factor, string output, ReportOptions options)
    {
        Guard.NotNull(result, nameof(result));
        int at = result.Study.Factors.ToList().FindIndex(f => f.Name == factor);
        if (at < 0)
        {
            throw new ArgumentException("There is no factor \"" + factor + "\"; there are: "
                + string.Join(", ", result.Study.Factors.Select(f => f.Name)) + ".", nameof(factor));
        }

        return new ScatterDrawing(result, at, Known(result, output), Guard.NotNull(options, nameof(options))).Svg();
    }

    /// <summary>The share of the rows in which an output is above a value, over that value.</summary>
    /// <exception cref="ArgumentException">There is no such output, or it is a word.</exception>
    public static string Exceedance(StudyResult result, string output) => Exceedance(result, output, ReportOptions.Default);

    /// <summary>The same, with language and title.</summary>
    /// <exception cref="ArgumentException">There is no such output, or it is a word.</exception>
    public static string Exceedance(StudyResult result, string output, ReportOptions options) => new ExceedanceDrawing(
            Guard.NotNull(result, nameof(result)), Known(result, output), Guard.NotNull(options, nameof(options))).Svg();

    private static int Known(StudyResult result, string output)
    {
        List<StudyOutput> outputs = [.. result.Plan.Outputs];
        int at = outputs.FindIndex(o => o.Name == output && !o.IsWord);
        return at >= 0 ? at : throw new ArgumentException("There is no output \"" + output + "\" that is a number; there are: "
            + string.Join(", ", outputs.Where(o => !o.IsWord).Select(o => o.Name)) + ".", nameof(output));
    }
}
