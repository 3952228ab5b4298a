namespace Driveline.Torsion;

/// <summary>
/// Where the energy of a run came from and went, J: Start + Drive + Torques + HeldRotors = Damping + Viscous + Slip + Impact + Stored.
/// </summary>
internal readonly struct EnergyBalance
{
    public EnergyBalance(Mechanism m, RunState x, EnergyMeter meter)
    {
        Start = meter.Start;
        Drive = meter.Drive;
        Torques = meter.Torque.Sum();
        HeldRotors = meter.Held.Sum();
        Damping = meter.Damper.Sum();
        Viscous = 0;
        for (int i = 0; i < m.Rotors; i++)
        {
            Viscous += m.Viscous[i] * meter.SpeedSquare[i];
        }

        Slip = meter.Slip.Sum();
        Impact = meter.Impact.Sum();
        Stored = EnergyMeter.Stored(m, x);
    }

    /// <summary>Motion and spring energy at the start.</summary>
    public double Start { get; }

    /// <summary>Work of the drive.</summary>
    public double Drive { get; }

    /// <summary>Work of the applied torques.</summary>
    public double Torques { get; }

    /// <summary>Work of what holds the held rotors.</summary>
    public double HeldRotors { get; }

    /// <summary>Heat in the damping of shafts and obstacles.</summary>
    public double Damping { get; }

    /// <summary>Energy into viscous loads.</summary>
    public double Viscous { get; }

    /// <summary>Heat of slip, friction and yielding, and what a break set free from springs.</summary>
    public double Slip { get; }

    /// <summary>Energy that rigid obstacles took at once.</summary>
    public double Impact { get; }

    /// <summary>Motion and spring energy at the end.</summary>
    public double Stored { get; }
}
