using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Files;

/// <summary>How rows are laid out in a file: a head, groups one after the other, a foot. The same rows give the same bytes.</summary>
internal abstract class RowFormat
{
    protected RowFormat(StudyPlan plan)
    {
        Plan = plan;
        Columns = FileColumn.Of(plan);
    }

    public FileColumn[] Columns { get; }

    protected StudyPlan Plan { get; }

    /// <summary>True for the paths that are written.</summary>
    public static bool IsHeld(string path) => IsCsv(path) || IsParquet(path);

    public static bool IsCsv(string path) => path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    public static bool IsParquet(string path) => path.EndsWith(".parquet", StringComparison.OrdinalIgnoreCase);

    /// <summary>The format that a path ends with.</summary>
    public static RowFormat Of(string path, StudyPlan plan) => IsCsv(path) ? new CsvFormat(plan) : new ParquetFormat(plan);

    /// <summary>What the file begins with.</summary>
    public abstract byte[] Head();

    /// <summary>Lays the rows of a slot out into its bytes.</summary>
    public abstract void Encode(GroupSlot slot);

    /// <summary>
    /// Reads the next group of a stream back into the rows that the slot stands for, whose factors are sampled; false when it is not all
    /// there, or of other rows.
    /// </summary>
    public abstract bool TryRead(Stream stream, GroupSlot slot);

    /// <summary>What the file ends with, when the groups have these sizes.</summary>
    public abstract byte[] Foot(IReadOnlyList<GroupSizes> groups);

    protected static void Read(RowGroup rows, FileColumn column, int k, double number, string? word)
    {
        if (column.Place >= 0)
        {
            return;
        }

        if (column.Place == int.MinValue)
        {
            rows.Errors[k] = word;
            rows.Failed += word is null ? 0 : 1;
        }
        else if (column.Kind == ColumnKind.MaybeWord)
        {
            rows.Words[-1 - column.Place][k] = word is null ? null : string.Intern(word);
        }
        else
        {
            rows.Numbers[-1 - column.Place][k] = number;
        }
    }
}
