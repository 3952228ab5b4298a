using Driveline.Chains;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>What an element carried in all the runs of a span, at its own place: lowest, expected and highest. Immutable.</summary>
public sealed class SpannedLoad
{
    internal SpannedLoad(Element element, TorqueBand? with, TorqueBand? without)
    {
        Element = element;
        WithProtection = with;
        WithoutProtection = without;
    }

    /// <summary>The part or device.</summary>
    public Element Element { get; }

    /// <summary>Its highest torques with the devices as fitted; null when not known.</summary>
    public TorqueBand? WithProtection { get; }

    /// <summary>Its highest torques when no device can act; null when not known.</summary>
    public TorqueBand? WithoutProtection { get; }

    /// <summary>The torque that damages it; null for a device or when not known.</summary>
    public TorqueBand? DamagedAt => (Element as Part)?.Limit?.DamagedAt;

    /// <inheritdoc/>
    public override string ToString() => Element.Name + ": " + (WithProtection ?? WithoutProtection);
}
