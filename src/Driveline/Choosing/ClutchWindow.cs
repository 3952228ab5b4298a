using UnitsNet;

namespace Driveline.Choosing;

/// <summary>The settings of a clutch between which it is quiet and guards.</summary>
public sealed class ClutchWindow
{
    internal ClutchWindow(ClutchPoint lowest, ClutchPoint highest)
    {
        Lowest = lowest;
        Highest = highest;
    }

    /// <summary>The lowest setting that stays quiet.</summary>
    public ClutchPoint Lowest { get; }

    /// <summary>The highest setting that guards.</summary>
    public ClutchPoint Highest { get; }

    /// <summary>Lowest slip torque to set: expected, while slipping, at the clutch.</summary>
    public Torque LowTorque => Lowest.Torque;

    /// <summary>Highest slip torque to set: expected, while slipping, at the clutch.</summary>
    public Torque HighTorque => Highest.Torque;

    /// <summary>True when a setting lies inside.</summary>
    public bool Holds(Torque setting) => setting.NewtonMeters >= Lowest.TorqueNm && setting.NewtonMeters <= Highest.TorqueNm;

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Lowest.TorqueNm:G4} to {Highest.TorqueNm:G4} N·m");
}
