using Driveline.Cases.Members;
using Driveline.Loads;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>A strike at work, to be simulated. Torques, angles and stiffness are at the element that is struck.</summary>
public sealed class StrikeFacts : CaseFacts
{
    internal StrikeFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static StrikeFacts Empty { get; } = new(StrikeMembers.Table.NoValues());

    /// <summary>The element of the driveline that is stopped, by its name; left out, the only rotor. Null when not known.</summary>
    public string? At => Reference<string>(StrikeMembers.At);

    /// <summary>The same with another <see cref="At"/>.</summary>
    public StrikeFacts WithAt(string? value) => new(Set(StrikeMembers.At, value));

    /// <summary>What it meets.</summary>
    public StrikeKind Kind => Value<StrikeKind>(StrikeMembers.Kind) ?? default;

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    public StrikeFacts WithKind(StrikeKind value) => new(Set(StrikeMembers.Kind, value == default ? null : value));

    /// <summary>What was hit. A blow on pan or deck never passes the driveline.</summary>
    public StrikePlace What => Value<StrikePlace>(StrikeMembers.What) ?? default;

    /// <summary>The same with another <see cref="What"/>.</summary>
    public StrikeFacts WithWhat(StrikePlace value) => new(Set(StrikeMembers.What, value == default ? null : value));

    /// <summary>Torque at which what is struck gives way. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public Torque? Torque => Si(StrikeMembers.Torque) is { } si ? UnitsNet.Torque.FromNewtonMeters(si) : null;

    /// <summary>The same with another <see cref="Torque"/>.</summary>
    public StrikeFacts WithTorque(Torque? value) => new(Set(StrikeMembers.Torque, value is { } v ? Quantities.Si.NewtonMeters(v) : null));

    /// <summary>Angle that the element turns until that torque is reached. Permitted: (0 deg; 360 deg]. Null when not known.</summary>
    public Angle? Travel => Si(StrikeMembers.Travel) is { } si ? UnitsNet.Angle.FromRadians(si) : null;

    /// <summary>The same with another <see cref="Travel"/>.</summary>
    public StrikeFacts WithTravel(Angle? value) => new(Set(StrikeMembers.Travel, value is { } v ? Quantities.Si.Radians(v) : null));

    /// <summary>Force at which what is struck gives way, in place of torque. Permitted: (0 N; 1000 kN]. Null when not known.</summary>
    public Force? Force => Si(StrikeMembers.Force) is { } si ? UnitsNet.Force.FromNewtons(si) : null;

    /// <summary>The same with another <see cref="Force"/>.</summary>
    public StrikeFacts WithForce(Force? value) => new(Set(StrikeMembers.Force, value is { } v ? Quantities.Si.Newtons(v) : null));

    /// <summary>Radius at which that force acts. Permitted: [1 mm; 10 m]. Null when not known.</summary>
    public Length? Radius => Si(StrikeMembers.Radius) is { } si ? UnitsNet.Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Radius"/>.</summary>
    public StrikeFacts WithRadius(Length? value) => new(Set(StrikeMembers.Radius, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Way of that force until it is reached, in place of travel. Permitted: (0 mm; 10 m]. Null when not known.</summary>
    public Length? Distance => Si(StrikeMembers.Distance) is { } si ? UnitsNet.Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Distance"/>.</summary>
    public StrikeFacts WithDistance(Length? value) => new(Set(StrikeMembers.Distance, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Stiffness of a springy obstacle. Permitted: [1 N.m/rad; 1000000000 N.m/rad]. Null when not known.</summary>
    public RotationalStiffness? Stiffness => Si(StrikeMembers.Stiffness) is { } si ? UnitsNet.RotationalStiffness.FromNewtonMetersPerRadian(si) : null;

    /// <summary>The same with another <see cref="Stiffness"/>.</summary>
    public StrikeFacts WithStiffness(RotationalStiffness? value) => new(Set(StrikeMembers.Stiffness, value is { } v ? Quantities.Si.NewtonMetersPerRadian(v) : null));

    /// <summary>Damping of a springy obstacle, N·m·s/rad. Permitted: [0 N.m.s/rad; 1000000 N.m.s/rad]. Null when not known.</summary>
    public double? Damping => Si(StrikeMembers.Damping);

    /// <summary>The same with another <see cref="Damping"/>.</summary>
    public StrikeFacts WithDamping(double? value) => new(Set(StrikeMembers.Damping, value));

    /// <summary>Angle that the rotor turns while its blades swing back. Permitted: (0 deg; 360 deg]. Null when not known.</summary>
    public Angle? Swing => Si(StrikeMembers.Swing) is { } si ? UnitsNet.Angle.FromRadians(si) : null;

    /// <summary>The same with another <see cref="Swing"/>.</summary>
    public StrikeFacts WithSwing(Angle? value) => new(Set(StrikeMembers.Swing, value is { } v ? Quantities.Si.Radians(v) : null));

    /// <summary>Torque on the rotor while they swing back. Permitted: [0 N.m; 1000 kN.m]. Null when not known.</summary>
    public Torque? SwingTorque => Si(StrikeMembers.SwingTorque) is { } si ? UnitsNet.Torque.FromNewtonMeters(si) : null;

    /// <summary>The same with another <see cref="SwingTorque"/>.</summary>
    public StrikeFacts WithSwingTorque(Torque? value) => new(Set(StrikeMembers.SwingTorque, value is { } v ? Quantities.Si.NewtonMeters(v) : null));

    /// <summary>Time of the strike since the start of the run. Permitted: [0 s; 10 s]. Null when not known.</summary>
    public Duration? Time => Si(StrikeMembers.Time) is { } si ? UnitsNet.Duration.FromSeconds(si) : null;

    /// <summary>The same with another <see cref="Time"/>.</summary>
    public StrikeFacts WithTime(Duration? value) => new(Set(StrikeMembers.Time, value is { } v ? Quantities.Si.Seconds(v) : null));

    internal override MemberTable Table => StrikeMembers.Table;
}
