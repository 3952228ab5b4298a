using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>A slip clutch of a case in its place in the driveline.</summary>
public sealed class CaseClutch
{
    private CaseClutch(SlipClutchDevice device) => Device = device;

    /// <summary>It as a device of the driveline.</summary>
    public SlipClutchDevice Device { get; }

    /// <summary>The clutch, perhaps without its spring length; null while its faces or springs are not all stated.</summary>
    public DiscClutch? Clutch => Fitted.Clutch;

    /// <summary>Its condition on the date of the case.</summary>
    public ClutchCondition Condition => Fitted.Condition;

    /// <summary>Speed at the clutch in work; null when the PTO speed or a ratio is not known.</summary>
    public RotationalSpeed? Speed => Device.SpeedInWork;

    internal FittedClutch Fitted => Device.Fitted!;

    /// <summary>The clutches of a case, in order from the tractor.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    /// <exception cref="ArgumentException">Facts contradict each other; <see cref="CaseQuestion"/> lists them.</exception>
    internal static IReadOnlyList<CaseClutch> AllOf(CaseFile file)
    {
        MappedCase mapped = MappedCase.Of(file);
        return mapped.Errors.Count == 0 ? mapped.Clutches
            : throw new ArgumentException("The case contradicts itself: " + mapped.Errors[0], nameof(file));
    }

    /// <summary>The cautions that stand first for the machine of a case; none for most.</summary>
    public static IReadOnlyList<Caution> CautionsOfMachine(CaseFile file) =>
        VerdictCautions.First(CaseQuestion.MachineOf(Guard.NotNull(file, nameof(file))));

    /// <summary>What the clutch is and does now.</summary>
    public ClutchReview Review() => ClutchReview.Of(Device);

    /// <summary>How to set it for a wanted slip torque, and what it is and does then.</summary>
    /// <param name="wanted">Expected torque while it slips; above 0.</param>
    /// <exception cref="InvalidOperationException">The faces and springs of the clutch are not all stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is zero, negative or not finite.</exception>
    public ClutchReview ReviewSetTo(Torque wanted) => ClutchReview.SetTo(Device, wanted);

    /// <summary>Its name and the torque at which it slips.</summary>
    public override string ToString() => Review().ToString();

    /// <summary>The slip clutches of a case's driveline.</summary>
    internal static IReadOnlyList<CaseClutch> In(DrivelineChain chain) =>
        HasAny(chain)
            ? [.. chain.Devices.OfType<SlipClutchDevice>().Select(device => new CaseClutch(device))] : [];

    private static bool HasAny(DrivelineChain chain)
    {
        for (int k = 0; k < chain.Devices.Count; k++)
        {
            if (chain.Devices[k] is SlipClutchDevice)
            {
                return true;
            }
        }

        return false;
    }
}
