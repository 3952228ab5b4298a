namespace Driveline.Quantities;

/// <summary>Which of the three values of a band is meant.</summary>
internal enum BandPoint
{
    /// <summary>Not known: taken as expected.</summary>
    NotKnown = 0,

    /// <summary>The low end.</summary>
    Low,

    /// <summary>The expected value.</summary>
    Expected,

    /// <summary>The high end.</summary>
    High,
}
