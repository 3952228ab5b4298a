namespace Driveline.Pto;

/// <summary>Flank form of a PTO stub's splines.</summary>
internal enum SplineForm
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Straight-sided splines.</summary>
    Straight,

    /// <summary>Involute splines.</summary>
    Involute,
}
