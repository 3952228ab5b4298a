using Driveline.Cases.Results;
using Driveline.Quantities;
using Driveline.Sweeps.Statistics;

namespace Driveline.Sweeps;

/// <summary>What a study found.</summary>
public sealed class StudyResult
{
    private IReadOnlyList<SensitivityIndex>? sensitivity;
    private IReadOnlyList<string>? numberOutputs;
    private readonly Accumulated seen;
    private readonly Lazy<StudyFigures> figures;

    internal StudyResult(StudyPlan plan, Accumulated seen, double seconds, StudyTable? table)
    {
        Plan = plan;
        this.seen = seen;
        Elapsed = TimeSpan.FromSeconds(seconds);
        Table = table;
        figures = new Lazy<StudyFigures>(() => seen.Figures(seconds));
    }

    /// <summary>The study.</summary>
    public Study Study => Plan.Study;

    /// <summary>Rows, the failed ones among them.</summary>
    public long Rows => seen.Rows;

    /// <summary>Rows that have no answer.</summary>
    public long Failed => seen.Failed;

    /// <summary>Time of the run.</summary>
    public TimeSpan Elapsed { get; }

    /// <summary>The rows; null when they went into a file.</summary>
    public StudyTable? Table { get; }

    /// <summary>Variance-based indices, an entry an output and factor; empty when they were not asked for, or of a shard.</summary>
    public IReadOnlyList<SensitivityIndex> Sensitivity => sensitivity
        ??= [.. figures.Value.Sensitivity.Select(f => new SensitivityIndex(f))];

    internal StudyPlan Plan { get; }

    internal StudyFigures Figures => figures.Value;

    internal KeptRows Kept => seen.Kept;

    /// <summary>The value of an output that a share of the rows stays below; null when it is never known.</summary>
    /// <param name="output">Name of an output that is a number.</param>
    /// <param name="share">0.05, 0.5 or 0.95.</param>
    /// <exception cref="ArgumentException">There is no such output, or the share is another.</exception>
    public double? Quantile(string output, double share)
    {
        QuantileFigures known = Of(Figures.Quantiles, output);
        return share switch
        {
            0.05 => known.P05,
            0.5 => known.P50,
            0.95 => known.P95,
            _ => throw new ArgumentException(
                FormattableString.Invariant($"Shares held are 0.05, 0.5 and 0.95; got {share}."), nameof(share)),
        };
    }

    /// <summary>Share of the rows in which an output is a word; 0 when it never is.</summary>
    /// <exception cref="ArgumentException">There is no such output.</exception>
    public double ShareOf(string output, string word) => Of(Figures.Shares, output).Where(s => s.Key == word).Sum(s => s.Value);

    /// <summary>Spearman's rank correlation of an output with a factor; null when either does not vary.</summary>
    /// <exception cref="ArgumentException">There is no such output or factor.</exception>
    public double? RankCorrelation(string output, string factor) =>
        (Figures.RankCorrelation.FirstOrDefault(r => r.Output == output && r.Factor == factor)
            ?? throw new ArgumentException("There is no output \"" + output + "\" with a factor \"" + factor + "\"."))
        .Spearman;

    /// <summary>Names of the outputs that are numbers.</summary>
    public IReadOnlyList<string> NumberOutputs => numberOutputs ??= [.. Figures.Quantiles.Select(q => q.Key)];

    /// <summary>The factor with which an output's median swings the widest; null when it swings with none.</summary>
    /// <exception cref="ArgumentException">There is no such output.</exception>
    public string? WidestSwing(string output)
    {
        _ = Of(Figures.Quantiles, output);
        return Figures.Tornado.FirstOrDefault(t => t.Output == output && t.AtLow is not null && t.AtLow != t.AtHigh)?.Factor;
    }

    /// <summary>Everything as one JSON object.</summary>
    public ResultDocument Document() => Document(ResultOptions.Default);

    /// <summary>Everything as one JSON object, with language and units for its texts.</summary>
    /// <exception cref="ArgumentNullException">The options are missing.</exception>
    public ResultDocument Document(ResultOptions options) => ResultDocument.Of(
        ResultKind.Sweep, StudyRows.Shape, Figures, Guard.NotNull(options, nameof(options)).WithTitle(Study.Title));

    private static T Of<T>(IReadOnlyList<KeyValuePair<string, T>> all, string name) => all.Any(a => a.Key == name)
        ? all.First(a => a.Key == name).Value
        : throw new ArgumentException("There is no output \"" + name + "\"; there are: " + string.Join(", ", all.Select(a => a.Key)) + ".");
}
