using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Quantities;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Kernels;

/// <summary>Break torque over the radius of the shear planes, T = m · A · τ · r, or over the diameter that gives it.</summary>
internal sealed class BoltKernel : DeviceKernel
{
    private readonly ShearBoltDevice bolt;
    private readonly double radii;

    private BoltKernel(ShearBoltDevice bolt, double radii)
    {
        this.bolt = bolt;
        this.radii = radii;
    }

    public static BoltKernel? Of(ShearBoltDevice bolt, IReadOnlyList<Member> varied)
    {
        double radii = varied.Count > 1 ? double.NaN
            : varied.Count == 0 ? 0
            : varied[0] == ShearBoltMembers.Radius ? 1
            : varied[0] == ShearBoltMembers.ShaftDiameter || varied[0] == ShearBoltMembers.BoltCircleDiameter ? 0.5
            : double.NaN;
        return bolt.BreakTorque.IsKnown && !double.IsNaN(radii) ? new BoltKernel(bolt, radii) : null;
    }

    public override Band At(ClosedKind kind, ReadOnlySpan<double> facts) => facts.Length == 0 ? bolt.BreakTorque.Torque.SiBand
        : bolt.BreakTorque.AtRadiusNm(radii * facts[0]);

    // Without drag the torque is in proportion to the radius.
    public override bool TryColumn(ClosedOutput output, ReadOnlySpan<double> fact, Span<double> into)
    {
        double drag = bolt.BreakTorque.AtRadiusNm(0).At(output.End);
        double perRadius = bolt.BreakTorque.AtRadiusNm(1).At(output.End);
        if (drag > 0 || double.IsInfinity(perRadius))
        {
            return false;
        }

        ClosedForm.Scale(perRadius * radii, fact, into);
        return true;
    }
}
