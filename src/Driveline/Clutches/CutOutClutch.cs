using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>
/// A ratchet, cam or radial-pin clutch: a trip torque, what it still carries after the trip, and when it takes hold again.
/// </summary>
/// <remarks>
/// Cam: no torque after the trip, takes hold again below a low speed (one printed value: 200 min⁻¹). Ratchet and radial pin:
/// torque pulses up to the trip torque while the drive turns; their mean share is not printed anywhere seen, so it spans 0 to 1.
/// </remarks>
public sealed class CutOutClutch
{
    private static readonly Basis CamManual = Basis.Published(
        "loader-wagon operator manual (maker withheld)", "undated copy", "cam cut-out clutch");
    private static readonly Basis NotPrinted = Basis.FromMemory("torque of a ratchet or pin clutch after its trip");

    private readonly double reengageRadPerS;

    private CutOutClutch(CutOutKind kind, TorqueBand? trip, RatioBand afterTrip, double reengageRadPerS, Basis reengageBasis)
    {
        Kind = kind;
        Trip = trip;
        AfterTrip = afterTrip;
        this.reengageRadPerS = reengageRadPerS;
        ReengageBasis = reengageBasis;
        Findings = Array.AsReadOnly(Judge());
    }

    /// <summary>How it lets go.</summary>
    public CutOutKind Kind { get; }

    /// <summary>Torque at which it trips; null when not known.</summary>
    public TorqueBand? Trip { get; }

    /// <summary>Torque carried after the trip over the trip torque, highest pulse at the high end [-].</summary>
    public RatioBand AfterTrip { get; }

    /// <summary>Speed below which it takes hold again; null when not known.</summary>
    public RotationalSpeed? ReengagesBelow =>
        double.IsNaN(reengageRadPerS) ? null : RotationalSpeed.FromRevolutionsPerMinute(reengageRadPerS / Si.Rpm);

    /// <summary>Where that speed comes from.</summary>
    public Basis ReengageBasis { get; }

    /// <summary>Torque carried after the trip; null when the trip is not known.</summary>
    public TorqueBand? Residual => Trip is null ? null
        : TorqueBand.OfSi(Trip.SiBand.Times(AfterTrip.SiBand), BandBasis.Combine(Trip.Basis, AfterTrip.Basis));

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>A cut-out clutch whose trip torque is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No behaviour is held for that kind.</exception>
    public static CutOutClutch Of(CutOutKind kind) => Build(kind, null);

    /// <summary>A cut-out clutch of a stated trip torque.</summary>
    /// <param name="kind">How it lets go.</param>
    /// <param name="trip">Torque at which it trips.</param>
    /// <exception cref="ArgumentException">No behaviour is held for that kind, or the torque is missing.</exception>
    public static CutOutClutch Of(CutOutKind kind, TorqueBand trip) => Build(kind, Guard.NotNull(trip, nameof(trip)));

    /// <summary>The same clutch with a stated share of the torque after the trip.</summary>
    /// <param name="share">Share of the trip torque; high end at most 1.</param>
    /// <exception cref="ArgumentException">The share has no high end.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The high end is above 1.</exception>
    public CutOutClutch WithAfterTrip(RatioBand share)
    {
        if (!Guard.NotNull(share, nameof(share)).IsBounded)
        {
            throw new ArgumentException("The share after the trip needs a high end; got an unbounded one.", nameof(share));
        }

        Guard.Within(share.SiBand.High, 0, 1, "Share of the torque after the trip", string.Empty, nameof(share));
        return new CutOutClutch(Kind, Trip, share, reengageRadPerS, ReengageBasis);
    }

    /// <summary>The same clutch with a stated speed below which it takes hold again.</summary>
    /// <param name="speed">Above 0.</param>
    /// <param name="basis">Where it comes from.</param>
    /// <exception cref="ArgumentException">The speed is not above 0, or the basis is missing.</exception>
    public CutOutClutch WithReengagement(RotationalSpeed speed, Basis basis) => new(
        Kind,
        Trip,
        AfterTrip,
        Guard.Positive(Si.RadiansPerSecond(speed), "Speed of taking hold", "rad/s", nameof(speed)),
        Guard.NotNull(basis, nameof(basis)));

    /// <inheritdoc/>
    public override string ToString() => Kind + " clutch, trip " + (Trip is null ? "not known" : Trip.ToString());

    private static CutOutClutch Build(CutOutKind kind, TorqueBand? trip) => kind switch
    {
        CutOutKind.Cam => new CutOutClutch(kind, trip, RatioBand.OfSi(Band.Exactly(0), BandBasis.Of(CamManual)), 200 * Si.Rpm, CamManual),
        CutOutKind.NotKnown or CutOutKind.Ratchet or CutOutKind.RadialPin =>
            new CutOutClutch(kind, trip, RatioBand.OfSi(new Band(0, 0.5, 1), BandBasis.Of(NotPrinted)), double.NaN, NotPrinted),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No behaviour is held for that kind of cut-out clutch."),
    };

    private Finding[] Judge()
    {
        var findings = new List<Finding>();
        if (Trip is null)
        {
            findings.Add(Finding.Of(ClutchFindings.CutOutTripNotKnown, Severity.Danger).WithBecause(ClutchFact.Trip)
                .WithSettledBy(Measurements.IdentifyDevice));
        }

        if (AfterTrip.SiBand.High <= 0 && !double.IsNaN(reengageRadPerS))
        {
            findings.Add(
                Finding.Of(ClutchFindings.CutOutHoldsOpen, Severity.Note).WithBecause(ClutchFact.ReengagesBelow)
                    .With("speed", QuantityKind.RotationalSpeed, reengageRadPerS));
        }

        return findings.ToArray();
    }
}
