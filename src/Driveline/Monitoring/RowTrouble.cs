namespace Driveline.Monitoring;

/// <summary>Why a row of a log was left out.</summary>
public enum RowTrouble
{
    /// <summary>The number of its cells is not that of the head.</summary>
    Cells = 0,

    /// <summary>A cell is no number.</summary>
    Number,

    /// <summary>It is longer than a row can be.</summary>
    Length,

    /// <summary>It is no CAN frame with its time.</summary>
    Frame,

    /// <summary>A value is not finite, or an error or not available on the bus.</summary>
    NotFinite,

    /// <summary>A value is out of range.</summary>
    OutOfRange,

    /// <summary>Its time lies before that of a sample already taken.</summary>
    Late,

    /// <summary>Its time is that of the sample before.</summary>
    Duplicate,
}
