namespace Driveline.Loads;

/// <summary>What a strike stops.</summary>
public enum StrikePlace
{
    /// <summary>Not known: taken as if it had stopped the driveline.</summary>
    NotKnown = 0,

    /// <summary>The rotor at its blades: a stump, a rock, a stake.</summary>
    Blade,

    /// <summary>Something before the rotor: a gearbox that seizes, a wrapped or jammed shaft.</summary>
    Driveline,

    /// <summary>The round pan under the rotor, which slides over the obstacle.</summary>
    Pan,

    /// <summary>Deck, frame, skids or hitch.</summary>
    Deck,
}
