namespace Driveline.Reports.Pictures;

/// <summary>Which end of a text stands at its place.</summary>
internal enum TextAlign
{
    /// <summary>Its start.</summary>
    Start = 0,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
