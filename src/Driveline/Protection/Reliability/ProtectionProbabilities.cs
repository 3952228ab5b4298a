using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>The probabilities behind a verdict. A member is null when a band it needs is not known; nothing is put in its place.</summary>
/// <remarks>
/// For parts: load = the torque at which the first device acts, at the part; strength = the part's damage torque there.
/// For devices: load = a peak of normal work at the device; strength = its running trip torque.
/// What energy beyond the device does to a part is not in these numbers; the verdict's findings tell.
/// </remarks>
internal sealed class ProtectionProbabilities
{
    private readonly ProtectionVerdict verdict;
    private readonly BandShape shape;

    private ProtectionProbabilities(ProtectionVerdict verdict, BandShape shape)
    {
        this.verdict = verdict;
        this.shape = shape;
        Parts = [.. PartRisks()];
    }

    /// <summary>Every part whose limit and guarding torque are known, in order from the tractor.</summary>
    public IReadOnlyList<PartRisk> Parts { get; }

    /// <summary>The part most likely to be damaged before a device acts; null when none is known.</summary>
    public PartRisk? MostAtRisk
    {
        get
        {
            PartRisk? most = null;
            foreach (PartRisk part in Parts)
            {
                if (most is null || part.DamagedFirst.Value > most.DamagedFirst.Value)
                {
                    most = part;
                }
            }

            return most;
        }
    }

    /// <summary>
    /// True when a part is missing from the list or has no known limit: the risk of the machine is then at least what is shown.
    /// </summary>
    public bool IsAtLeast => !verdict.Question.PartsComplete || verdict.MissingParts.Count > 0
        || verdict.Parts.Any(p => !p.Part.StoresEnergy && Parts.All(r => !ReferenceEquals(r.Part, p.Part)));

    /// <summary>Probability that one work peak makes some device act; null when work or a trip torque is not known.</summary>
    public Probability? OnePeakTrips
    {
        get
        {
            double quiet = 1;
            var bases = new List<Basis>();
            foreach (DeviceCheck check in verdict.Devices)
            {
                if (Work(check) is not { } work || Trip(check) is not { } trip)
                {
                    return null;
                }

                // Every device meets the same peak: at least the largest single probability. Independent strengths give at most this.
                quiet *= 1 - Interference.Reached(work, trip);
                bases.Add(Basis.Weakest(work.Basis, trip.Basis));
            }

            return bases.Count == 0 ? null : new Probability(1 - quiet, Basis.Weakest(bases));
        }
    }

    /// <summary>
    /// Which device acts first, in order of <see cref="ProtectionVerdict.Devices"/>; null when a trip torque or a ratio is not known.
    /// </summary>
    public FirstToAct? FirstToAct
    {
        get
        {
            Distribution?[] trips = [.. verdict.Devices.Select(d => d.TripAtPto is { } trip ? BandDistribution.TryOf(trip, shape) : null)];
            return trips.Length == 0 || Array.Exists(trips, t => t is null) ? null
                : Protection.FirstToAct.Among([.. trips.OfType<Distribution>()]);
        }
    }

    /// <summary>The probabilities with the default shape of bands.</summary>
    public static ProtectionProbabilities Of(ProtectionVerdict verdict) => Of(verdict, BandShape.Default);

    /// <summary>The probabilities of a verdict.</summary>
    public static ProtectionProbabilities Of(ProtectionVerdict verdict, BandShape shape) =>
        new(Guard.NotNull(verdict, nameof(verdict)), Guard.NotNull(shape, nameof(shape)));

    /// <summary>When one fitted device is likely to act in normal work; null when work or its trip torque is not known.</summary>
    /// <param name="device">One of the verdict's devices.</param>
    /// <param name="peaksPerHour">Work peaks an hour; above 0.</param>
    public TripForecast? Forecast(DeviceCheck device, double peaksPerHour)
    {
        Guard.NotNull(device, nameof(device));
        Guard.Positive(peaksPerHour, "Peaks per hour", "1/h", nameof(peaksPerHour));
        return Work(device) is { } work && Trip(device) is { } trip ? TripForecast.Of(work, trip, peaksPerHour) : null;
    }

    private IEnumerable<PartRisk> PartRisks()
    {
        foreach (PartCheck check in verdict.Parts)
        {
            if (check.Part.Limit is not { IsDefault: false } limit || BandDistribution.TryOf(limit.DamagedAt, shape) is not { } strength)
            {
                continue;
            }

            if (check.IsOpen)
            {
                yield return new PartRisk(check.Part, new Probability(1, strength.Basis));
            }
            else if (check.ActsAt is { } acts && BandDistribution.TryOf(acts, shape) is { } trip)
            {
                yield return new PartRisk(check.Part, Interference.Of(trip, strength));
            }
        }
    }

    // How a bolt on a seized hub shares the torque with the rust, nobody knows.
    private BandDistribution? Trip(DeviceCheck check) =>
        !check.Device.NeverLetsGo && check.Device.Running is { } running ? BandDistribution.TryOf(running, shape) : null;

    private BandDistribution? Work(DeviceCheck check) => check.Work is { } work && verdict.WorkPeak is { } peak
        ? BandDistribution.TryOf(TorqueBand.OfSi(work, peak.Basis), shape)
        : null;
}
