using Driveline.Chains;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Protection;

/// <summary>What one element carried in a simulation, at its own input, against what damages it.</summary>
public sealed class SimulatedLoad
{
    internal SimulatedLoad(Element element, double? withNm, double? withoutNm, Answer damagedWith, Answer damagedWithout)
    {
        Element = element;
        WithNm = withNm;
        WithoutNm = withoutNm;
        DamagedWith = damagedWith;
        DamagedWithout = damagedWithout;
    }

    /// <summary>The part or device.</summary>
    public Element Element { get; }

    /// <summary>Its largest torque with the protection as fitted; null when not known.</summary>
    public Torque? WithProtection => WithNm is { } nm ? Torque.FromNewtonMeters(nm) : null;

    /// <summary>Its largest torque when no device can act; null when not known.</summary>
    public Torque? WithoutProtection => WithoutNm is { } nm ? Torque.FromNewtonMeters(nm) : null;

    /// <summary>The torque that damages it; null for a device or when not known.</summary>
    public TorqueBand? DamagedAt => (Element as Part)?.Limit?.DamagedAt;

    /// <summary>Is it damaged with the protection as fitted? Not known too when it stays below in a blow that nothing bounds.</summary>
    public Answer DamagedWith { get; }

    /// <summary>Would it be damaged without protection?</summary>
    public Answer DamagedWithout { get; }

    internal double? WithNm { get; }

    internal double? WithoutNm { get; }

    /// <inheritdoc/>
    public override string ToString() => Element.Name + ": damaged " + DamagedWith + ", without protection " + DamagedWithout;
}
