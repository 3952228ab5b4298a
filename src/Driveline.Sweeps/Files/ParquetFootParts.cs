namespace Driveline.Sweeps.Files;

/// <summary>Reads the parts of a foot.</summary>
internal static class ParquetFootParts
{
    /// <summary>A column; null for the root of all.</summary>
    public static FileColumn? Column(ref CompactReader reader)
    {
        int id = 0;
        long physical = -1;
        long repetition = 0;
        string name = string.Empty;
        while (reader.TryField(ref id, out int type))
        {
            switch (id)
            {
                case 1:
                    physical = reader.Number();
                    break;
                case 3:
                    repetition = reader.Number();
                    break;
                case 4:
                    name = reader.Text();
                    break;
                default:
                    reader.Skip(type);
                    break;
            }
        }

        ColumnKind? kind = (physical, repetition) switch
        {
            (2, _) => ColumnKind.Row,
            (5, 0) => ColumnKind.Number,
            (5, _) => ColumnKind.MaybeNumber,
            (6, 0) => ColumnKind.Word,
            (6, _) => ColumnKind.MaybeWord,
            _ => null,
        };
        return kind is { } known ? new FileColumn(name, known, 0) : null;
    }

    public static GroupSizes Group(ref CompactReader reader)
    {
        int id = 0;
        int rows = 0;
        int[] sizes = [];
        while (reader.TryField(ref id, out int type))
        {
            if (id == 1)
            {
                sizes = new int[reader.Items(out _)];
                for (int c = 0; c < sizes.Length; c++)
                {
                    sizes[c] = Size(ref reader);
                }
            }
            else if (id == 3)
            {
                rows = (int)reader.Number();
            }
            else
            {
                reader.Skip(type);
            }
        }

        return new GroupSizes(rows, sizes);
    }

    public static KeyValuePair<string, string> Word(ref CompactReader reader)
    {
        int id = 0;
        string key = string.Empty;
        string value = string.Empty;
        while (reader.TryField(ref id, out int type))
        {
            switch (id)
            {
                case 1:
                    key = reader.Text();
                    break;
                case 2:
                    value = reader.Text();
                    break;
                default:
                    reader.Skip(type);
                    break;
            }
        }

        return new KeyValuePair<string, string>(key, value);
    }

    private static int Size(ref CompactReader reader)
    {
        int size = 0;
        int id = 0;
        while (reader.TryField(ref id, out int type))
        {
            if (id != 3)
            {
                reader.Skip(type);
                continue;
            }

            int inner = 0;
            while (reader.TryField(ref inner, out int innerType))
            {
                if (inner == 7)
                {
                    size = (int)reader.Number();
                }
                else
                {
                    reader.Skip(innerType);
                }
            }
        }

        return size;
    }
}
