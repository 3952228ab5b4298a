using Driveline.Cases.Members;
using Driveline.Choosing;

namespace Driveline.Cases;

/// <summary>A case: one tractor, one implement and the driveline between them. Facts that are not known are left out.</summary>
public sealed class CaseFile : CaseFacts
{
    internal CaseFile(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static CaseFile Empty { get; } = new(CaseFileMembers.Table.NoValues());

    /// <summary>What the case is, in one line. Null when not known.</summary>
    public string? Title => Reference<string>(CaseFileMembers.Title);

    /// <summary>The same with another <see cref="Title"/>.</summary>
    public CaseFile WithTitle(string? value) => new(Set(CaseFileMembers.Title, value));

    /// <summary>Anything else worth keeping. Null when not known.</summary>
    public string? Notes => Reference<string>(CaseFileMembers.Notes);

    /// <summary>The same with another <see cref="Notes"/>.</summary>
    public CaseFile WithNotes(string? value) => new(Set(CaseFileMembers.Notes, value));

    /// <summary>The day for which the case is stated; ages and intervals count to it. Null when not known.</summary>
    public DateTime? Date => Value<DateTime>(CaseFileMembers.Date);

    /// <summary>The same with another <see cref="Date"/>.</summary>
    public CaseFile WithDate(DateTime? value) => new(Set(CaseFileMembers.Date, value));

    /// <summary>The tractor and its PTO. Null when not known.</summary>
    public TractorFacts? Tractor => Reference<TractorFacts>(CaseFileMembers.Tractor);

    /// <summary>The same with another <see cref="Tractor"/>.</summary>
    public CaseFile WithTractor(TractorFacts? value) => new(Set(CaseFileMembers.Tractor, value is null || value.IsEmpty ? null : value));

    /// <summary>The implement. Null when not known.</summary>
    public ImplementFacts? Implement => Reference<ImplementFacts>(CaseFileMembers.Implement);

    /// <summary>The same with another <see cref="Implement"/>.</summary>
    public CaseFile WithImplement(ImplementFacts? value) => new(Set(CaseFileMembers.Implement, value is null || value.IsEmpty ? null : value));

    /// <summary>Everything that carries the torque, in order from the tractor; a torque is stated at the element's own input.</summary>
    public IReadOnlyList<DrivelineElement> Driveline => Reference<FactList<DrivelineElement>>(CaseFileMembers.Driveline) ?? FactList<DrivelineElement>.Empty;

    /// <summary>The same with another <see cref="Driveline"/>.</summary>
    public CaseFile WithDriveline(IEnumerable<DrivelineElement>? value) => new(Set(CaseFileMembers.Driveline, FactList<DrivelineElement>.Of(value)));

    /// <summary>True when the driveline lists every part that the protection should save. Null when not known.</summary>
    public bool? PartsComplete => Value<bool>(CaseFileMembers.PartsComplete);

    /// <summary>The same with another <see cref="PartsComplete"/>.</summary>
    public CaseFile WithPartsComplete(bool? value) => new(Set(CaseFileMembers.PartsComplete, value));

    /// <summary>What the manual or parts list specifies. Null when not known.</summary>
    public SpecifiedFacts? Specified => Reference<SpecifiedFacts>(CaseFileMembers.Specified);

    /// <summary>The same with another <see cref="Specified"/>.</summary>
    public CaseFile WithSpecified(SpecifiedFacts? value) => new(Set(CaseFileMembers.Specified, value is null || value.IsEmpty ? null : value));

    /// <summary>Bolts to choose from: thread, grade and perhaps the price of one; those of usual shops when left out. Null when not known.</summary>
    public string? Stock => Reference<string>(CaseFileMembers.Stock);

    /// <summary>The same with another <see cref="Stock"/>.</summary>
    public CaseFile WithStock(string? value) => new(Set(CaseFileMembers.Stock, value));

    /// <summary>The bolts that <see cref="Stock"/> names; null when none are stated.</summary>
    public StockList? ParsedStock => BoltTexts.Stock(Stock);

    /// <summary>The load of normal work. Null when not known.</summary>
    public WorkFacts? Work => Reference<WorkFacts>(CaseFileMembers.Work);

    /// <summary>The same with another <see cref="Work"/>.</summary>
    public CaseFile WithWork(WorkFacts? value) => new(Set(CaseFileMembers.Work, value is null || value.IsEmpty ? null : value));

    /// <summary>What is wrong, as the owner tells it. Null when not known.</summary>
    public ComplaintFacts? Complaint => Reference<ComplaintFacts>(CaseFileMembers.Complaint);

    /// <summary>The same with another <see cref="Complaint"/>.</summary>
    public CaseFile WithComplaint(ComplaintFacts? value) => new(Set(CaseFileMembers.Complaint, value is null || value.IsEmpty ? null : value));

    /// <summary>How a cutter's deck stands. Null when not known.</summary>
    public DeckFacts? Deck => Reference<DeckFacts>(CaseFileMembers.Deck);

    /// <summary>The same with another <see cref="Deck"/>.</summary>
    public CaseFile WithDeck(DeckFacts? value) => new(Set(CaseFileMembers.Deck, value is null || value.IsEmpty ? null : value));

    /// <summary>What the owner's options cost. Null when not known.</summary>
    public CostFacts? Costs => Reference<CostFacts>(CaseFileMembers.Costs);

    /// <summary>The same with another <see cref="Costs"/>.</summary>
    public CaseFile WithCosts(CostFacts? value) => new(Set(CaseFileMembers.Costs, value is null || value.IsEmpty ? null : value));

    /// <summary>A strike to be simulated. Null when not known.</summary>
    public StrikeFacts? Strike => Reference<StrikeFacts>(CaseFileMembers.Strike);

    /// <summary>The same with another <see cref="Strike"/>.</summary>
    public CaseFile WithStrike(StrikeFacts? value) => new(Set(CaseFileMembers.Strike, value is null || value.IsEmpty ? null : value));

    internal override MemberTable Table => CaseFileMembers.Table;
}
