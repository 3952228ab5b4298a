using Driveline.Chains;

namespace Driveline.Protection;

/// <summary>The probability that an overload damages one part before a device acts.</summary>
internal sealed class PartRisk
{
    internal PartRisk(Part part, Probability damagedFirst)
    {
        Part = part;
        DamagedFirst = damagedFirst;
    }

    /// <summary>The part.</summary>
    public Part Part { get; }

    /// <summary>Probability that a torque that rises without end damages it before any device acts.</summary>
    public Probability DamagedFirst { get; }
}
