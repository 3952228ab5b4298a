using UnitsNet;

namespace Driveline.Loads;

/// <summary>What one clutch slipped in a simulation.</summary>
public sealed class SimulatedSlip
{
    internal SimulatedSlip(string clutch, double energyJ, double angleRad)
    {
        Clutch = clutch;
        EnergyJ = energyJ;
        AngleRad = angleRad;
    }

    /// <summary>Name of the clutch; "PTO clutch" for the tractor's.</summary>
    public string Clutch { get; }

    /// <summary>Heat it made.</summary>
    public Energy Heat => Energy.FromJoules(EnergyJ);

    /// <summary>Angle between its two sides, at the PTO.</summary>
    public Angle Slip => Angle.FromRadians(AngleRad);

    /// <summary>The clutch, how far it slipped and how much heat it took.</summary>
    public override string ToString() => FormattableString.Invariant($"{Clutch}: {Slip.Degrees:G4}°, {Heat.Joules:G4} J");

    internal double EnergyJ { get; }

    internal double AngleRad { get; }
}
