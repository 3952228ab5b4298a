using UnitsNet;

namespace Driveline.Protection;

/// <summary>A part that a bolt guards, and the torque at its own input that it must then take without damage.</summary>
public sealed class GuardedPart
{
    internal GuardedPart(string name, Torque? mustStand)
    {
        Name = name;
        MustStand = mustStand;
    }

    /// <summary>The part's name.</summary>
    public string Name { get; }

    /// <summary>The most that a strong bolt on a free hub lets through to it; null when that has no known end.</summary>
    public Torque? MustStand { get; }

    /// <inheritdoc/>
    public override string ToString() => Name + ": " + (MustStand is { } torque
        ? FormattableString.Invariant($"{torque.NewtonMeters:G4} N·m") : "not known");
}
