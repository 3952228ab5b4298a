namespace Driveline.Cases;

/// <summary>How the bolt fits its holes.</summary>
public enum HoleWear
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>Without play.</summary>
    Tight,

    /// <summary>With play.</summary>
    Worn,
}
