using System.Runtime.CompilerServices;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>What cases share that differ in the values of a few facts: mapped once, of one of them.</summary>
/// <remarks>
/// The cases state the same facts, and all but the varied ones are the very same objects. A piece is kept when no varied fact bears on it:
/// an element depends on its own facts, the date of the case and the PTO speed alone, and is known by the object it was mapped from.
/// Immutable; safe for several threads.
/// </remarks>
internal sealed class SharedMapping
{
    private readonly Dictionary<CaseObject, Element> elements = new(new SameFacts());
    private readonly HashSet<Member> varied;
    private readonly DrivelineChain? chain;
    private readonly MappedCase? whole;
    private readonly SimulationDrive? strikeDrive;
    private readonly SimulationDrive? engagementDrive;
    private readonly IReadOnlyList<ProtectiveDevice?> specified = [];

    /// <param name="mapped">One of the cases, without contradictions.</param>
    /// <param name="varied">The members of the varied facts, and those that lead to them.</param>
    public SharedMapping(MappedCase mapped, IEnumerable<Member> varied)
    {
        this.varied = [.. varied];
        CaseFile file = mapped.File;
        CaseObject? complaint = file.Facts.Get(CaseFileMembers.Complaint);
        IsComplaintSure = !Varies(CaseFileMembers.Complaint) && CaseComplaint.IsSure(complaint);
        whole = this.varied.IsSubsetOf(OfStrike) && (complaint is null || IsComplaintSure) ? mapped : null;
        if (!Varies(CaseFileMembers.Tractor, CaseFileMembers.Work) && IsWorkAtPto(file))
        {
            strikeDrive = CaseDrive.Of(file, mapped.Chain!, isStrike: true);
            engagementDrive = CaseDrive.Of(file, mapped.Chain!, isStrike: false);
        }

        IsStubShared = !Varies(CaseFileMembers.Tractor);
        Stub = IsStubShared ? CaseChain.Stub(file.Facts.Get(CaseFileMembers.Tractor)) : null;
        Defects = Varies(CaseFileMembers.Complaint, ShearBoltMembers.Hub, ShearBoltMembers.HubFriction, SlipClutchMembers.SlipTestResult,
            SlipClutchMembers.SpringLength, SlipClutchMembers.Wear, CoilSpringsMembers.SolidLength) ? null : CaseDefects.Of(file);
        Notes = Varies(CaseFileMembers.Tractor, CaseFileMembers.Implement, ElementMembers.Angle) ? null : CaseNotes.Of(file);
        Question = Defects is not null && this.varied.IsSubsetOf(ChainAndWork) ? mapped.Stated : null;
        if (Varies(CaseFileMembers.Date, TractorMembers.PtoSpeed))
        {
            return;
        }

        foreach (CaseObject facts in CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline)))
        {
            if (CaseChain.Mapped(file, facts) is { } element)
            {
                elements.Add(facts, element);
            }
        }

        chain = CaseChain.Laid(file, [], this);
        specified = chain is null || Varies(CaseFileMembers.Specified, ElementMembers.Specified) ? []
            : CaseSpecified.InOrder(file, chain, []);
    }

    /// <summary>True when the tractor is the same, so that its stub is.</summary>
    public bool IsStubShared { get; }

    /// <summary>The stub of the tractor, when it is shared.</summary>
    public Part? Stub { get; }

    /// <summary>Defects that somebody has seen; null when they are not shared.</summary>
    public IReadOnlyDictionary<SeenDefect, string[]>? Defects { get; }

    /// <summary>What the case shows beside its questions; null when it is not shared.</summary>
    public IReadOnlyList<Finding>? Notes { get; }

    /// <summary>A question that differs in its chain, its work and its places alone; null when more may differ.</summary>
    public ProtectionQuestion? Question { get; }

    /// <summary>True when nothing that the owner answers can contradict the rest of the case.</summary>
    public bool IsComplaintSure { get; }

    /// <summary>The mapping of a case that differs in the numbers of its strike alone; null of another.</summary>
    public MappedCase? Like(CaseFile file) => whole?.For(file, this);

    /// <summary>What drives the chain; null when it is not shared, or not known.</summary>
    public SimulationDrive? Drive(bool isStrike) => isStrike ? strikeDrive : engagementDrive;

    /// <summary>The element of facts; null when they are others, however equal.</summary>
    public Element? Of(CaseObject facts) => elements.TryGetValue(facts, out Element? element) ? element : null;

    /// <summary>The driveline of elements, of which most are those of the shared one; null when it must be made anew.</summary>
    public DrivelineChain? ChainOf(List<Element> changed)
    {
        return chain is null || chain.Elements.Count != changed.Count ? null : chain.With(changed.ToArray());
    }

    /// <summary>Where the facts of a question stand that differs in its chain and its work alone; null when they are not shared.</summary>
    public StatedPlaces? PlacesOf(DrivelineChain other) =>
        Question is not null && other.IsLaidLike(Question.Chain) ? Question.Places : null;

    /// <summary>What is specified for the device of that number in the driveline; false when it is another one, or not shared.</summary>
    public bool TrySpecified(int number, ProtectiveDevice fitted, out ProtectiveDevice? device)
    {
        bool isSame = number < specified.Count && ReferenceEquals(chain!.Devices[number], fitted);
        device = isSame ? specified[number] : null;
        return isSame;
    }

    /// <summary>What is specified in place of the same bolt in another joint; null when it is another bolt, or not shared.</summary>
    public ShearBoltDevice? SpecifiedLike(int number, ProtectiveDevice fitted) =>
        number < specified.Count && chain!.Devices[number] is ShearBoltDevice shared && fitted is ShearBoltDevice moved
            && ReferenceEquals(shared.BreakTorque.Joint.Bolt, moved.BreakTorque.Joint.Bolt)
            ? specified[number] as ShearBoltDevice : null;

    // Whatever stands in the driveline, and the torques of work.
    private static IEnumerable<Member> ChainAndWork =>
    [
        CaseFileMembers.Driveline, CaseFileMembers.Work, WorkMembers.SteadyPeak, WorkMembers.SteadyMean, WorkMembers.MeanPower,
        WorkMembers.PeakFactor, .. MemberTables.From(ElementMembers.Table).SelectMany(t => t.Members),
    ];

    // What was struck answers a question of the complaint; all else of a strike is simulated, and nothing is mapped of it.
    private static IEnumerable<Member> OfStrike => StrikeMembers.Table.Members.Where(m => m != StrikeMembers.What)
        .Append(CaseFileMembers.Strike);

    private static bool IsWorkAtPto(CaseFile file) =>
        file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.At) is not { } place || CaseWork.IsPto(place);

    private bool Varies(params Member[] members) => Array.Exists(members, varied.Contains);

    private sealed class SameFacts : IEqualityComparer<CaseObject>
    {
        public bool Equals(CaseObject? first, CaseObject? second) => ReferenceEquals(first, second);

        public int GetHashCode(CaseObject facts) => RuntimeHelpers.GetHashCode(facts);
    }
}
