using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Quantities;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Kernels;

/// <summary>Torques and clamp force of a calculated slip clutch, T = N · μ · F · r, over springs, wear and measures of the faces.</summary>
internal sealed class ClutchKernel : DeviceKernel
{
    private static readonly Member[] Held =
    [
        SlipClutchMembers.SpringLength, SlipClutchMembers.Wear, SlipClutchMembers.OuterDiameter, SlipClutchMembers.InnerDiameter,
    ];

    private readonly DiscClutch clutch;
    private readonly ClutchCondition condition;
    private readonly FrictionBand friction;
    private readonly int[] places;

    private ClutchKernel(DiscClutch clutch, ClutchCondition condition, int[] places)
    {
        this.clutch = clutch;
        this.condition = condition;
        this.places = places;
        friction = clutch.Facing.Friction(condition.Surface);
    }

    public static ClutchKernel? Of(SlipClutchDevice device, IReadOnlyList<Member> varied)
    {
        SlipTorque torque = device.SlipTorque;
        bool isHeld = torque is { Source: SlipTorqueSource.Calculated, Condition.KnownStuck: false } && varied.All(Held.Contains);
        return isHeld && torque.Clutch is { SpringLength: not null } clutch
            ? new ClutchKernel(clutch, torque.Condition, [.. Held.Select(h => varied.ToList().IndexOf(h))]) : null;
    }

    public override Band At(ClosedKind kind, ReadOnlySpan<double> facts)
    {
        Band set = places[0] >= 0 ? Band.Exactly(facts[places[0]]) : clutch.SpringLength!.SiBand;
        Band wear = places[1] >= 0 ? Band.Exactly(facts[places[1]]) : SlipTorqueRules.WearM(clutch.Faces, condition);
        Band clamp = clutch.Springs.ForceN(SlipTorqueRules.DeflectionM(clutch.Springs, set, wear));
        if (kind == ClosedKind.ClampForce)
        {
            return clamp;
        }

        double outer = places[2] >= 0 ? facts[places[2]] / 2 : clutch.OuterM;
        double inner = places[3] >= 0 ? facts[places[3]] / 2 : clutch.InnerM;
        Band radius = SlipTorqueRules.RadiusM(outer, inner, condition.RunIn);
        if (kind == ClosedKind.SlipTorque)
        {
            return SlipTorqueRules.TorqueNm(clutch.Faces, friction.Running.SiBand, clamp, radius);
        }

        Band starts = SlipTorqueRules.TorqueNm(clutch.Faces, friction.Breakaway.SiBand, clamp, radius);
        return condition.MayBeTrustedToSlip ? starts : new Band(starts.Low, starts.Expected, double.PositiveInfinity);
    }
}
