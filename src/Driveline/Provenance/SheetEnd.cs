namespace Driveline.Provenance;

/// <summary>Which end of a band a line of a calculation belongs to.</summary>
public enum SheetEnd
{
    /// <summary>No end: the calculation has one result.</summary>
    Whole = 0,

    /// <summary>The lowest.</summary>
    Lowest,

    /// <summary>The most likely.</summary>
    MostLikely,

    /// <summary>The highest.</summary>
    Highest,
}
