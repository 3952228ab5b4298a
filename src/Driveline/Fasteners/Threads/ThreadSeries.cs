namespace Driveline.Fasteners;

/// <summary>Which series a screw thread belongs to.</summary>
internal enum ThreadSeries
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Unified coarse, ASME B1.1.</summary>
    Unc,

    /// <summary>Unified fine, ASME B1.1.</summary>
    Unf,

    /// <summary>ISO metric coarse pitch, ISO 261.</summary>
    MetricCoarse,

    /// <summary>ISO metric fine pitch, ISO 261.</summary>
    MetricFine,
}
