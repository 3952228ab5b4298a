namespace Driveline.Tests.Consistency;

/// <summary>What a row of a validation shows.</summary>
internal enum ValidationKind
{
    /// <summary>The document's inputs went in, our answer was held against the document's.</summary>
    Computed = 0,

    /// <summary>Our answer was held against another way of reckoning it.</summary>
    SecondMethod,

    /// <summary>The document's number must lie inside our band.</summary>
    Contained,

    /// <summary>The number in the code was held against that in the table: shows a slip of the pen, not an error of the copy.</summary>
    Copied,

    /// <summary>No row: it counts the rows, or keeps something out.</summary>
    Guard,
}
