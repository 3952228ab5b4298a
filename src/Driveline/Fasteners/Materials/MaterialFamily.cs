namespace Driveline.Fasteners;

/// <summary>Kind of metal, as far as it decides how a fastener breaks.</summary>
internal enum MaterialFamily
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Low or medium carbon steel, not hardened.</summary>
    MildSteel,

    /// <summary>Low or medium carbon steel, strengthened by cold work.</summary>
    ColdWorkedMildSteel,

    /// <summary>Steel, quenched and tempered.</summary>
    QuenchedSteel,

    /// <summary>Austenitic stainless steel.</summary>
    StainlessSteel,

    /// <summary>Aluminium alloy.</summary>
    AluminiumAlloy,

    /// <summary>Brass, bronze or other copper alloy.</summary>
    CopperAlloy,

    /// <summary>Hardened spring steel, as in spring pins.</summary>
    SpringSteel,
}
