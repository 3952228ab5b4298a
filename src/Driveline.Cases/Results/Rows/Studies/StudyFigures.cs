namespace Driveline.Cases.Results;

/// <summary>What a study says of its rows, as plain figures.</summary>
internal sealed class StudyFigures
{
    public long Rows { get; set; }

    public long Failed { get; set; }

    public double Seconds { get; set; }

    public double RowsPerSecond => Seconds > 0 ? Rows / Seconds : 0;

    public IReadOnlyList<KeyValuePair<string, QuantileFigures>> Quantiles { get; set; } = [];

    public IReadOnlyList<KeyValuePair<string, IReadOnlyList<KeyValuePair<string, double>>>> Shares { get; set; } = [];

    public IReadOnlyList<IndexFigures> Sensitivity { get; set; } = [];

    public string? SensitivityRefused { get; set; }

    public IReadOnlyList<EffectFigures> Morris { get; set; } = [];

    public IReadOnlyList<RankFigures> RankCorrelation { get; set; } = [];

    public IReadOnlyList<SwingFigures> Tornado { get; set; } = [];

    public IReadOnlyList<FailureFigures> Failures { get; set; } = [];
}
