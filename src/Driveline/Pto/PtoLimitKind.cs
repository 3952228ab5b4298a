namespace Driveline.Pto;

/// <summary>Who sets a power limit.</summary>
internal enum PtoLimitKind
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>An edition of a standard: holds for the type.</summary>
    Standard,

    /// <summary>The manual of one tractor: holds for that tractor and shows what makers allow.</summary>
    TractorManual,
}
