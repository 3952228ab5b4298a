namespace Driveline.Clutches;

/// <summary>How the ends of a coil spring are made; decides its active coils and solid length.</summary>
public enum CoilEnds
{
    /// <summary>Not known: the longest solid length, and a rate that spans all kinds.</summary>
    NotKnown = 0,

    /// <summary>Cut off: Na = Nt, Ls = d · (Nt + 1).</summary>
    Plain,

    /// <summary>Cut off and ground flat: Na = Nt - 1, Ls = d · Nt.</summary>
    PlainGround,

    /// <summary>Closed, not ground: Na = Nt - 2, Ls = d · (Nt + 1).</summary>
    Squared,

    /// <summary>Closed and ground flat: Na = Nt - 2, Ls = d · Nt.</summary>
    SquaredGround,
}
