using Driveline.Findings;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>What a run found. Valid until the next run in the same workspace.</summary>
/// <remarks>Torque is positive when it drives from the element's first to its second rotor. Speeds are the rotors' own.</remarks>
public sealed class TransientResult
{
    private readonly TransientWorkspace workspace;
    private TorsionModel model = null!;
    private double end;

    internal TransientResult(TransientWorkspace workspace) => this.workspace = workspace;

    /// <summary>
    /// True when the run reached its end. When not, peaks and energies are those up to where it stopped: not safe to rely on.
    /// </summary>
    public bool IsComplete => !workspace.Log.IsCutOff;

    /// <summary>Time reached.</summary>
    public Duration Time => Duration.FromSeconds(workspace.State.Time);

    /// <summary>Number of events.</summary>
    public int EventCount => workspace.Log.Count;

    /// <summary>Number of steps taken, and of intervals searched for a peak by their own.</summary>
    public long StepCount => workspace.Log.Steps;

    /// <summary>Work of the run: terms of modes and of series, over all links and rotors; one to two nanoseconds each.</summary>
    /// <remarks>Counted, not timed: the same run has the same work on every machine.</remarks>
    public long Work => workspace.Log.Work;

    /// <summary>Energy not accounted for as a part of all energy that took part: a measure of the arithmetic.</summary>
    public double EnergyImbalance => workspace.Energy.Imbalance(model.Mechanism, workspace.State);

    /// <summary>Work the drive has done; negative when it was driven.</summary>
    public Energy DriveWork => Joules(workspace.Energy.Drive);

    /// <summary>Motion and spring energy left in the model, without held rotors.</summary>
    public Energy StoredEnergy => Joules(EnergyMeter.Stored(model.Mechanism, workspace.State));

    /// <summary>What a caller must notice: a run that stopped early, a blow without a bound, poor arithmetic.</summary>
    public IReadOnlyList<Finding> Findings => TorsionFindings.Of(this, model, workspace.Log, end);

    /// <summary>Event number index, in order of time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no event of that number.</exception>
    public TransientEvent Event(int index)
    {
        if (index < 0 || index >= workspace.Log.Count)
        {
            throw new ArgumentOutOfRangeException(
                nameof(index), FormattableString.Invariant($"Event number must be from 0 to {workspace.Log.Count - 1}; got {index}."));
        }

        EventRecord record = workspace.Log[index];
        return new TransientEvent(record.Kind, record.Link < 0 ? model.DriveName! : model.LinkName(record.Link), record.Time);
    }

    /// <summary>Motion and spring energy in the model at the start, without held rotors.</summary>
    public Energy StartEnergy => Joules(workspace.Energy.Start);

    /// <summary>Largest torque in the driving direction.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public TorquePeak Peak(string element)
    {
        int l = model.LinkIndex(element);
        RunLog log = workspace.Log;
        return new TorquePeak(log.Struck[l] ? double.PositiveInfinity : log.Most[l], model.Mechanism.LinkRatio[l], log.MostAt[l]);
    }

    /// <summary>Largest torque against the driving direction, as a number of 0 or more.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public TorquePeak ReversePeak(string element)
    {
        int l = model.LinkIndex(element);
        return new TorquePeak(workspace.Log.Least[l], model.Mechanism.LinkRatio[l], workspace.Log.LeastAt[l]);
    }

    /// <summary>Largest torque in an element's spring alone, without its damper, in the driving direction; of a run with springs.</summary>
    /// <exception cref="ArgumentException">There is no such element, or it has no spring.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs.</exception>
    public TorquePeak SpringPeak(string element) => Spring(element, workspace.Log.Twist, workspace.Log.TwistAt);

    /// <summary>The same against the driving direction, as a number of 0 or more.</summary>
    /// <exception cref="ArgumentException">There is no such element, or it has no spring.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs.</exception>
    public TorquePeak ReverseSpringPeak(string element) => Spring(element, workspace.Log.ReverseTwist, workspace.Log.ReverseTwistAt);

    /// <summary>
    /// When a coupling first broke or slipped, a friction load first moved, or an obstacle first yielded; null when it did not.
    /// </summary>
    /// <remarks>A coupling or load that slips from the start, because the speeds differ, has not tripped by that.</remarks>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Duration? TripTime(string element)
    {
        double seconds = workspace.Log.FirstSlip[model.LinkIndex(element)];
        return double.IsNaN(seconds) ? null : Duration.FromSeconds(seconds);
    }

    /// <summary>Slip of an element since the start, at its own speed: driving side less driven side.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Angle SlipAngle(string element) => Angle.FromRadians(SlipRad(element));

