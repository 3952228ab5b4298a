namespace Driveline.Sweeps.Files;

/// <summary>Rows of a group, and bytes of each of its columns.</summary>
internal sealed record GroupSizes(int Rows, int[] Columns)
{
    public long Bytes => Columns.Sum(c => (long)c);
}
