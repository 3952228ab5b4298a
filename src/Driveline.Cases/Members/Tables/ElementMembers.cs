using Driveline.Pto;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of one driveline element.</summary>
internal static class ElementMembers
{
    /// <summary>Most elements in one list.</summary>
    public const int MostInOneList = 200;

    /// <summary>Most elements in a case, those of branches included.</summary>
    public const int MostInAll = 1000;

    public static readonly MemberTable Table = new MemberTable(
        "element", "One element of the driveline. Exactly one member names its kind.", ElementChecks.Across).WithKinds();

    private static readonly ElementKind[] Parts =
    [
        ElementKind.Shaft, ElementKind.Gearbox, ElementKind.UniversalJoint, ElementKind.Rotor, ElementKind.Flywheel,
        ElementKind.Yoke, ElementKind.Part, ElementKind.OverrunClutch,
    ];

    public static readonly TextMember ShaftName = Table.Text("shaft", 200, "A shaft, tube or axle, by its name.").Naming(ElementKind.Shaft);
    public static readonly ObjectMember ShearBolt = Table.Object(
        "shearBolt", () => ShearBoltMembers.Table, "A shear-bolt joint.").Naming(ElementKind.ShearBolt);
    public static readonly ObjectMember SlipClutch = Table.Object(
        "slipClutch", () => SlipClutchMembers.Table, "A friction-disc slip clutch.").Naming(ElementKind.SlipClutch);
    public static readonly ObjectMember CutOut = Table.Object(
        "cutOut", () => CutOutMembers.Table, "A ratchet, cam or radial-pin clutch that cuts out.").Naming(ElementKind.CutOut);
    public static readonly TextMember GearboxName = Table.Text("gearbox", 200, "A gearbox, by its name.").Naming(ElementKind.Gearbox);
    public static readonly TextMember UniversalJointName = Table.Text(
        "universalJoint", 200, "A universal joint, by its name.").Naming(ElementKind.UniversalJoint);
    public static readonly TextMember RotorName = Table.Text("rotor", 200, "A working rotor, by its name.").Naming(ElementKind.Rotor);
    public static readonly TextMember FlywheelName = Table.Text("flywheel", 200, "A flywheel, by its name.").Naming(ElementKind.Flywheel);
    public static readonly TextMember YokeName = Table.Text("yoke", 200, "A yoke or hub, by its name.").Naming(ElementKind.Yoke);
    public static readonly TextMember PartName = Table.Text(
        "part", 200, "Any other part that carries the torque, by its name.").Naming(ElementKind.Part);
    public static readonly TextMember OverrunClutchName = Table.Text(
        "overrunClutch", 200, "An overrun clutch, by its name.").Naming(ElementKind.OverrunClutch);
    public static readonly TextMember BranchName = Table.Text(
        "branch", 200, "A side drive, by its name; it needs powerShare.").Naming(ElementKind.Branch);
    public static readonly QuantityMember<double> Ratio = Table.Quantity(
        "ratio", QuantityTypes.Number, "[0.05; 20]", "Output speed over input speed; above 1 is speed up.").For(ElementKind.Gearbox);
    public static readonly QuantityMember<double> Efficiency = Table.Quantity(
        "efficiency", QuantityTypes.Number, "(0; 1]", "Output power over input power.").For(ElementKind.Gearbox);
    public static readonly QuantityMember<UnitsNet.Angle> Angle = Table.Quantity(
        "angle", QuantityTypes.Angle, "[0 deg; 90 deg)", "Angle between the two shafts of the joint at work.")
            .For(ElementKind.UniversalJoint);
    public static readonly QuantityMember<UnitsNet.MassMomentOfInertia> Inertia = Table.Quantity(
        "inertia", QuantityTypes.Inertia, "(0 kg.m2; 10000 kg.m2]", "Mass moment of inertia about its own axis.").For(Parts);
    public static readonly BandMember<TorqueBand> DamagedAt = Table.Torques(
        "damagedAt", "(0 N.m; 1000 kN.m]", "Torque at the part's own input that damages it.").For(Parts);
    public static readonly QuantityMember<UnitsNet.Length> OuterDiameter = Table.Quantity(
        "outerDiameter", QuantityTypes.Length, "[3 mm; 500 mm]", "Outer diameter where the part is weakest.").For(Parts);
    public static readonly QuantityMember<UnitsNet.Length> InnerDiameter = Table.Quantity(
        "innerDiameter", QuantityTypes.Length, "[0 mm; 500 mm)", "Bore, when it is hollow.").For(Parts);
    public static readonly QuantityMember<UnitsNet.Length> SplineRootDiameter = Table.Quantity(
        "splineRootDiameter", QuantityTypes.Length, "[3 mm; 500 mm]", "Diameter at the root of its splines.").For(Parts);
    public static readonly QuantityMember<UnitsNet.Pressure> FatigueCategory = Table.Quantity(
        "fatigueCategory", QuantityTypes.Stress, "[10 MPa; 500 MPa]",
            "Detail category of its worst notch or weld in shear, EN 1993-1-9: the range of stress it bears 2 million times. With a "
                + "diameter, a log shows the life it has used.").For(Parts);
    public static readonly BandMember<StressBand> YieldStrength = Table.Stresses(
        "yieldStrength", "[10 MPa; 3000 MPa]", "Yield strength of its material.").For(Parts);
    public static readonly ParsedMember<StatedSteel> Material = Table.Text<StatedSteel>(
        "material", 100, StatedSteel.TryParse, "Its material by name, when the yield strength is not known.").For(Parts);
    public static readonly QuantityMember<UnitsNet.Torque> RatedTorque = Table.Quantity(
        "ratedTorque", QuantityTypes.Torque, "(0 N.m; 1000 kN.m]", "Torque on its plate or in its catalogue.").For(Parts);
    public static readonly QuantityMember<UnitsNet.Power> RatedPower = Table.Quantity(
        "ratedPower", QuantityTypes.Power, "(0 kW; 1000 kW]",
            "Power on its plate or in its catalogue, in place of ratedTorque; it needs ratedSpeed.").For(Parts);
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> RatedSpeed = Table.Quantity(
        "ratedSpeed", QuantityTypes.RotationalSpeed, "(0 rpm; 5000 rpm]", "Speed of the part's input at which that power is rated.")
            .For(Parts);
    public static readonly ParsedMember<JointSeries> Cross = Table.Text<JointSeries>(
        "cross", 60, JointSeries.TryParse,
            "The cross of the joint as measured, diameter of a cap by length over the caps, e.g. \"27 x 74.6 mm\", or its trade series, "
                + "e.g. \"series 4\": a trade list then tells its rated torque.").For(ElementKind.UniversalJoint);
    public static readonly BandMember<RatioBand> OverloadFactor = Table.Ratios(
        "overloadFactor", "[1; 20]", "Damaging torque over rated torque.").For(Parts);
    public static readonly TextMember OverloadSource = Table.Text(
        "overloadSource", 300, "Who states the overload factor, and where; without it the factor counts as unsourced.").For(Parts);
    public static readonly BandMember<RatioBand> PowerShare = Table.Ratios(
        "powerShare", "(0; 1]", "Share of the power at this place that the branch takes.").For(ElementKind.Branch).Required();
    public static readonly ListMember Driveline = Table.Elements(
        "driveline", "The elements of the branch, in order from where it leaves.").For(ElementKind.Branch);
    public static readonly QuantityMember<UnitsNet.Length> Length = Table.Quantity(
        "length", QuantityTypes.Length, "[1 mm; 20 m]",
            "Length that twists, taken to have the outer diameter all along; pieces of different size are several shafts.")
            .For(ElementKind.Shaft);
    public static readonly BandMember<StiffnessBand> Stiffness = Table.Stiffnesses(
        "stiffness", "[1 N.m/rad; 1000000000 N.m/rad]", "Torsional stiffness from the part's input to its output.").For(Parts);
    public static readonly ObjectMember Specified = Table.Object(
        "specified", () => SpecifiedMembers.Table, "What the manual or parts list specifies in its place.")
            .For(ElementKind.ShearBolt, ElementKind.SlipClutch, ElementKind.CutOut);
    public static readonly QuantityMember<double> Damping = Table.Quantity(
        "damping", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000 N.m.s/rad]", "Damping of its twist, N·m·s/rad.").For(Parts);
}
