namespace Driveline.Cases;

/// <summary>What was struck.</summary>
public enum StruckThing
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>The ground.</summary>
    Ground,

    /// <summary>A stone.</summary>
    Stone,

    /// <summary>A stump or root.</summary>
    Stump,

    /// <summary>A post, wall or kerb.</summary>
    Post,

    /// <summary>Wire, rope or net that wound up.</summary>
    WireOrRope,

    /// <summary>A slug of the crop or material.</summary>
    Slug,

    /// <summary>A piece of metal.</summary>
    Metal,
}
