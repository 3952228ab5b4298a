using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of drive.</summary>
internal static class ModelDriveMembers
{
    public static readonly MemberTable Table = new(
        "drive", "The drive: T0 + K·(ω0 − ω) on one rotor, at that rotor's own speed ω.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name, for events; \"drive\" when left out.");
    public static readonly TextMember Rotor = Table.Text("rotor", 60, "The rotor that it turns.").Required();
    public static readonly QuantityMember<UnitsNet.Torque> Torque = Table.SiQuantity(
        "torque", QuantityTypes.Torque, "[-1000000000 N.m; 1000000000 N.m]", "T0, torque at speed ω0.").Required();
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> Speed = Table.SiQuantity(
        "speed", QuantityTypes.RotationalSpeed, "[-1000000 rad/s; 1000000 rad/s]", "ω0; 0 when left out.");
    public static readonly QuantityMember<double> Slope = Table.SiQuantity(
        "slope", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000000 N.m.s/rad]",
            "K, torque lost for each rad/s that the rotor turns faster; 0 when left out: a constant torque.");
    public static readonly QuantityMember<UnitsNet.Torque> Least = Table.SiQuantity(
        "least", QuantityTypes.Torque, "[-1000000000 N.m; 1000000000 N.m]",
            "The torque never falls below this; no limit when left out. State most too.");
    public static readonly QuantityMember<UnitsNet.Torque> Most = Table.SiQuantity(
        "most", QuantityTypes.Torque, "[-1000000000 N.m; 1000000000 N.m]",
            "The torque never rises above this; no limit when left out. State least too.");

    private static void Across(CaseObject draft, CaseWalk walk)
    {
        MemberChecks.Needs(draft, walk, Least, Most);
        MemberChecks.Needs(draft, walk, Most, Least);
        if (draft.Si(Least) >= draft.Si(Most))
        {
            walk.Contradiction(draft, Least, "\"least\" must be below \"most\".");
        }
    }
}
