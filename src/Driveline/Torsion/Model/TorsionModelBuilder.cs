using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>Collects the parts of a torsional model; <see cref="Build"/> checks them and gives the immutable model.</summary>
/// <remarks>
/// Each part has a name of its own, by which results are asked for. The first rotor's speed is the one that referred
/// figures relate to. Shafts and couplings must join all rotors to one tree: a chain, with branches where wanted.
/// </remarks>
public sealed partial class TorsionModelBuilder
{
    private readonly List<RotorPart> rotorParts;
    private readonly List<LinkPart> links;
    private readonly List<LoadPart> loads = [];
    private string? driveName;
    private int driveRotor = -1;
    private TorqueSpeedLine? drive;

    /// <summary>A builder without parts.</summary>
    public TorsionModelBuilder()
    {
        rotorParts = [];
        links = [];
    }

    /// <summary>A builder with room for as many parts.</summary>
    internal TorsionModelBuilder(int rotors, int links)
    {
        rotorParts = new List<RotorPart>(rotors);
        this.links = new List<LinkPart>(links);
    }

    internal List<RotorPart> Rotors => rotorParts;

    internal List<LinkPart> Links => links;

    internal List<LoadPart> Loads => loads;

    internal string? DriveName => driveName;

    internal int DriveRotor => driveRotor;

    internal TorqueSpeedLine? Drive => drive;

    /// <summary>Adds a rotor with an inertia.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The inertia is zero, negative or not finite.</exception>
    /// <exception cref="ArgumentException">The name is blank or already used.</exception>
    public TorsionModelBuilder AddRotor(string name, MassMomentOfInertia inertia)
    {
        double value = Si.KilogramSquareMeters(inertia);
        return value > 0 && Guard.IsFinite(value)
            ? Add(new RotorPart(Unused(name), value, 0))
            : throw Guard.OutOfRange("Inertia of \"" + name + "\"", "a finite value above 0 kg·m²", value, "kg·m²", nameof(inertia));
    }

    /// <summary>Adds a rotor held at a speed by something far stronger than the driveline; 0 is a fixed end.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not finite.</exception>
    /// <exception cref="ArgumentException">The name is blank or already used.</exception>
    public TorsionModelBuilder AddHeldRotor(string name, RotationalSpeed speed)
    {
        double value = Si.RadiansPerSecond(speed);
        return Guard.IsFinite(value)
            ? Add(new RotorPart(Unused(name), double.PositiveInfinity, value))
            : throw Guard.OutOfRange("Held speed", "a finite value", value, "rad/s", nameof(speed));
    }

    /// <summary>Adds a shaft from a driving to a driven rotor.</summary>
    /// <exception cref="ArgumentException">A rotor is not there, both are the same, or the name is blank or already used.</exception>
    public TorsionModelBuilder AddShaft(string name, string from, string to, Shaft shaft) =>
        Add(new LinkPart(Unused(name), Rotor(from, nameof(from)), Driven(from, to), Guard.NotNull(shaft, nameof(shaft)), null, null));

    /// <summary>Adds a shaft with a coupling in line at its driving end, without inertia between them.</summary>
    /// <exception cref="ArgumentException">As above, or the shaft has backlash: that needs a shaft of its own.</exception>
    public TorsionModelBuilder AddShaft(string name, string from, string to, Shaft shaft, Coupling coupling)
    {
        Guard.NotNull(coupling, nameof(coupling));
        if (Guard.NotNull(shaft, nameof(shaft)).BacklashRad > 0)
        {
            throw new ArgumentException("A shaft must have either backlash or a coupling in line; got both in \"" + name
                + "\". Put the backlash on a shaft of its own.", nameof(shaft));
        }

        return Add(new LinkPart(Unused(name), Rotor(from, nameof(from)), Driven(from, to), shaft, coupling, null));
    }

    /// <summary>Adds a coupling directly between two rotors: while it sticks they turn as one.</summary>
    /// <exception cref="ArgumentException">As for a shaft, or the coupling is a one-way coupling, which needs a shaft in line.</exception>
    public TorsionModelBuilder AddCoupling(string name, string from, string to, Coupling coupling)
    {
        if (Guard.NotNull(coupling, nameof(coupling)) is OneWayCoupling)
        {
            throw new ArgumentException("A one-way coupling needs a shaft in line: add it with AddShaft.", nameof(coupling));
        }

        return Add(new LinkPart(Unused(name), Rotor(from, nameof(from)), Driven(from, to), null, coupling, null));
    }

    /// <summary>Adds an obstacle that a rotor meets.</summary>
    /// <exception cref="ArgumentException">The rotor is not there or is held, or the name is blank or already used.</exception>
    public TorsionModelBuilder AddObstacle(string name, string rotor, Obstacle obstacle) =>
        Add(new LinkPart(Unused(name), Free(rotor), Mechanism.Ground, null, null, Guard.NotNull(obstacle, nameof(obstacle))));

