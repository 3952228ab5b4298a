using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of tractor.</summary>
internal static class TractorMembers
{
    public static readonly MemberTable Table = new("tractor", "The tractor and its PTO.");

    public static readonly QuantityMember<UnitsNet.Power> PtoPower = Table.Quantity(
        "ptoPower", QuantityTypes.Power, "(0 kW; 1000 kW]", "Power at the PTO.");
    public static readonly QuantityMember<UnitsNet.Power> EnginePower = Table.Quantity(
        "enginePower", QuantityTypes.Power, "(0 kW; 1500 kW]",
            "Rated engine power; with the torque reserve it caps what the implement is taken to need.");
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> EngineSpeed = Table.Quantity(
        "engineSpeed", QuantityTypes.RotationalSpeed, "(0 rpm; 5000 rpm]", "Engine speed at that PTO speed.");
    public static readonly WholeMember PtoType = Table.Whole("ptoType", 1, 4, "Type of the PTO stub shaft: 1, 2, 3 or 4.");
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> PtoSpeed = Table.Quantity(
        "ptoSpeed", QuantityTypes.RotationalSpeed, "(0 rpm; 3000 rpm]", "PTO speed at work.");
    public static readonly BandMember<TorqueBand> StubDamagedAt = Table.Torques(
        "stubDamagedAt", "(0 N.m; 1000 kN.m]", "Torque that damages the stub shaft or its splines.");
    public static readonly BandMember<StressBand> StubYieldStrength = Table.Stresses(
        "stubYieldStrength", "[10 MPa; 3000 MPa]", "Yield strength of the stub shaft's steel.");
    public static readonly ObjectMember PtoClutch = Table.Object("ptoClutch", () => PtoClutchMembers.Table, "The tractor's PTO clutch.");
    public static readonly QuantityMember<UnitsNet.MassMomentOfInertia> FlywheelInertia = Table.Quantity(
        "flywheelInertia", QuantityTypes.Inertia, "(0 kg.m2; 1000 kg.m2]", "Inertia of engine and flywheel at the engine's own speed.");
    public static readonly ObjectMember EngineTorqueLine = Table.Object(
        "engineTorqueLine", () => EngineTorqueLineMembers.Table, "Torque of the engine over the speed of the PTO.");
    public static readonly QuantityMember<double> TorqueReserve = Table.Quantity(
        "torqueReserve", QuantityTypes.Number, "[0; 2]",
            "Share by which the engine can exceed the torque of its rated PTO power before it stalls.");
}
