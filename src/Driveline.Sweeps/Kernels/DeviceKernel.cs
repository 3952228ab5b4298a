using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Quantities;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Kernels;

/// <summary>The torques and forces of one device over the facts of it that vary, without a case. Allocates nothing.</summary>
internal abstract class DeviceKernel
{
    /// <summary>The kernel of a device whose only other facts are as they are; null when it has none for these facts.</summary>
    public static DeviceKernel? Of(ProtectiveDevice? device, IReadOnlyList<Member> varied) => device switch
    {
        ShearBoltDevice bolt => BoltKernel.Of(bolt, varied),
        SlipClutchDevice clutch => ClutchKernel.Of(clutch, varied),
        _ => null,
    };

    /// <summary>One row.</summary>
    /// <param name="kind">Which torque or force.</param>
    /// <param name="facts">The varied facts in SI, in the order of the members.</param>
    public abstract Band At(ClosedKind kind, ReadOnlySpan<double> facts);

    /// <summary>A column of rows that vary one fact; false when rows must be computed one by one.</summary>
    public virtual bool TryColumn(ClosedOutput output, ReadOnlySpan<double> fact, Span<double> into) => false;
}
