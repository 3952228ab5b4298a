using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Files;

/// <summary>A group of rows with its bytes as they stand in the file.</summary>
internal sealed class GroupSlot(StudyPlan plan, int columns)
{
    public RowGroup Rows { get; } = new(plan);

    public ByteBuffer Bytes { get; } = new();

    /// <summary>Room for one column.</summary>
    public ByteBuffer Page { get; } = new();

    /// <summary>Bytes of each column; zeros in a format that is not cut into columns.</summary>
    public int[] Sizes { get; } = new int[columns];
}
