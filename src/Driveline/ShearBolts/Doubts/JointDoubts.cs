using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>Where the width of a break torque's band comes from.</summary>
/// <remarks>
/// T = m · A · κ · R_m · r at each end, times k_c at the low one, the drag on top of the high one: high over low of T is the product of
/// high over low of each. A shear plane that is not known counts what its band is wider than that of the part it may cut whose own band is
/// the wider: so much is gained at least by looking.
/// </remarks>
internal static class JointDoubts
{
    public static IReadOnlyList<TorqueDoubt> Of(BreakTorque torque)
    {
        ShearBoltJoint joint = torque.Joint;
        ShearPlane plane = torque.Plane;
        IReadOnlyDictionary<string, BandBasis> bases = JointBases.Of(joint);
        var all = new List<TorqueDoubt>();
        AddStrength(joint.Bolt, plane, Basis(bases, ShearBoltSteps.Tensile.Code), all);
        AddPlane(joint.Bolt, plane, bases, all);

        int planes = joint.Bolts * joint.PlanesPerBolt;
        int leastPlanes = joint.Bolts == 1 || joint.IsTight ? planes : joint.PlanesPerBolt;
        all.Add(TorqueDoubt.Of(
            DoubtCodes.HoleFit, planes / (double)leastPlanes, joint.HoleFit == HoleFit.NotKnown ? null : BandBasis.Of(joint.Basis),
            Measurements.HoleFit));

        Band free = torque.IfHubFree.SiBand;
        double unbent = leastPlanes * plane.Low.LoadN * joint.RadiusM;
        all.Add(TorqueDoubt.Of(
            DoubtCodes.Gap, unbent > 0 ? unbent / free.Low : 1, BandBasis.Of(joint.Basis), Measurements.HoleFit));
        AddDrag(torque, planes * plane.High.LoadN * joint.RadiusM, Basis(bases, ShearBoltSteps.Friction.Code), all);
        return TorqueDoubt.Ranked(all);
    }

    private static void AddStrength(ShearBolt bolt, ShearPlane plane, BandBasis? basis, List<TorqueDoubt> all)
    {
        double times = plane.Low.TensilePa > 0 ? plane.High.TensilePa / plane.Low.TensilePa : double.PositiveInfinity;
        all.Add(TorqueDoubt.Of(
            bolt.Material.Grade is null ? DoubtCodes.Material : DoubtCodes.Grade,
            times,
            basis,
            bolt.Material.IsIdentified ? Measurements.BoltHardness : Measurements.IdentifyDevice));
    }

    private static void AddPlane(ShearBolt bolt, ShearPlane plane, IReadOnlyDictionary<string, BandBasis> bases, List<TorqueDoubt> all)
    {
        IReadOnlyList<ShearPlane> parts = PartsCut(bolt, plane);
        ShearPlane widest = parts.OrderByDescending(p => High(p) / Low(p)).First();
        double ratio = widest.High.Ratio / widest.Low.Ratio;
        if (bolt.NeedsNeck && bolt.NeckDiameter is null)
        {
            all.Add(TorqueDoubt.Of(DoubtCodes.Neck, double.PositiveInfinity, null, Measurements.NeckDiameter));
        }
        else
        {
            all.Add(TorqueDoubt.Of(
                widest.Bolt.PlaneThrough == PlaneThrough.Thread ? DoubtCodes.ThreadInPlane : DoubtCodes.Section,
                widest.High.AreaM2 / widest.Low.AreaM2,
                Basis(bases, ShearBoltSteps.Area.Code),
                null));
            double any = parts.Max(High) / parts.Min(Low);
            all.Add(TorqueDoubt.Of(DoubtCodes.Plane, any / (High(widest) / Low(widest)), null, Measurements.PlaneThrough));
        }

        all.Add(TorqueDoubt.Of(DoubtCodes.ShearRatio, ratio, Basis(bases, ShearBoltSteps.Ratio.Code), null));
    }

    // Strength apart, which is the same wherever it is cut.
    private static double Low(ShearPlane plane) => plane.Low.AreaM2 * plane.Low.Ratio;

    private static double High(ShearPlane plane) => plane.High.AreaM2 * plane.High.Ratio;

    private static IReadOnlyList<ShearPlane> PartsCut(ShearBolt bolt, ShearPlane plane) =>
        bolt.PlaneThrough != PlaneThrough.NotKnown ? [plane]
        : bolt.NeckDiameterM > 0 ? [Through(bolt, PlaneThrough.Thread), Through(bolt, PlaneThrough.Shank), Through(bolt, PlaneThrough.Neck)]
        : [Through(bolt, PlaneThrough.Thread), Through(bolt, PlaneThrough.Shank)];

    private static ShearPlane Through(ShearBolt bolt, PlaneThrough part) => ShearPlane.Of(bolt.With(part));

    private static void AddDrag(BreakTorque torque, double boltsNm, BandBasis? basis, List<TorqueDoubt> all)
    {
        double free = torque.IfHubFree.SiBand.High;
        if (torque.DragNm is var drag && double.IsPositiveInfinity(drag))
        {
            all.Add(TorqueDoubt.Of(
                DoubtCodes.Hub, drag, null, torque.Joint.Hub == HubState.Seized ? Measurements.FreeHub : Measurements.HubTurn));
            drag = 0;
        }

        bool isBounded = boltsNm > 0 && !double.IsPositiveInfinity(boltsNm);
        all.Add(TorqueDoubt.Of(DoubtCodes.Drag, isBounded ? (free + drag) / boltsNm : 1, basis, Measurements.HubTurn));
    }

    private static BandBasis? Basis(IReadOnlyDictionary<string, BandBasis> bases, string code) =>
        bases.TryGetValue(code, out BandBasis? basis) ? basis : null;
}
