using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>A part of the driveline: shaft, joint, gearbox, rotor. It may have a limit, a speed ratio and an inertia.</summary>
/// <remarks>Immutable. A part of any kind but <see cref="PartKind.Gearbox"/> turns at the speed of its input (ratio 1).</remarks>
public sealed class Part : Element
{
    private bool isOpen;

    private Part(string name, PartKind kind, double? throughRatio)
        : base(name)
    {
        Kind = kind;
        Ratio = throughRatio;
        Efficiency = throughRatio;
    }

    private Part(Part other)
        : base(other.Name)
    {
        Kind = other.Kind;
        Limit = other.Limit;
        Ratio = other.Ratio;
        Efficiency = other.Efficiency;
        InertiaKgM2 = other.InertiaKgM2;
        Stiffness = other.Stiffness;
        DampingNms = other.DampingNms;
        FactsAt = other.FactsAt;
    }

    /// <summary>What it is.</summary>
    public PartKind Kind { get; }

    /// <summary>The torque that damages it, at its own input; null when not known.</summary>
    public PartLimit? Limit { get; private set; }

    /// <summary>Output speed over input speed, speed up above 1; null when not known (gearboxes only).</summary>
    public double? Ratio { get; private set; }

    /// <summary>Efficiency, above 0 to 1; null when not known (gearboxes only).</summary>
    public double? Efficiency { get; private set; }

    /// <summary>Inertia at its own speed; null when none is stated.</summary>
    public MassMomentOfInertia? Inertia =>
        InertiaKgM2 > 0 ? MassMomentOfInertia.FromKilogramSquareMeters(InertiaKgM2) : null;

    /// <summary>True for a rotor or flywheel: it stores energy that no device upstream of it can hold back.</summary>
    public bool StoresEnergy => Kind is PartKind.Rotor or PartKind.Flywheel;

    /// <summary>
    /// Torsional stiffness from its input to its output, at its own speed; null when not known: it is then rigid, or a shaft that nobody
    /// can wind up.
    /// </summary>
    public StiffnessBand? Stiffness { get; private set; }

    /// <summary>Viscous damping of its twist, N·m·s/rad, at its own speed; 0 unless given.</summary>
    public double DampingNms { get; private set; }

    /// <inheritdoc/>
    public override FactPlace? Place => FactsAt;

    internal double InertiaKgM2 { get; private set; }

    private FactPlace? FactsAt { get; set; }

    /// <summary>A part of a kind without a speed ratio.</summary>
    /// <param name="kind">What it is; a gearbox is made with <see cref="Gearbox(string)"/>.</param>
    /// <param name="name">Name by which people know it.</param>
    public static Part Of(PartKind kind, string name) =>
        kind == PartKind.Gearbox ? Gearbox(name) : new Part(name, kind, 1);

    /// <summary>A part of a kind to be filled by one owner: until it is closed, each change is made in this very object.</summary>
    internal static Part Open(PartKind kind, string name) => new(name, kind, kind == PartKind.Gearbox ? null : 1) { isOpen = true };

    /// <summary>A shaft or drive tube.</summary>
    public static Part Shaft(string name) => Of(PartKind.Shaft, name);

    /// <summary>A gearbox, chain or belt drive whose ratio and efficiency are not known yet.</summary>
    public static Part Gearbox(string name) => new(name, PartKind.Gearbox, null);

    /// <summary>A gearbox, chain or belt drive with its speed ratio.</summary>
    /// <param name="name">Name by which people know it.</param>
    /// <param name="ratio">Output speed over input speed; 0.01 to 100, speed up above 1.</param>
    public static Part Gearbox(string name, double ratio) => Gearbox(name).WithRatio(ratio);

    /// <summary>A rotor with its inertia at its own speed.</summary>
    /// <exception cref="ArgumentException">The name is blank, or the inertia is not above 0.</exception>
    public static Part Rotor(string name, MassMomentOfInertia inertia) => Of(PartKind.Rotor, name).WithInertia(inertia);

