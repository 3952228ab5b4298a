namespace Driveline.Cases;

/// <summary>What the shear plane passes through.</summary>
public enum BoltPlane
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>The plain shank.</summary>
    Shank,

    /// <summary>The thread.</summary>
    Thread,

    /// <summary>A turned neck or groove.</summary>
    Neck,

    /// <summary>A step in diameter.</summary>
    Step,

    /// <summary>A taper.</summary>
    Taper,
}
