using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>How a model moves when a run starts: speeds of the rotors and torques in the shafts. Immutable.</summary>
public sealed class TorsionStart
{
    private readonly double[] speeds;
    private readonly double[] twists;

    private TorsionStart(TorsionModel model, double[] speeds, double[] twists)
    {
        Model = model;
        this.speeds = speeds;
        this.twists = twists;
    }

    /// <summary>The model that starts so.</summary>
    public TorsionModel Model { get; }

    /// <summary>The same start with one rotor at another speed, its own.</summary>
    /// <exception cref="ArgumentException">There is no such rotor, or it is held at its speed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not finite.</exception>
    public TorsionStart WithSpeed(string rotor, RotationalSpeed speed)
    {
        int i = Model.RotorIndex(rotor);
        double value = Si.RadiansPerSecond(speed);
        if (Model.Mechanism.IsHeld(i))
        {
            throw new ArgumentException("A held rotor keeps its speed; \"" + rotor + "\" is held.", nameof(rotor));
        }

        if (!Guard.IsFinite(value))
        {
            throw Guard.OutOfRange("Speed at the start", "a finite value", value, "rad/s", nameof(speed));
        }

        double[] changed = (double[])speeds.Clone();
        changed[i] = value / Model.Mechanism.RotorRatio[i];
        return new TorsionStart(Model, changed, twists);
    }

    /// <summary>The same start with a shaft wound up to a torque in its spring, its own.</summary>
    /// <exception cref="ArgumentException">There is no such element, or it is not a shaft.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is not finite.</exception>
    public TorsionStart WithTorque(string shaft, Torque torque)
    {
        int l = Model.LinkIndex(shaft);
        Mechanism m = Model.Mechanism;
        double value = Si.NewtonMeters(torque);
        if (!m.IsElastic(l) || m.To[l] == Mechanism.Ground)
        {
            throw new ArgumentException("Only a shaft can start with a torque; \"" + shaft + "\" is none.", nameof(shaft));
        }

        if (!Guard.IsFinite(value))
        {
            throw Guard.OutOfRange("Torque at the start", "a finite value", value, "N·m", nameof(torque));
        }

        double[] changed = (double[])twists.Clone();
        changed[l] = value * m.LinkRatio[l] / m.Stiffness[l];
        return new TorsionStart(Model, speeds, changed);
    }

    internal static TorsionStart TurningTogether(TorsionModel model, double speed)
    {
        Mechanism m = model.Mechanism;
        double[] speeds = new double[m.Rotors];
        for (int i = 0; i < speeds.Length; i++)
        {
            speeds[i] = m.IsHeld(i) ? model.HeldSpeed(i) / m.RotorRatio[i] : speed;
        }

        return new TorsionStart(model, speeds, new double[m.Links]);
    }

    /// <summary>The same with the first shafts, as far as they are springs, wound up to a torque, their own.</summary>
    internal TorsionStart WithTorqueInFirst(int links, double newtonMeters)
    {
        Mechanism m = Model.Mechanism;
        double[] changed = (double[])twists.Clone();
        for (int l = 0; l < links; l++)
        {
            changed[l] = m.IsElastic(l) ? newtonMeters * m.LinkRatio[l] / m.Stiffness[l] : changed[l];
        }

        return new TorsionStart(Model, speeds, changed);
    }

    internal void WriteTo(RunState state)
    {
        speeds.CopyTo(state.Speed, 0);
        twists.CopyTo(state.Twist, 0);
        Array.Clear(state.Angle, 0, state.Angle.Length);
    }
}
