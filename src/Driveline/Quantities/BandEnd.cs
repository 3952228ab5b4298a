namespace Driveline.Quantities;

/// <summary>What the low or high end of a band means.</summary>
internal enum BandEnd
{
    /// <summary>About 95 of 100 values lie within; probabilities give this end a tail.</summary>
    Interval95 = 0,

    /// <summary>Nothing lies beyond: a specified minimum or maximum, or a stated bound.</summary>
    Limit = 1,
}
