namespace Driveline.Clutches;

/// <summary>How the clamp force is taken to spread over a friction face.</summary>
public enum PressureAssumption
{
    /// <summary>Not known; low and high span both assumptions.</summary>
    SpansBoth = 0,

    /// <summary>Uniform pressure: new, rigid, flat faces.</summary>
    UniformPressure,

    /// <summary>Uniform wear: run-in faces, pressure times radius constant.</summary>
    UniformWear,
}
