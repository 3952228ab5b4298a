using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>
/// The whole answer to an owner's letter: causes, next check, remedies, inspection, deck, cost, and the cautions that belong to each.
/// </summary>
/// <remarks>Built from a complaint with its model; deck, costs and prices are added. Immutable.</remarks>
public sealed class OwnerAdvice
{
    private IReadOnlyList<OwnerAnswer>? answers;
    private Standing? standing;
    private IReadOnlyList<Finding>? findings;
    private IReadOnlyList<Caution>? cautions;
    private Basis? basis;

    private static readonly HashSet<string> BoltOut = new(StringComparer.Ordinal)
    {
        Advice.Remedies.SpecifiedBolt, Advice.Remedies.ShankInPlane, Advice.Remedies.ChangeBoltsInTime, Advice.Remedies.FreeHub,
            Advice.Remedies.TrueHoles, Advice.Remedies.StrongerBolt,
    };

    private static readonly Symptom[] Broken =
    [
        Symptom.BreaksOften, Symptom.BreaksWhenEngaging, Symptom.BreaksAtOnePlace, Symptom.BrokenBoltStuck, Symptom.HolesOval,
    ];

    private static readonly Caution[] ClutchCautions = [Caution.HotClutch, Caution.HotClutchDryGrass, Caution.NeverTighter];

    private OwnerAdvice(Diagnosis diagnosis, MachineKind machine)
    {
        Diagnosis = diagnosis;
        Machine = machine;
        Remedies = diagnosis.Remedies;
        Inspection = InspectionOf(diagnosis.Complaint)?.For(machine);
        BoltChange = HasBolt && IsBoltToBeChanged ? BoltChangeCard.For(machine, Access) : null;
    }

    private OwnerAdvice(OwnerAdvice other)
        : this(other.Diagnosis, other.Machine)
    {
        Remedies = other.Remedies;
        Deck = other.Deck;
        Costs = other.Costs;
        Currency = other.Currency;
        ArePricesGuessed = other.ArePricesGuessed;
        Notes = other.Notes;
        Head = other.Head;
        Asks = other.Asks;
    }

    /// <summary>Causes with their reasons, and the next check.</summary>
    public Diagnosis Diagnosis { get; }

    /// <summary>Who writes to whom, and what the owner wrote.</summary>
    public LetterHead Head { get; private init; } = LetterHead.Empty;

    /// <summary>What the owner asks beside what is wrong, in his order.</summary>
    public IReadOnlyList<OwnerAsk> Asks { get; private init; } = [];

    /// <summary>The answers to what the owner asks, in his order.</summary>
    public IReadOnlyList<OwnerAnswer> Answers => answers ??= [.. Asks.Select(a => OwnerAnswers.To(a, this))];

    /// <summary>The kind of machine.</summary>
    public MachineKind Machine { get; }

    /// <summary>
    /// What to do: the cure of the likeliest cause once known, then free habits, then the rest, a stronger bolt last; with the price where
    /// an hour has one.
    /// </summary>
    public IReadOnlyList<Remedy> Remedies { get; private init; }

    /// <summary>What to inspect after the strike; null when nothing was struck.</summary>
    public InspectionList? Inspection { get; }

    /// <summary>How the deck stands; null when it was not measured.</summary>
    public DeckReading? Deck { get; private init; }

    /// <summary>What the owner's options cost over the years, cheapest expected first; empty when none are stated.</summary>
    public IReadOnlyList<OwnershipCost> Costs { get; private init; } = [];

    /// <summary>Name of the currency of every amount; null when no price is stated.</summary>
    public string? Currency { get; private init; }

    /// <summary>True when the owner stated no price, so that usual ones stand in.</summary>
    public bool ArePricesGuessed { get; private init; }

    /// <summary>How to change the bolt; null when no remedy takes it out.</summary>
    public BoltChangeCard? BoltChange { get; }

    /// <summary>What the numbers say of the machine; null when there is no model.</summary>
    public ProtectionVerdict? Verdict => Diagnosis.Complaint.Model.Verdict;

    /// <summary>Whether the machine may be used as it is, and what lifts what forbids it; every answer heads with it.</summary>
    public Standing Standing => standing ??= AdviceStanding.Of(this);

