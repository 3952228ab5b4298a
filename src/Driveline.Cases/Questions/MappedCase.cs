using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>A case mapped to the core's own types, once, and every fact of it that contradicts another. Nothing is simulated.</summary>
internal sealed class MappedCase
{
    private CaseComplaint? complaint;

    private MappedCase(CaseFile file, DrivelineChain? chain, IReadOnlyList<CaseClutch> clutches, IReadOnlyList<CaseError> errors)
    {
        File = file;
        Chain = chain;
        Clutches = clutches;
        Errors = errors;
    }

    public CaseFile File { get; }

    /// <summary>The driveline; null when its facts contradict each other.</summary>
    public DrivelineChain? Chain { get; }

    /// <summary>The slip clutches, in order from the tractor.</summary>
    public IReadOnlyList<CaseClutch> Clutches { get; }

    /// <summary>Every fact that contradicts another.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>The question with what is stated alone; null when facts contradict each other.</summary>
    public ProtectionQuestion? Stated { get; private init; }

    /// <summary>What the owner complains of, with what the rest of the case answers; null when nobody complains.</summary>
    public CaseComplaint? Complaint => complaint
        ??= Stated is null || File.Facts.Get(CaseFileMembers.Complaint) is null ? null : CaseComplaint.Of(File, Stated, []);

    /// <summary>What it shares with other cases; null when it stands alone.</summary>
    public SharedMapping? Shared { get; private init; }

    /// <summary>The mapping of a case.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    public static MappedCase Of(CaseFile file) => Of(file, null);

    /// <summary>The mapping of a case that shares what it can with one mapped before.</summary>
    public static MappedCase Of(CaseFile file, SharedMapping? known)
    {
        if (known?.Like(Guard.NotNull(file, nameof(file))) is { } like)
        {
            return like;
        }

        var errors = new List<CaseError>();
        DrivelineChain? chain = CaseChain.Of(Guard.NotNull(file, nameof(file)), errors, known);
        IReadOnlyList<CaseClutch> clutches = chain is null ? [] : CaseClutch.In(chain);
        IReadOnlyList<ProtectiveDevice?> specified = chain is not null && errors.Count == 0
            ? CaseSpecified.InOrder(file, chain, errors, known) : [];
        if (chain is null || errors.Count > 0)
        {
            return new MappedCase(file, chain, clutches, errors.AsReadOnly());
        }

        ProtectionQuestion stated = Question(file, chain, specified, known);
        CaseComplaint? complaint = file.Facts.Get(CaseFileMembers.Complaint) is null || known is { IsComplaintSure: true } ? null
            : CaseComplaint.Of(file, stated, errors);
        return new MappedCase(file, chain, clutches, errors.Count == 0 ? [] : errors.AsReadOnly())
        {
            Stated = errors.Count == 0 ? stated : null,
            complaint = complaint,
            Shared = known,
        };
    }

    /// <summary>The mapping of a case that differs in nothing that is mapped.</summary>
    public MappedCase For(CaseFile like, SharedMapping known) => new(like, Chain, Clutches, Errors)
    {
        Stated = Stated,
        complaint = complaint,
        Shared = known,
    };

    private static ProtectionQuestion Question(
        CaseFile file, DrivelineChain chain, IReadOnlyList<ProtectiveDevice?> specified, SharedMapping? known)
    {
        IReadOnlyDictionary<SeenDefect, string[]> defects = known?.Defects ?? CaseDefects.Of(file);
        if (known?.Question is { } like)
        {
            return like.Like(
                chain, CaseWork.Peak(file, chain), CaseWork.Mean(file, chain),
                known.PlacesOf(chain) ?? CasePlaces.Of(file, chain, defects), specified);
        }

        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        CaseObject? complaint = file.Facts.Get(CaseFileMembers.Complaint);
        IReadOnlyList<Fact> told = ComplaintMembers.FactsOf(complaint);
        MachineKind machine = CaseQuestion.MachineOf(file);
        return ProtectionQuestion.About(chain).Open()
            .WithMachine(machine)
            .WithPartsComplete(file.Facts.Get(CaseFileMembers.PartsComplete) ?? false)
            .WithWork(CaseWork.Peak(file, chain))
            .WithEngagement(CaseEngagement.Of(file))
            .WithSteadyMean(CaseWork.Mean(file, chain))
            .WithEngineHighest(EngineHighest(file))
            .WithTripsInNormalWork(IsSeenToTrip(file))
            .WithHistory(HistoryMembers.HistoryOf(file.Facts.Get(CaseFileMembers.History)))
            .WithSpecifiedInOrder(specified)
            .WithPeaksPerHour(work?.Get(WorkMembers.PeaksPerHour))
            .WithDefects(defects.Count == 0 ? [] : [.. defects.Keys.OrderBy(d => d)])
            .WithPlaces(CasePlaces.Of(file, chain, defects))
            .WithLookedOver(complaint is not null && SeenDefects.AreRuledOut(told, machine))
            .Closed();
    }

    private static bool? IsSeenToTrip(CaseFile file)
    {
        CaseObject? complaint = file.Facts.Get(CaseFileMembers.Complaint);
        return file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.TripsInNormalWork)
            ?? (complaint?.Get(ComplaintMembers.Symptom) == Symptom.BreaksOften
                && OwnerFacts.When.Working.Equals(ComplaintMembers.FactOf(complaint, "when")) ? true : null);
    }

    private static TorqueBand? EngineHighest(CaseFile file) =>
        file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.EngineTorqueLine)?.Get(EngineTorqueLineMembers.Highest) is { } most
            ? TorqueBand.Exactly(most, Basis.Given("highest torque of the engine as stated"))
            : null;
}
