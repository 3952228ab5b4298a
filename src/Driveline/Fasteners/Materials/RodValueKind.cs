namespace Driveline.Fasteners;

/// <summary>What a printed strength of a rod material means.</summary>
internal enum RodValueKind
{
    /// <summary>Not known; treated as a minimum.</summary>
    NotKnown = 0,

    /// <summary>A specified or expected minimum: a rod may be much stronger.</summary>
    Minimum,

    /// <summary>A typical or average value: a rod may be a little weaker or stronger.</summary>
    Typical,
}