    /// <summary>What was handed in to be noticed with this advice.</summary>
    public IReadOnlyList<Finding> Notes { get; private init; } = [];

    /// <summary>What a caller must notice beside causes and remedies, worst first.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= [.. Own().Concat(Notes).Concat(Deck?.Findings ?? []).OrderBy(f => f.Severity)];

    /// <summary>
    /// Every caution of the whole answer, each once: those of a shaft that turns in the open, then the order of
    /// <see cref="Caution.All"/>.
    /// </summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= AllCautions();

    /// <summary>The weakest basis of causes, prices and costs.</summary>
    public Basis Basis => basis ??= Basis.Weakest(Costs.Select(c => c.Total.Basis)
        .Concat(Remedies.Select(r => r.Cost?.WeakestBasis).OfType<Basis>())
        .Concat([Diagnosis.Basis]));

    private IReadOnlyList<Caution> AllCautions()
    {
        IReadOnlyList<Caution> first = VerdictCautions.First(Machine);
        Caution[] thrown = Machine is MachineKind.RotaryCutter or MachineKind.FlailMower ? [Caution.ThrownObjects] : [];
        Caution[] tighter = HasClutch ? [Caution.NeverTighter] : [];
        var held = new HashSet<Caution>(
            [.. thrown, .. tighter, .. Diagnosis.Cautions, .. Inspection?.Cautions ?? [], .. BoltChange?.Cautions ?? []]);
        return [.. first.Concat(Caution.All.Where(held.Contains)).Distinct().Where(c => !IsOfAnotherDevice(c))];
    }

    // Where the only device is a bolt, a hot clutch is none of its owner's business, and the other way round.
    private bool IsOfAnotherDevice(Caution caution) =>
        (ClutchCautions.Contains(caution) && HasOnly(OwnerFacts.Device.ShearBolt, DeviceKind.ShearBolt))
        || (caution == Caution.SupportHalfShafts && HasOnly(OwnerFacts.Device.SlipClutch, DeviceKind.SlipClutch));

    private bool HasOnly(Fact stated, DeviceKind kind) =>
        Says(stated) && (Verdict is null || Verdict.Question.Chain.Devices.All(d => d.Kind == kind));

    // Whose bolt breaks must change it; beside a stop only where that is what mends it, and without a complaint for a seen fault alone.
    private bool IsBoltToBeChanged => (Broken.Contains(Diagnosis.Complaint.Symptom) && Standing.State != StandingState.Stop)
        || Diagnosis.Remedies.Any(r => BoltOut.Contains(r.Code) && (Diagnosis.Complaint.Symptom != Symptom.NotKnown
            || Diagnosis.Causes.Any(c => c.IsSeen && r.Cures(c.Cause))));

    // A symptom of a bolt says itself that there is one.
    private bool HasBolt => Says(OwnerFacts.Device.ShearBolt);

    private bool HasClutch => Says(OwnerFacts.Device.SlipClutch)
        || Verdict?.Question.Chain.Devices.Any(d => d.Kind == DeviceKind.SlipClutch) == true;

    private BoltAccess Access => Says(OwnerFacts.BoltPlace.Yoke) ? BoltAccess.YokeInReach
        : Says(OwnerFacts.BoltPlace.ThroughShaftAtGearbox) ? BoltAccess.ThroughShaftAtGearbox
        : BoltAccess.NotKnown;

    /// <summary>The advice on a complaint.</summary>
    public static OwnerAdvice On(Complaint complaint) => On(complaint, MachineKind.NotKnown);

    /// <summary>The advice on a complaint about a kind of machine.</summary>
    public static OwnerAdvice On(Complaint complaint, MachineKind machine) => new(Diagnosis.Of(complaint), machine);

    /// <summary>The same advice with the deck as measured. The diagnosis hears of it only through the complaint's facts.</summary>
    internal OwnerAdvice WithDeck(DeckReading deck) => new(this) { Deck = Guard.NotNull(deck, nameof(deck)) };

    /// <summary>The same advice with the owner's options costed.</summary>
    public OwnerAdvice WithCosts(OwnershipTerms terms, params OwnershipOption[] options) =>
        new(this) { Costs = OwnershipCost.Ranked(Guard.NotNull(terms, nameof(terms)), options), Currency = terms.Currency };

