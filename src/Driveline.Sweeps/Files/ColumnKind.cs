namespace Driveline.Sweeps.Files;

/// <summary>What a column holds.</summary>
internal enum ColumnKind
{
    /// <summary>Number of the row.</summary>
    Row = 0,

    /// <summary>A number that every row has.</summary>
    Number,

    /// <summary>A number, or nothing when it is not known.</summary>
    MaybeNumber,

    /// <summary>A word that every row has.</summary>
    Word,

    /// <summary>A word, or nothing.</summary>
    MaybeWord,
}
