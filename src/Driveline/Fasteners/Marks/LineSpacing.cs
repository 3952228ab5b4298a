namespace Driveline.Fasteners;

/// <summary>How radial lines on a bolt head are spaced.</summary>
public enum LineSpacing
{
    /// <summary>Not looked at.</summary>
    NotKnown = 0,

    /// <summary>Evenly around the head.</summary>
    Even,

    /// <summary>Three lines as an upside-down T: two in one line, one across.</summary>
    UpsideDownT,

    /// <summary>Close together in one part of the head.</summary>
    Grouped,
}