    /// <summary>Heat made by slip in an element, or spent in an obstacle's yielding or in a spring that a break set free.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Energy SlipEnergy(string element) => Joules(workspace.Energy.Slip[model.LinkIndex(element)]);

    /// <summary>Heat made by an element's damping.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Energy DampingEnergy(string element) => Joules(workspace.Energy.Damper[model.LinkIndex(element)]);

    /// <summary>Energy of motion that a rigid obstacle took at once.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Energy ImpactEnergy(string element) => Joules(workspace.Energy.Impact[model.LinkIndex(element)]);

    /// <summary>Energy into a viscous load, or work done by an applied torque.</summary>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public Energy LoadEnergy(string load)
    {
        int k = 0;
        Mechanism m = model.Mechanism;
        foreach (LoadPart part in model.LoadParts)
        {
            if (part.Name == load)
            {
                double r = m.RotorRatio[part.Rotor];
                return Joules(
                    part.IsViscous ? part.Coefficient * r * r * workspace.Energy.SpeedSquare[part.Rotor] : workspace.Energy.Torque[k]);
            }

            k += part.IsViscous ? 0 : 1;
        }

        throw new ArgumentException(
            "There is no load \"" + load + "\"; there are: " + string.Join(", ", model.LoadParts.Select(p => p.Name)) + ".", nameof(load));
    }

    /// <summary>Work that whatever holds a held rotor has done on the driveline.</summary>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    public Energy HeldWork(string rotor) => Joules(workspace.Energy.Held[model.RotorIndex(rotor)]);

    /// <summary>Speed of a rotor at the end.</summary>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    public RotationalSpeed Speed(string rotor) => RotationalSpeed.FromRadiansPerSecond(SpeedRadPerS(rotor));

    /// <summary>Angle a rotor has turned since the start.</summary>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    public Angle Turned(string rotor) => Angle.FromRadians(TurnedRad(rotor));

    /// <summary>Torque in an element's spring at the end, at its own speed; 0 for a rigid one.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Torque SpringTorque(string element) => Torque.FromNewtonMeters(SpringTorqueNm(element));

    /// <summary>Torque an element carries at the end, spring and damper together, at its own speed.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public Torque TorqueAtEnd(string element) => Torque.FromNewtonMeters(TorqueNm(element));

    /// <summary>True when an element is a shaft or obstacle that gives: one with a spring.</summary>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public bool HasSpring(string element) => model.Mechanism.IsElastic(model.LinkIndex(element));

    internal void Show(TorsionModel run, double duration)
    {
        model = run;
        end = duration;
    }

    /// <summary>The model that ran.</summary>
    public TorsionModel Model => model;

    /// <summary>How far the run came.</summary>
    public override string ToString() => FormattableString.Invariant($"{Time.Seconds:G4} s, {EventCount} events, {StepCount} steps");

    internal EnergyBalance Energies => new(model.Mechanism, workspace.State, workspace.Energy);

    internal double SpeedRadPerS(string rotor)
    {
        int i = model.RotorIndex(rotor);
        return workspace.State.Speed[i] * model.Mechanism.RotorRatio[i];
    }

    internal double TurnedRad(string rotor)
    {
        int i = model.RotorIndex(rotor);
        return workspace.State.Angle[i] * model.Mechanism.RotorRatio[i];
    }

    internal double SlipRad(string element)
    {
        int l = model.LinkIndex(element);
        return workspace.State.Slip[l] * model.Mechanism.LinkRatio[l];
    }

    internal double SpringTorqueNm(string element)
    {
        int l = model.LinkIndex(element);
        Mechanism m = model.Mechanism;
        return m.IsElastic(l) ? m.Stiffness[l] * workspace.State.Twist[l] / m.LinkRatio[l] : 0;
    }

    internal double TorqueNm(string element)
    {
        int l = model.LinkIndex(element);
        return workspace.TorqueNow(model.Mechanism, l) / model.Mechanism.LinkRatio[l];
    }

    private TorquePeak Spring(string element, double[] twist, double[] at)
    {
        int l = model.LinkIndex(element);
        Mechanism m = model.Mechanism;
        if (!workspace.Log.WatchesSprings)
        {
            throw new InvalidOperationException("This run did not watch springs; use Transient.RunWithSprings.");
        }

        return m.IsElastic(l)
            ? new TorquePeak(m.Stiffness[l] * twist[l], m.LinkRatio[l], at[l])
            : throw new ArgumentException("Only what gives has a spring; \"" + element + "\" is rigid.", nameof(element));
    }

    private static Energy Joules(double value) => Energy.FromJoules(value);
}
