using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>One bolt in the place of the fitted one, with what it does to both questions.</summary>
/// <remarks>
/// The margins are those of the whole machine: every device against the work, every part against the device that acts first for it.
/// Showing a bolt is not recommending it: <see cref="Cautions"/> belong to it.
/// </remarks>
public sealed class RankedBolt
{
    /// <summary>Hours of work over which trips are counted: about a season of a small machine.</summary>
    private const double SeasonHours = 100;

    private readonly Lazy<ProtectionProbabilities> probabilities;
    private readonly Lazy<Probability?> onePeak;
    private readonly Lazy<Probability?> pass;
    private readonly Lazy<double?> tripsPerHour;
    private readonly Lazy<IReadOnlyList<NeighbourGrade>> steps;
    private readonly HoleUse hole;

    internal RankedBolt(
        StockItem item, HoleUse hole, ProtectionVerdict verdict, ShearBoltDevice device, BoltComparison against, bool showsStronger)
    {
        Item = item;
        this.hole = hole;
        Verdict = verdict;
        Device = device;
        Check = verdict.Devices.First(d => ReferenceEquals(d.Device, device));
        IsFitted = against.IsFitted;
        IsSpecified = against.IsSpecified;
        IsStrongerThanFitted = against.IsStrongerThanFitted;
        IsStrongerThanSpecified = against.IsStrongerThanSpecified;
        WorkMargin = verdict.WorkMargin;
        GuardMargin = verdict.GuardMargin;
        Cautions = [.. OwnCautions()];
        probabilities = new Lazy<ProtectionProbabilities>(() => ProtectionProbabilities.Of(verdict));
        onePeak = new Lazy<Probability?>(() => probabilities.Value.OnePeakTrips);
        pass = new Lazy<Probability?>(Pass);
        tripsPerHour = new Lazy<double?>(Trips);
        steps = new Lazy<IReadOnlyList<NeighbourGrade>>(
            () => [.. NeighbourGrade.Of(verdict, device).Where(n => showsStronger || !n.IsStronger)]);
    }

    /// <summary>The bolt as it stands in the stock list.</summary>
    public StockItem Item { get; }

    /// <summary>Its grade; null for a pin or rod.</summary>
    public BoltGrade? Grade => Item.Grade;

    /// <summary>Its thread; null for a pin or rod.</summary>
    public ScrewThread? Thread => Item.Thread;

    /// <summary>Diameter of the hole it would sit in.</summary>
    public Length HoleDiameter => Length.FromMeters(hole.HoleM);

    /// <summary>True when it needs a permitted hole other than the one that is there.</summary>
    public bool NeedsRedrilling => hole.IsRedrilled;

    /// <summary>The torque at which it breaks, referred to the PTO; null when a speed ratio before it is not known.</summary>
    public TorqueBand? Trip => Check.TripAtPto;

    /// <summary>Smallest trip low over work peak high of any device; 0 when the work is unbounded, null when not known.</summary>
    public double? WorkMargin { get; }

    /// <summary>Smallest damage torque low over trip high of any part; 0 when the trip is unbounded, null when not known.</summary>
    public double? GuardMargin { get; }

    /// <summary>
    /// The worse of the two margins, by which bolts are ranked; the guard margin alone while work is not known; null without a guard
    /// margin.
    /// </summary>
    public double? WorseMargin => GuardMargin is { } guard ? Math.Min(guard, WorkMargin ?? guard) : null;

    /// <summary>
    /// True when both margins exceed what the policy asks for and no answer is No: even its weakest specimen is quiet, even its strongest
    /// guards.
    /// </summary>
    public bool LeavesRoom => Verdict.Guards != Answer.No && Verdict.Quiet != Answer.No
        && GuardMargin > Verdict.Policy.MinimumGuardMargin && WorkMargin > Verdict.Policy.MinimumWorkMargin;

    /// <summary>Probability that one work peak trips a device; null when not known.</summary>
    public Probability? OnePeakTrips => onePeak.Value;

    /// <summary>
    /// Probability that an overload damages the part most at risk before anything trips; null when not known. At least this much while a
    /// part's limit is not known.
    /// </summary>
    public Probability? DamagedFirst => probabilities.Value.MostAtRisk?.DamagedFirst;

