namespace Driveline.ShearBolts;

/// <summary>Which part of the bolt the shear plane cuts.</summary>
public enum PlaneThrough
{
    /// <summary>Not known: the band spans thread and shank.</summary>
    NotKnown = 0,

    /// <summary>The plain, unthreaded shank.</summary>
    Shank,

    /// <summary>The thread.</summary>
    Thread,

    /// <summary>A turned neck (groove).</summary>
    Neck,

    /// <summary>The thinner side of a step in diameter.</summary>
    Step,

    /// <summary>A taper, by its diameter in the shear plane.</summary>
    Taper,
}
