using Driveline.Chains;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>One device of the chain against the work it must stand. Torques at the device.</summary>
public sealed class DeviceCheck
{
    private readonly DrivelineChain chain;
    private readonly double? peaksPerHour;
    private BoltFatigue? fatigue;
    private TorqueBand? tripAtPto;

    internal DeviceCheck(DrivelineChain chain, int index, ProtectiveDevice device, Answer quiet, Band? work, double? peaksPerHour)
    {
        this.chain = chain;
        Index = index;
        Device = device;
        Quiet = quiet;
        Work = work;
        this.peaksPerHour = peaksPerHour;
    }

    /// <summary>The device.</summary>
    public ProtectiveDevice Device { get; }

    /// <summary>Does it stay quiet in normal work?</summary>
    public Answer Quiet { get; }

    /// <summary>Trip low over work peak high at the device; 0 when the work is unbounded, null when either is not known.</summary>
    public double? Margin
    {
        get
        {
            NoSteps none = default;
            return MarginOf(ref none);
        }
    }

    /// <summary>
    /// The torque at which it acts after standing, referred to the PTO in the proportions of normal work; null when not known.
    /// </summary>
    public TorqueBand? TripAtPto => tripAtPto ??= Device.Breakaway is { } trip ? chain.ReferToPto(Device, trip) : null;

    /// <summary>
    /// How long a shear bolt lasts at least under the highest work peaks at the stated rate; null for another device, an unbounded
    /// work peak, or a rate that is not known.
    /// </summary>
    public BoltFatigue? Fatigue => fatigue
        ??= Device is ShearBoltDevice bolt && Work is { IsBounded: true } work && peaksPerHour is { } rate
            ? BoltFatigue.LowerBoundLife(bolt.BreakTorque, work.High, rate) : null;

    /// <summary>The comparison with the work, line by line; empty when either is not known or the work is unbounded.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        StepList log = StepList.New();
        MarginOf(ref log);
        return log.Lines;
    }

    internal int Index { get; }

    internal Band? Work { get; }

    private double? MarginOf<S>(ref S log)
        where S : struct, ISteps => Device.Running is not { } trip || Work is not { } work || work.High == 0 ? null
        : work.IsBounded ? MarginKernel.Work(trip.SiBand.Low, work.High, ref log) : 0;

    /// <inheritdoc/>
    public override string ToString() => Device.Name + ": " + Quiet;
}
