namespace Driveline.ShearBolts;

/// <summary>How several bolts share the load.</summary>
public enum HoleFit
{
    /// <summary>Not known: taken as worn.</summary>
    NotKnown = 0,

    /// <summary>Worn or loose holes: the bolts may part one by one.</summary>
    Worn,

    /// <summary>Close holes: the bolts share equally.</summary>
    Tight,
}