    /// <summary>A flywheel with its inertia at its own speed.</summary>
    /// <exception cref="ArgumentException">The name is blank, or the inertia is not above 0.</exception>
    public static Part Flywheel(string name, MassMomentOfInertia inertia) => Of(PartKind.Flywheel, name).WithInertia(inertia);

    /// <summary>The same part with the place of its facts.</summary>
    public Part At(FactPlace place)
    {
        Guard.NotNull(place, nameof(place));
        Part changed = Copy();
        changed.FactsAt = place;
        return changed;
    }

    /// <summary>The same part with a limit.</summary>
    public Part WithLimit(PartLimit limit)
    {
        Guard.NotNull(limit, nameof(limit));
        Part changed = Copy();
        changed.Limit = limit;
        return changed;
    }

    /// <summary>The same part with a stated damage torque.</summary>
    public Part WithDamageTorque(TorqueBand damagedAt) => WithLimit(PartLimit.DamageTorque(damagedAt));

    /// <summary>The same gearbox with a speed ratio.</summary>
    /// <exception cref="InvalidOperationException">The part is not a gearbox.</exception>
    public Part WithRatio(double ratio)
    {
        NeedsGearbox("speed ratio");
        Guard.Within(ratio, 0.01, 100, "Speed ratio", string.Empty, nameof(ratio));
        Part changed = Copy();
        changed.Ratio = ratio;
        return changed;
    }

    /// <summary>The same gearbox with an efficiency.</summary>
    /// <exception cref="InvalidOperationException">The part is not a gearbox.</exception>
    public Part WithEfficiency(double efficiency)
    {
        NeedsGearbox("efficiency");
        if (!(efficiency > 0 && efficiency <= 1))
        {
            throw Guard.OutOfRange("Efficiency", "above 0 to 1", efficiency, string.Empty, nameof(efficiency));
        }

        Part changed = Copy();
        changed.Efficiency = efficiency;
        return changed;
    }

    /// <summary>The same part with an inertia at its own speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The inertia is not above 0.</exception>
    public Part WithInertia(MassMomentOfInertia inertia)
    {
        double value = Guard.Positive(Si.KilogramSquareMeters(inertia), "Inertia", "kg·m²", nameof(inertia));
        Part changed = Copy();
        changed.InertiaKgM2 = value;
        return changed;
    }

    /// <summary>The same part with a torsional stiffness at its own speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The stiffness is not above 0.</exception>
    public Part WithStiffness(StiffnessBand stiffness)
    {
        Guard.NotNull(stiffness, nameof(stiffness));
        if (!(stiffness.SiBand.Low > 0))
        {
            throw Guard.OutOfRange("Stiffness", "above 0 N·m/rad", stiffness.SiBand.Low, "N·m/rad", nameof(stiffness));
        }

        Part changed = Copy();
        changed.Stiffness = stiffness;
        return changed;
    }

    /// <summary>The same part with viscous damping of its twist.</summary>
    /// <param name="newtonMeterSecondsPerRadian">Damping at its own speed; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The damping is negative or not finite.</exception>
    public Part WithDamping(double newtonMeterSecondsPerRadian)
    {
        Guard.NotNegative(newtonMeterSecondsPerRadian, "Damping", "N·m·s/rad", nameof(newtonMeterSecondsPerRadian));
        Part changed = Copy();
        changed.DampingNms = newtonMeterSecondsPerRadian;
        return changed;
    }

    internal Part Closed()
    {
        isOpen = false;
        return this;
    }

    private Part Copy() => isOpen ? this : new Part(this);

    private void NeedsGearbox(string what)
    {
        if (Kind != PartKind.Gearbox)
        {
            throw new InvalidOperationException("Only a gearbox has a " + what + "; '" + Name + "' is a " + Kind + ".");
        }
    }
}
