using Driveline.Loads;

namespace Driveline.Cases.Members;

/// <summary>The rows of strike.</summary>
internal static class StrikeMembers
{
    public static readonly MemberTable Table = new(
        "strike", "A strike at work, to be simulated. Torques, angles and stiffness are at the element that is struck.",
        SimulationChecks.AcrossStrike);

    public static readonly TextMember At = Table.Text(
        "at", 200, "The element of the driveline that is stopped, by its name; left out, the only rotor.");
    public static readonly ChoiceMember<StrikeKind> Kind = Table.Choice<StrikeKind>(
        "kind", "What it meets.");
    public static readonly ChoiceMember<StrikePlace> What = Table.Choice<StrikePlace>(
        "what",
        "What was hit. A blow on the deck passes the driveline by, one on the pan mostly too; it is simulated as if the pan wedged.");
    public static readonly QuantityMember<UnitsNet.Torque> Torque = Table.Quantity(
        "torque", QuantityTypes.Torque, "(0 N.m; 1000 kN.m]", "Torque at which what is struck gives way.");
    public static readonly QuantityMember<UnitsNet.Angle> Travel = Table.Quantity(
        "travel", QuantityTypes.Angle, "(0 deg; 360 deg]", "Angle that the element turns until that torque is reached.");
    public static readonly QuantityMember<UnitsNet.Force> Force = Table.Quantity(
        "force", QuantityTypes.Force, "(0 N; 1000 kN]", "Force at which what is struck gives way, in place of torque.");
    public static readonly QuantityMember<UnitsNet.Length> Radius = Table.Quantity(
        "radius", QuantityTypes.Length, "[1 mm; 10 m]", "Radius at which that force acts, and at which the thickness is measured.");
    public static readonly QuantityMember<UnitsNet.Length> Distance = Table.Quantity(
        "distance", QuantityTypes.Length, "(0 mm; 10 m]", "Way of that force until it is reached, in place of travel.");
    public static readonly QuantityMember<UnitsNet.Length> Thickness = Table.Quantity(
        "thickness", QuantityTypes.Length, "(0 mm; 10 m]",
        "Way from first touch, or from where the blades have swung back, until it is cut through, at \"radius\". Left out, a run decides "
            + "nothing.");
    public static readonly QuantityMember<UnitsNet.RotationalStiffness> Stiffness = Table.Quantity(
        "stiffness", QuantityTypes.TorsionalStiffness, "[1 N.m/rad; 1000000000 N.m/rad]", "Stiffness of a springy obstacle.");
    public static readonly QuantityMember<double> Damping = Table.Quantity(
        "damping", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000 N.m.s/rad]", "Damping of a springy obstacle, N·m·s/rad.");
    public static readonly QuantityMember<UnitsNet.Angle> Swing = Table.Quantity(
        "swing", QuantityTypes.Angle, "(0 deg; 360 deg]", "Angle that the rotor turns while its blades swing back.");
    public static readonly QuantityMember<UnitsNet.Torque> SwingTorque = Table.Quantity(
        "swingTorque", QuantityTypes.Torque, "[0 N.m; 1000 kN.m]", "Torque on the rotor while they swing back.");
    public static readonly FlagMember Passes = Table.Flag(
        "passes", "True when the blades fold over it and pass; left out or false, they meet it when they have swung back.");
    public static readonly QuantityMember<UnitsNet.Duration> Time = Table.Quantity(
        "time", QuantityTypes.Time, "[0 s; 10 s]", "Time of the strike since the start of the run.");
}