    /// <summary>
    /// Probability, at least, that it does both its jobs: one work peak leaves it whole, and an overload trips it before any part is
    /// damaged.
    /// </summary>
    /// <remarks>
    /// 1 − P(one peak trips) − Σ P(part damaged first), not below 0: the chance of any of several failures is at most their sum,
    /// whatever they share. Null when a probability is not known, or a part or a limit is missing.
    /// </remarks>
    public Probability? PassProbability => pass.Value;

    /// <summary>
    /// Breaks by work peaks an hour of work, a new bolt after each break and each 100 h; null when work or the rate of its peaks is not
    /// known.
    /// </summary>
    /// <remarks>
    /// P(T ≤ H) / E[min(T, H)] with T the time to the break and H = 100 h (renewal). All peaks meet the strength of the one fitted bolt.
    /// The probability counts as at least 0.001, so the rate is never below 0.001 in 100 h. Fatigue is not in it, see
    /// <see cref="FatigueHours"/>.
    /// </remarks>
    public double? TripsPerHour => tripsPerHour.Value;

    /// <summary>
    /// Hours of work it lasts at least under repeated work peaks; null when not known or on a seized hub, infinite when they do not tire
    /// it.
    /// </summary>
    public double? FatigueHours => Device.NeverLetsGo ? null : Check.Fatigue?.Hours;

    /// <summary>True when it is the bolt that is fitted.</summary>
    public bool IsFitted { get; }

    /// <summary>True when it is the bolt that the manual specifies: its thread and its grade, or the same pin.</summary>
    public bool IsSpecified { get; }

    /// <summary>True when its hole is wider than the normal one for its size.</summary>
    public bool IsLoose => hole.IsLoose;

    /// <summary>True when it breaks later than the fitted bolt; null when they cannot be compared.</summary>
    public bool? IsStrongerThanFitted { get; }

    /// <summary>
    /// True when it breaks later than the bolt the manual specifies, like with like: cut in the same plane; null when they cannot be
    /// compared.
    /// </summary>
    public bool? IsStrongerThanSpecified { get; }

    /// <summary>The same size one grade weaker and one stronger; a stronger one only where every limit is known.</summary>
    public IReadOnlyList<NeighbourGrade> GradeSteps => steps.Value;

    /// <summary>The cautions that belong to this bolt.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The verdict with this bolt.</summary>
    public ProtectionVerdict Verdict { get; }

    internal ShearBoltDevice Device { get; }

    internal DeviceCheck Check { get; }

    /// <summary>A rod or pin of which nothing assures how strong it is at most.</summary>
    internal bool HasNoUpperEnd => Item.Grade is null && !Device.BreakTorque.IfHubFree.IsBounded;

    /// <summary>Strongest over weakest specimen; infinite when unbounded.</summary>
    internal double Scatter => Device.InGoodOrder is { IsBounded: true } trip && trip.SiBand.Low > 0 ? trip.SiBand.High / trip.SiBand.Low
        : double.PositiveInfinity;

    /// <inheritdoc/>
    public override string ToString() => Item.Name;

    private IEnumerable<Caution> OwnCautions()
    {
        if (IsStrongerThanSpecified != false)
        {
            yield return ChoosingCautions.OnlyTheManual;
        }

        if (NeedsRedrilling)
        {
            yield return ChoosingCautions.RedrillOnlyWithMaker;
        }

        if (hole.IsLoose)
        {
            yield return ChoosingCautions.LooseInHole;
        }

        if (Verdict.Guards != Answer.Yes)
        {
            yield return ChoosingCautions.MayNotProtect;
        }

        if (Verdict.Quiet != Answer.Yes)
        {
            yield return ChoosingCautions.MayActInWork;
        }
    }

    private Probability? Pass() => OnePeakTrips is not { } trips
        || probabilities.Value is not { IsAtLeast: false, Parts.Count: > 0 } known ? null
        : new Probability(
            1 - trips.Value - known.Parts.Sum(p => p.DamagedFirst.Value),
            Provenance.Basis.Weakest([trips.Basis, .. known.Parts.Select(p => p.DamagedFirst.Basis)]));

    private double? Trips()
    {
        if (Verdict.Question.PeaksPerHour is not { } rate || rate <= 0 || probabilities.Value.Forecast(Check, rate) is not { } forecast)
        {
            return null;
        }

        Duration season = Duration.FromHours(SeasonHours);
        double hours = Si.Seconds(forecast.ExpectedTimeUpTo(season)) / 3600;
        return Math.Max(forecast.Within(season).Value, Probability.Floor) / hours;
    }
}
