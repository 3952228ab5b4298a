namespace Driveline.Fasteners;

/// <summary>
/// Which row of a shear-to-tensile ratio table applies to a fastener, named after the ISO property class it behaves like.
/// </summary>
public enum ShearClass
{
    /// <summary>Not known: only the widest ratio is safe.</summary>
    NotKnown = 0,

    /// <summary>Not hardened, headed soft, like class 4.6: SAE 1, ASTM A307.</summary>
    Soft46,

    /// <summary>Not hardened, like class 5.6.</summary>
    Soft56,

    /// <summary>Cold worked, like class 4.8.</summary>
    ColdWorked48,

    /// <summary>Cold worked, like class 5.8.</summary>
    ColdWorked58,

    /// <summary>Cold worked, like class 6.8.</summary>
    ColdWorked68,

    /// <summary>Quenched and tempered, like class 8.8: SAE 5, ASTM A449 and A325.</summary>
    Quenched88,

    /// <summary>Quenched and tempered, like class 9.8: SAE 7, ASTM A354 BC.</summary>
    Quenched98,

    /// <summary>Quenched and tempered, like class 10.9: SAE 8, ASTM A490 and A354 BD.</summary>
    Quenched109,

    /// <summary>Quenched and tempered, like class 12.9: ASTM A574.</summary>
    Quenched129,

    /// <summary>Austenitic stainless steel.</summary>
    Stainless,

    /// <summary>Aluminium alloy.</summary>
    Aluminium,

    /// <summary>Copper alloy.</summary>
    Copper,

    /// <summary>
    /// Not hardened, cold headed and not annealed, of low carbon steel: SAE 2. In long or thick sizes it may be as soft as class 4.6.
    /// </summary>
    ColdHeaded,

    /// <summary>A plain pin turned from bar of steel that is not hardened.</summary>
    BarSteel,
}
