using Driveline.Chains;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>
/// The answer to a protection question: two answers, a headline, and what they rest on. Immutable; it keeps its question.
/// </summary>
public sealed class ProtectionVerdict
{
    private const int NotJudged = -1;

    private readonly PartCheck[] parts;
    private readonly DeviceCheck[] devices;
    private int headline = NotJudged;
    private List<Doubt>? doubts;
    private AsSpecified? asSpecified;
    private Standing? standing;
    private IReadOnlyList<PartCheck>? shownParts;
    private IReadOnlyList<DeviceCheck>? shownDevices;
    private IReadOnlyList<Finding>? findings;
    private IReadOnlyList<Measurement>? measureNext;
    private IReadOnlyList<NeighbourGrade>? neighbourGrades;
    private IReadOnlyList<Caution>? cautions;
    private IReadOnlyList<LadderRung>? ladder;
    private IReadOnlyList<FittedAgainstSpecified>? comparisons;
    private IReadOnlyList<PartKind>? missingParts;

    internal ProtectionVerdict(ProtectionQuestion question, ProtectionPolicy policy, PartCheck[] parts, DeviceCheck[] devices)
    {
        Question = question;
        Policy = policy;
        this.parts = parts;
        this.devices = devices;
        Guards = VerdictAnswers.Guards(this);
        QuietByNumbers = VerdictAnswers.Quiet(this);
        Quiet = Experience.Judge(this, QuietByNumbers);
    }

    /// <summary>The question that was asked.</summary>
    public ProtectionQuestion Question { get; }

    /// <summary>The policy it was asked with.</summary>
    public ProtectionPolicy Policy { get; }

    /// <summary>The verdict in one word.</summary>
    public Headline Headline =>
        (Headline)(headline != NotJudged ? headline : headline = (int)VerdictAnswers.Headline(this));

    /// <summary>Does the protection act before a part is damaged?</summary>
    public Answer Guards { get; }

    /// <summary>Does it stay quiet in normal work?</summary>
    public Answer Quiet { get; }

    /// <summary>True when hours of work say that it is quiet, which the numbers alone do not.</summary>
    public bool IsQuietByExperience => Quiet == Answer.Yes && QuietByNumbers != Answer.Yes;

    /// <summary>Every part, in order from the tractor.</summary>
    public IReadOnlyList<PartCheck> Parts => shownParts ??= Array.AsReadOnly(parts);

    /// <summary>Every device, in order from the tractor.</summary>
    public IReadOnlyList<DeviceCheck> Devices => shownDevices ??= Array.AsReadOnly(devices);

    /// <summary>The torque at which the first device acts, referred to the PTO; null when no device is known.</summary>
    public TorqueBand? Trip => First?.TripAtPto;

    /// <summary>The device expected to act first, by the torque referred to the PTO; null when none is known.</summary>
    public ProtectiveDevice? FirstDevice => First?.Device;

    /// <summary>The peaks of normal work at the PTO; null when not known.</summary>
    public TorqueBand? WorkPeak => Question.Work?.Torque;

    /// <summary>The part with the lowest expected damage torque, referred to the PTO; null when no limit but a default is known.</summary>
    public PartCheck? WeakestPart => VerdictMargins.WeakestPart(Question.Chain, parts);

    /// <summary>Smallest trip low over work peak high of any device; 0 when the work is unbounded, null when not known.</summary>
    public double? WorkMargin => VerdictMargins.Work(devices);

    /// <summary>
    /// Smallest damage torque low over trip high of any part, each at its own position; 0 when the trip is unbounded, null when not known.
    /// </summary>
    public double? GuardMargin => VerdictMargins.Guard(parts);

    /// <summary>How what is fitted compares with what the manual specifies: the worst of <see cref="Comparisons"/>.</summary>
    public FittedAgainstSpecified FittedAgainstSpecified => FittedAgainstSpecified.Worst(Comparisons);

    /// <summary>Is what is fitted what the manual names, in working order? It says nothing of margins.</summary>
    public AsSpecified AsSpecified => asSpecified ??= AsSpecified.Of(this);

    /// <summary>How each device compares with what the manual specifies in its place, in order from the tractor.</summary>
    public IReadOnlyList<FittedAgainstSpecified> Comparisons => comparisons ??= FittedAgainstSpecified.Each(Question, Policy);

    /// <summary>Kinds of part this machine must have that are not in the list.</summary>
    public IReadOnlyList<PartKind> MissingParts => missingParts
        ??= ExpectedParts.AreAllIn(Question.Chain, Question.Machine) ? []
            : [.. ExpectedParts.For(Question.Machine).Where(kind => !Array.Exists(parts, p => ExpectedParts.Counts(p.Part.Kind, kind)))];

    /// <summary>True when engaging the PTO may reach the trip torque of a device for which that is a nuisance; habit cures it.</summary>
    public bool EngagementMayTrip => EngagementCheck.MayTrip(Question, devices);

    /// <summary>
    /// True when the peak of engaging the PTO, stated or simulated, is expected to make a device act for which that is a nuisance.
    /// </summary>
    public bool EngagementTrips => TrippedByEngagement is not null;

    /// <summary>Whether the machine may be used as it is, and what lifts what forbids it; every answer heads with it.</summary>
    public Standing Standing => standing ??= StandingRules.Of(this, [], []);

    /// <summary>Everything a caller must notice, worst first.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= VerdictFindings.Of(this);

    /// <summary>What to measure or look up next, most useful first; empty when nothing is in doubt.</summary>
    public IReadOnlyList<Measurement> MeasureNext => measureNext ??= NextMeasurements.Of(this);

    /// <summary>What a bolt one grade weaker or stronger in the same hole would do; empty when the bolt has no such neighbours.</summary>
    public IReadOnlyList<NeighbourGrade> NeighbourGrades => neighbourGrades ??= NeighbourGrade.Of(this);

    /// <summary>The cautions that go with this result.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= VerdictCautions.Of(Question.Machine, Question.Chain, Policy);

    /// <summary>All torques in order, as a picture shows them, referred to the PTO.</summary>
    public IReadOnlyList<LadderRung> Ladder => ladder ??= TorqueLadder.Of(this);

    /// <summary>The weakest basis of any number the answer rests on; null when it rests on no number.</summary>
    public Basis? WeakestBasis => VerdictMargins.WeakestBasis(devices, parts, WorkPeak);

    /// <summary>The parts, to be gone through without an enumerator.</summary>
    internal PartCheck[] AllParts => parts;

    /// <summary>The devices, to be gone through without an enumerator.</summary>
    internal DeviceCheck[] AllDevices => devices;

    /// <summary>What the numbers alone say of quiet.</summary>
    internal Answer QuietByNumbers { get; }

    /// <summary>True when the limit of at least one part is known without a default.</summary>
    internal bool HasKnownLimit => Array.Exists(parts, p => p.Part.Limit is { IsAssumed: false });

    /// <summary>
    /// The device that the expected peak of engaging makes act; null when none. What the PTO clutch could pass is no peak.
    /// </summary>
    internal DeviceCheck? TrippedByEngagement => EngagementCheck.Tripped(Question, devices);

    internal IReadOnlyList<Doubt> Doubts => doubts ??= Protection.Doubts.Of(this);

    private DeviceCheck? First => VerdictMargins.First(Question.Chain, devices);

    /// <inheritdoc/>
    public override string ToString() => Headline + " (guards " + Guards + ", quiet " + Quiet + ")";
}