    /// <summary>Adds a dry-friction load to the ground: it sticks up to its breakaway and resists with its running torque.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Breakaway is not above 0, or running is not from 0 to breakaway.</exception>
    /// <exception cref="ArgumentException">The rotor is not there or is held, or the name is blank or already used.</exception>
    public TorsionModelBuilder AddFrictionLoad(string name, string rotor, Torque breakaway, Torque running) =>
        Add(new LinkPart(Unused(name), Free(rotor), Mechanism.Ground, null, FrictionCoupling.Of(breakaway, running), null));

    /// <summary>Adds a viscous load to the ground, T = c·ω.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is negative or not finite.</exception>
    /// <exception cref="ArgumentException">The rotor is not there, or the name is blank or already used.</exception>
    public TorsionModelBuilder AddViscousLoad(string name, string rotor, double newtonMeterSecondsPerRadian)
    {
        double c = Guard.NotNegative(newtonMeterSecondsPerRadian, "Viscous load", "N·m·s/rad", nameof(newtonMeterSecondsPerRadian));
        return Add(new LoadPart(Unused(name), Rotor(rotor, nameof(rotor)), c, 0, 0, 0, true));
    }

    /// <summary>Adds a torque on a rotor, positive in the driving direction, there from the start.</summary>
    /// <exception cref="ArgumentException">The rotor is not there or is held, or the name is blank or already used.</exception>
    public TorsionModelBuilder AddTorque(string name, string rotor, Torque torque) =>
        AddTorque(name, rotor, torque, Duration.Zero, Duration.Zero);

    /// <summary>Adds a torque on a rotor that rises in proportion to time from a moment on; 0 s is a step.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or a time is negative.</exception>
    /// <exception cref="ArgumentException">The rotor is not there or is held, or the name is blank or already used.</exception>
    public TorsionModelBuilder AddTorque(string name, string rotor, Torque torque, Duration from, Duration over)
    {
        double nm = Si.NewtonMeters(torque);
        if (!Guard.IsFinite(nm))
        {
            throw Guard.OutOfRange("Torque of \"" + name + "\"", "a finite value", nm, "N·m", nameof(torque));
        }

        double start = Guard.NotNegative(Si.Seconds(from), "Start of the torque", "s", nameof(from));
        double rise = Guard.NotNegative(Si.Seconds(over), "Rise time of the torque", "s", nameof(over));
        return Add(new LoadPart(Unused(name), Free(rotor), 0, nm, start, rise, false));
    }

    /// <summary>Adds the drive: a torque–speed line acting on a rotor. One a model.</summary>
    /// <exception cref="ArgumentException">
    /// The rotor is not there or is held, the name is blank or already used, or there is a drive already.
    /// </exception>
    public TorsionModelBuilder AddDrive(string name, string rotor, TorqueSpeedLine line)
    {
        if (drive != null)
        {
            throw new ArgumentException("A model must have at most one drive; got a second, \"" + name + "\".", nameof(name));
        }

        int index = Free(rotor);
        drive = Guard.NotNull(line, nameof(line));
        driveName = Unused(name);
        driveRotor = index;
        return Named(name);
    }

    /// <summary>The model.</summary>
    /// <exception cref="InvalidOperationException">
    /// Fewer than two rotors, a detached rotor, a ring of shafts, no rotor that is free to move, or held rotors coupled directly.
    /// </exception>
    public TorsionModel Build() => TorsionModel.From(this, [.. rotorParts], [.. links]);

    /// <summary>The model, to which the builder gives its parts: it must not be used again.</summary>
    internal TorsionModel BuildLast() => TorsionModel.From(this, rotorParts, links);

    private TorsionModelBuilder Add(RotorPart part)
    {
        rotors?.Add(part.Name, rotorParts.Count);
        rotorParts.Add(part);
        return Named(part.Name);
    }

    private TorsionModelBuilder Add(LinkPart part)
    {
        links.Add(part);
        return Named(part.Name);
    }

    private TorsionModelBuilder Add(LoadPart part)
    {
        loads.Add(part);
        return Named(part.Name);
    }

    private int Driven(string from, string to)
    {
        int index = Rotor(to, nameof(to));
        return index == Rotor(from, nameof(from))
            ? throw new ArgumentException("A link must join two different rotors; got \"" + to + "\" twice.", nameof(to))
            : index;
    }

    private int Free(string rotor)
    {
        int index = Rotor(rotor, nameof(rotor));
        return double.IsPositiveInfinity(rotorParts[index].Inertia)
            ? throw new ArgumentException(
                "Only a rotor that is free to move can take this; \"" + rotor + "\" is held at its speed.", nameof(rotor))
            : index;
    }
}
