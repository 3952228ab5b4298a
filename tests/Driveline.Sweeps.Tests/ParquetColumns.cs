using Parquet;
using Parquet.Schema;

namespace Driveline.Sweeps.Tests;

/// <summary>Reads columns with another reader.</summary>
internal static class ParquetColumns
{
    public static async Task<Array> Read(ParquetRowGroupReader group, DataField field)
    {
        int rows = checked((int)group.RowCount);
        if (field.ClrType == typeof(long))
        {
            var numbers = new long[rows];
            await group.ReadAsync<long>(field, numbers);
            return numbers;
        }

        if (field.ClrType == typeof(string) || field.ClrType == typeof(ReadOnlyMemory<char>))
        {
            var words = new string?[rows];
            await group.ReadAsync(field, words.AsMemory());
            return words!;
        }

        if (field.IsNullable)
        {
            var maybe = new double?[rows];
            await group.ReadAsync<double>(field, maybe);
            return maybe;
        }

        var all = new double[rows];
        await group.ReadAsync<double>(field, all);
        return all;
    }
}
