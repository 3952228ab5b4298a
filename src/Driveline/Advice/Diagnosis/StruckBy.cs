namespace Driveline.Advice;

/// <summary>What of the machine hit the obstacle.</summary>
internal enum StruckBy
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>A blade: the blow goes into the driveline.</summary>
    Blade,

    /// <summary>The pan under the rotor: the blow lifts or stops the machine and mostly does not pass the driveline.</summary>
    Pan,

    /// <summary>The deck or frame: the blow reaches hitch and tractor without passing the driveline.</summary>
    Deck,
}
