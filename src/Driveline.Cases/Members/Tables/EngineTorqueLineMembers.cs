namespace Driveline.Cases.Members;

/// <summary>The rows of engineTorqueLine.</summary>
internal static class EngineTorqueLineMembers
{
    public static readonly MemberTable Table = new(
        "engineTorqueLine",
        "Torque of the engine at the PTO as a straight line over PTO speed: torque + fall × (PTO speed at work − PTO speed), never "
            + "above highest.", SimulationChecks.AcrossLine);

    public static readonly QuantityMember<UnitsNet.Torque> Torque = Table.Quantity(
        "torque", QuantityTypes.Torque, "[0 N.m; 1000 kN.m]", "Torque at the PTO at the PTO speed of work.");
    public static readonly QuantityMember<double> Fall = Table.Quantity(
        "fall", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000 N.m.s/rad]", "Torque lost for each rise of PTO speed, N·m·s/rad.");
    public static readonly QuantityMember<UnitsNet.Torque> Highest = Table.Quantity(
        "highest", QuantityTypes.Torque, "(0 N.m; 1000 kN.m]", "Highest torque of the engine at the PTO.");
}
