namespace Driveline.Torsion;

/// <summary>Memory that a transient runs in, owned by the caller. Runs after the first allocate nothing.</summary>
/// <remarks>Not for two threads at a time: give each thread its own. The result of a run is valid until the next run in it.</remarks>
public sealed class TransientWorkspace
{
    private int rotors = -1;
    private int links = -1;
    private int torques = -1;

    internal RunState State { get; private set; } = null!;

    internal Plan Plan { get; private set; } = null!;

    internal StepSeries Series { get; private set; } = null!;

    internal EnergyMeter Energy { get; private set; } = null!;

    internal RunLog Log { get; private set; } = null!;

    internal ModalStretch Stretch { get; private set; } = null!;

    /// <summary>True when runs are to be followed by series throughout, as those are whose motion has no modes.</summary>
    internal bool UsesSeries { get; set; }

    internal EventSearch Events { get; } = new();

    internal TransientResult? Result { get; set; }

    /// <summary>Torque in a link in the present state, referred, N·m.</summary>
    internal double TorqueNow(Mechanism m, int link)
    {
        Plan.Build(m, State);
        Series.Compute(m, State, Plan, 0, 0);
        return Series.Torque[link * StepSeries.Stride];
    }

    /// <summary>True when a mechanism of that shape ran in it last.</summary>
    internal bool Fits(Mechanism m) => m.Rotors == rotors && m.Links == links && m.Torque.Length == torques;

    internal void FitTo(Mechanism m)
    {
        if (Fits(m))
        {
            return;
        }

        rotors = m.Rotors;
        links = m.Links;
        torques = m.Torque.Length;
        State = new RunState(rotors, links);
        Plan = new Plan(rotors, links);
        Series = new StepSeries(rotors, links);
        Energy = new EnergyMeter(rotors, links, torques);
        Log = new RunLog(links);
        Stretch = new ModalStretch(rotors, links);
        Result = null;
    }
}
