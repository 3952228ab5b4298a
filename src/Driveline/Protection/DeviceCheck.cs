using Driveline.Chains;
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
    public double? Margin => Device.Running is not { } trip || Work is not { } work || work.High == 0 ? null
        : work.IsBounded ? trip.SiBand.Low / work.High : 0;

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

    internal int Index { get; }

    internal Band? Work { get; }

    /// <inheritdoc/>
    public override string ToString() => Device.Name + ": " + Quiet;
}
