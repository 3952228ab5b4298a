using Driveline.Chains;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Protection;

/// <summary>One part of the chain: what guards it, from which side, and with which margin. Torques at the part's own input.</summary>
public sealed class PartCheck
{
    private readonly DrivelineChain chain;
    private readonly Reach reach;
    private TorqueBand? damagedAtPto;

    internal PartCheck(DrivelineChain chain, int index, Part part, Answer guards, in Reach reach)
    {
        this.chain = chain;
        this.reach = reach;
        Index = index;
        Part = part;
        Guards = guards;
    }

    /// <summary>The part.</summary>
    public Part Part { get; }

    /// <summary>Is it guarded?</summary>
    public Answer Guards { get; }

    /// <summary>
    /// The device expected to act first for this part; null when none does, or stored energy reaches the part past every device.
    /// </summary>
    public ProtectiveDevice? GuardedBy => IsGuarded ? chain.Nodes[reach.Device].Device : null;

    /// <summary>From which side it is guarded.</summary>
    public GuardSide Side => !IsGuarded ? GuardSide.NotGuarded : IsAhead(reach.Device) ? GuardSide.DriveSide
        : GuardSide.WorkSide;

    /// <summary>The rotor or flywheel whose energy reaches the part past every device; null when none does.</summary>
    public Part? InertiaBetween => reach.PassesInertia ? chain.Nodes[reach.Inertia].Part : null;

    /// <summary>The torque at the part at which the first device acts; null when no device acts or none is known.</summary>
    public TorqueBand? ActsAt
    {
        get
        {
            if (ActingTrip is not { } trip)
            {
                return null;
            }

            return TorqueBand.OfSi(reach.Band, chain.ReferralBasis(trip.Basis, chain.Nodes[Math.Max(Index, reach.Device)]));
        }
    }

    /// <summary>The damage torque referred to the PTO, in the proportions of normal work; null when not known.</summary>
    public TorqueBand? DamagedAtPto => damagedAtPto ??= Part.Limit is { } limit ? chain.ReferToPto(Part, limit.DamagedAt) : null;

    /// <summary>
    /// Damage torque low over trip high; 0 when the trip is unbounded, null when either is not known, the limit is a default, stored energy
    /// passes the device, or only a rating is known and the trip may lie above it.
    /// </summary>
    public double? Margin
    {
        get
        {
            NoSteps none = default;
            return MarginOf(ref none);
        }
    }

    /// <summary>The comparison with the device, line by line; empty when either is not known or the device is unbounded.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        StepList log = StepList.New();
        MarginOf(ref log);
        return log.Lines;
    }

    /// <summary>The high end of <see cref="ActsAt"/>; null when it has none.</summary>
    internal Torque? ActsAtMost =>
        ActingTrip is not null && reach.Band.IsBounded ? Torque.FromNewtonMeters(reach.Band.High) : null;

    internal int Index { get; }

    internal bool RestsOnEfficiency => reach.RestsOnEfficiency;

    internal bool IsBarredByDevice => reach.IsBarred;

    internal bool PassesInertia => reach.PassesInertia;

    internal bool IsOpen => reach.IsOpen;

    internal Band Acts => reach.Band;

    /// <inheritdoc/>
    public override string ToString() => Part.Name + ": " + Guards;

    private double? MarginOf<S>(ref S log)
        where S : struct, ISteps => Part.Limit is not { IsDefault: false } limit || reach.PassesInertia ? null
        : (reach.HasUnknown && !reach.Band.IsBounded) || (limit.IsRating && limit.DamagedAt.SiBand.Low < reach.Band.High) ? null
        : double.IsPositiveInfinity(reach.Band.High) ? 0
        : reach.Band.High == 0 ? null
        : MarginKernel.Guard(limit.DamagedAt.SiBand.Low, reach.Band.High, ref log);

    private TorqueBand? ActingTrip =>
        reach.HasUnknown && !reach.Band.HasExpected ? null : GuardedBy?.Breakaway;

    private bool IsGuarded => reach.Device >= 0 && !reach.PassesInertia;

    private bool IsAhead(int other)
    {
        for (int k = chain.Nodes[Index].Parent; k >= 0; k = chain.Nodes[k].Parent)
        {
            if (k == other)
            {
                return true;
            }
        }

        return false;
    }
}