    /// <summary>The same advice with each remedy priced.</summary>
    /// <param name="currency">Name of the currency; only a label.</param>
    /// <param name="hour">What an hour of the owner's or mechanic's work is worth.</param>
    /// <param name="bolt">Price of the bolt; null when not known, which leaves the high end of what needs one open.</param>
    /// <exception cref="ArgumentException">The currency is blank, or the price of an hour is missing.</exception>
    public OwnerAdvice WithPrices(string currency, MoneyBand hour, MoneyBand? bolt) => new(this)
    {
        Currency = Guard.NotBlank(currency, "Currency", nameof(currency)),
        ArePricesGuessed = false,
        Remedies = [.. Remedies.Select(r => r.Priced(Guard.NotNull(hour, nameof(hour)), bolt))],
    };

    /// <summary>The same advice with each remedy priced by usual prices, a guess.</summary>
    public OwnerAdvice WithGuessedPrices() =>
        new(WithPrices(UsualPrices.Currency, UsualPrices.HourOfWork, UsualPrices.Bolt)) { ArePricesGuessed = true };

    /// <summary>The same advice with more that a caller must notice, such as measurements that are missing.</summary>
    public OwnerAdvice WithNotes(IReadOnlyList<Finding> notes) => new(this) { Notes = [.. Guard.NotNull(notes, nameof(notes))] };

    /// <summary>The same advice with the head of its letter.</summary>
    public OwnerAdvice WithHead(LetterHead head) => new(this) { Head = Guard.NotNull(head, nameof(head)) };

    /// <summary>The same advice with what the owner asks; each is answered once.</summary>
    public OwnerAdvice WithAsks(IReadOnlyList<OwnerAsk> asks) =>
        new(this) { Asks = [.. Guard.NotNull(asks, nameof(asks)).Where(a => a != OwnerAsk.NotKnown).Distinct()] };

    private bool Says(Fact fact) => Diagnosis.Complaint.Says(fact);

    private IEnumerable<Finding> Own()
    {
        if (Diagnosis.Complaint.Symptom == Symptom.NotKnown)
        {
            yield return Finding.Of(AdviceFindings.NoSymptom, Severity.Note);
        }

        foreach (OwnershipCost cost in Costs)
        {
            if (cost is { IsLikelyStuck: true, StuckInLastYear: { } stuck })
            {
                yield return Finding.Of(AdviceFindings.ClutchLikelyStuck, Severity.Warning)
                    .With("option", cost.Option.Name)
                    .With("probability", QuantityKind.Probability, stuck.Value)
                    .With("years", QuantityKind.Count, cost.Terms.Years);
            }
        }
    }

    private static InspectionList? InspectionOf(Complaint complaint)
    {
        StruckBy struckBy = complaint.Says(OwnerFacts.WhatStruck.Blade) ? StruckBy.Blade
            : complaint.Says(OwnerFacts.WhatStruck.Pan) ? StruckBy.Pan
            : complaint.Says(OwnerFacts.WhatStruck.Deck) ? StruckBy.Deck
            : StruckBy.NotKnown;
        bool isStruck = complaint.Says(OwnerFacts.When.Striking);
        bool gaveNothing = complaint.Symptom == Symptom.NothingGaveAtStrike;
        bool isAfterStrike = gaveNothing || struckBy != StruckBy.NotKnown || isStruck
            || complaint.Says(OwnerFacts.DamageSeen.TubeTwisted) || complaint.Says(OwnerFacts.DamageSeen.GearboxBroken);
        bool acted = isStruck && complaint.Symptom is Symptom.BreaksOften or Symptom.BreaksAtOnePlace;
        return !isAfterStrike ? null
            : complaint.Model is not { Verdict: { } verdict } model ? InspectionList.After(struckBy)
            : model.SimulatedStrike is { } strike ? InspectionList.After(struckBy, acted && !gaveNothing, strike)
            : model.Strike is { } peak ? InspectionList.After(struckBy, acted && !gaveNothing, verdict, peak)
            : InspectionList.After(struckBy, acted && !gaveNothing, verdict);
    }
}
