namespace Driveline.Fasteners;

/// <summary>Style of bolt, as far as it decides how thick the unthreaded body may be.</summary>
public enum BodyStyle
{
    /// <summary>Not known: the envelope of every style tabulated for the size.</summary>
    NotKnown = 0,

    /// <summary>Hexagon cap screw or hexagon bolt of the finer tolerance: ASME B18.2.1 Table 6, ISO 4014.</summary>
    HexCapScrew,

    /// <summary>
    /// Round-head square-neck (carriage) bolt and the wider hexagon-bolt body: ASME B18.5. The body may exceed the nominal size.
    /// </summary>
    SquareNeckBolt,
}
