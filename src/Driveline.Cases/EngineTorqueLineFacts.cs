using Driveline.Cases.Members;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>Torque of the engine at the PTO as a straight line over PTO speed: torque + fall × (PTO speed at work − PTO speed), never above highest.</summary>
public sealed class EngineTorqueLineFacts : CaseFacts
{
    internal EngineTorqueLineFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static EngineTorqueLineFacts Empty { get; } = new(EngineTorqueLineMembers.Table.NoValues());

    /// <summary>Torque at the PTO at the PTO speed of work. Permitted: [0 N.m; 1000 kN.m]. Null when not known.</summary>
    public Torque? Torque => Si(EngineTorqueLineMembers.Torque) is { } si ? UnitsNet.Torque.FromNewtonMeters(si) : null;

    /// <summary>The same with another <see cref="Torque"/>.</summary>
    public EngineTorqueLineFacts WithTorque(Torque? value) => new(Set(EngineTorqueLineMembers.Torque, value is { } v ? Quantities.Si.NewtonMeters(v) : null));

    /// <summary>Torque lost for each rise of PTO speed, N·m·s/rad. Permitted: [0 N.m.s/rad; 1000000 N.m.s/rad]. Null when not known.</summary>
    public double? Fall => Si(EngineTorqueLineMembers.Fall);

    /// <summary>The same with another <see cref="Fall"/>.</summary>
    public EngineTorqueLineFacts WithFall(double? value) => new(Set(EngineTorqueLineMembers.Fall, value));

    /// <summary>Highest torque of the engine at the PTO. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public Torque? Highest => Si(EngineTorqueLineMembers.Highest) is { } si ? UnitsNet.Torque.FromNewtonMeters(si) : null;

    /// <summary>The same with another <see cref="Highest"/>.</summary>
    public EngineTorqueLineFacts WithHighest(Torque? value) => new(Set(EngineTorqueLineMembers.Highest, value is { } v ? Quantities.Si.NewtonMeters(v) : null));

    internal override MemberTable Table => EngineTorqueLineMembers.Table;
}
