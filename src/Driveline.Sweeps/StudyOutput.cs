using Driveline.Quantities;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps;

/// <summary>What a study computes of each row. Immutable.</summary>
public sealed class StudyOutput
{
    private StudyOutput(string name, bool isWord, RowOutput? row, RowWord? word, ColumnOutput? columns, CaseOutput? ofCase)
    {
        Name = Guard.NotBlank(name, "Name of an output", nameof(name));
        IsWord = isWord;
        Row = row;
        Word = word;
        Columns = columns;
        OfCase = ofCase;
    }

    /// <summary>The name of its column.</summary>
    public string Name { get; }

    /// <summary>True when its values are words, such as a verdict; false when they are numbers.</summary>
    public bool IsWord { get; }

    internal RowOutput? Row { get; }

    internal RowWord? Word { get; }

    internal ColumnOutput? Columns { get; }

    internal CaseOutput? OfCase { get; }

    /// <summary>A number of each row.</summary>
    /// <exception cref="ArgumentException">No name, or no delegate.</exception>
    public static StudyOutput Of(string name, RowOutput output) =>
        new(name, false, Guard.NotNull(output, nameof(output)), null, null, null);

    /// <summary>A word of each row.</summary>
    /// <exception cref="ArgumentException">No name, or no delegate.</exception>
    public static StudyOutput OfWords(string name, RowWord output) =>
        new(name, true, null, Guard.NotNull(output, nameof(output)), null, null);

    /// <summary>A number of each row, computed many rows at once.</summary>
    /// <exception cref="ArgumentException">No name, or no delegate.</exception>
    public static StudyOutput OfColumns(string name, ColumnOutput output) =>
        new(name, false, null, null, Guard.NotNull(output, nameof(output)), null);

    internal static StudyOutput Of(CaseOutput output) => new(output.Name, output.IsWord, null, null, null, output);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
