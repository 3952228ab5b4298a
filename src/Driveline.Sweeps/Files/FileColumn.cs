namespace Driveline.Sweeps.Files;

/// <summary>A column of a file.</summary>
internal readonly record struct FileColumn(string Name, ColumnKind Kind, int Place)
{
    /// <summary>The columns of a study: row, factors, outputs, error. Place: of a factor 0 and up; of an output -1 and down.</summary>
    public static FileColumn[] Of(StudyPlan plan) =>
    [
        new("row", ColumnKind.Row, 0),
        .. plan.Study.Factors.Select((f, d) => new FileColumn(f.Name, f.Words is null ? ColumnKind.Number : ColumnKind.Word, d)),
        .. plan.Outputs.Select((o, k) => new FileColumn(o.Name, o.IsWord ? ColumnKind.MaybeWord : ColumnKind.MaybeNumber, -1 - k)),
        new("error", ColumnKind.MaybeWord, int.MinValue),
    ];
}
