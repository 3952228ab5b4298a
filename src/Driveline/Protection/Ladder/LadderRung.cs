using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>One rung of the torque ladder: a torque with its name, referred to the PTO.</summary>
public sealed class LadderRung
{
    internal LadderRung(LadderRungKind kind, string? name, TorqueBand torque)
    {
        Kind = kind;
        Name = name;
        Torque = torque;
    }

    /// <summary>What it stands for.</summary>
    public LadderRungKind Kind { get; }

    /// <summary>Name of the device or part; null for work and engagement.</summary>
    public string? Name { get; }

    /// <summary>The torque, referred to the PTO.</summary>
    public TorqueBand Torque { get; }

    /// <summary>What it stands for, and its torque with its unit.</summary>
    public override string ToString() => (Name ?? Kind.ToString()) + ": " + Torque;
}
