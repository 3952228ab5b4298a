using Driveline.Chains;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Choosing;

/// <summary>Puts bolts of the stock in the place of the fitted one and asks the two questions of each.</summary>
internal sealed class BoltSearch
{
    private readonly CancellationToken stop;
    private IReadOnlyList<RankedBolt>? fitting;

    public BoltSearch(
        ProtectionQuestion question, ChoiceTerms terms, ProtectionVerdict asFitted, ShearBoltDevice place, CancellationToken stop)
    {
        this.stop = stop;
        Question = question;
        Terms = terms;
        AsFitted = asFitted;
        Place = place;

        // A slip torque in the manual is no bolt.
        Specified = question.SpecifiedFor(place) is { Kind: DeviceKind.ShearBolt } named ? named : null;
    }

    public ProtectionQuestion Question { get; }

    public ChoiceTerms Terms { get; }

    public ProtectionVerdict AsFitted { get; }

    /// <summary>The device whose bolt is to be chosen.</summary>
    public ShearBoltDevice Place { get; }

    /// <summary>What the manual specifies for that place; null when not known.</summary>
    public ProtectiveDevice? Specified { get; }

    public ShearBoltJoint Joint => Place.BreakTorque.Joint;

    /// <summary>The bolt for which the hole was made: the thicker of the fitted and the specified one.</summary>
    public ShearBolt MadeFor => Specified is ShearBoltDevice { BreakTorque.Joint.Bolt: { } named } && named.DiameterM > Joint.Bolt.DiameterM
        ? named : Joint.Bolt;

    /// <summary>The stock that fits a hole, each evaluated; those that cross the shaft must leave some of it.</summary>
    public IReadOnlyList<RankedBolt> Fitting => fitting ??=
    [
        .. Terms.Stock.Items
            .Select(i => HoleFor(i) is { } hole ? InPlace(i, hole) : null)
            .OfType<RankedBolt>(),
    ];

    /// <summary>
    /// The bolt that the manual names, in this machine, in stock or not; null when it is not known as a graded plain bolt or a pin.
    /// </summary>
    public RankedBolt? Manuals()
    {
        if (NamedBolt.OrPinOf(Specified) is not { } named)
        {
            return null;
        }

        StockItem item = Terms.Stock.Items.FirstOrDefault(i => NamedBolt.IsSame(i.Bolt, named)) ?? StockItem.Of(named);
        return Fitting.FirstOrDefault(b => ReferenceEquals(b.Item, item)) ?? InPlace(item, HoleFor(item) ?? HoleUse.Own(item));
    }

    /// <summary>True when the stock has that bolt; null of a pin while no stock is given: usual shops are listed by their bolts.</summary>
    public bool? IsInStock(StockItem item) => item.Thread is null && ReferenceEquals(Terms.Stock, StockList.Usual) ? null
        : Terms.Stock.Items.Contains(item);

    /// <summary>May stand in the ranking: it may be offered and is not loose in its hole.</summary>
    public bool MayRank(RankedBolt bolt) => !bolt.IsLoose && MayOffer(bolt);

    /// <summary>Every bolt of the stock in a hole of its own size at the same place, up to half of the shaft it crosses.</summary>
    public IReadOnlyList<RankedBolt> AnySize() =>
        [.. Terms.Stock.Items.Where(i => IsSlender(i, Joint)).Select(i => InPlace(i, HoleUse.Own(i)))];

    /// <summary>A bolt in another joint, perhaps in another chain that holds the given device.</summary>
    public RankedBolt In(DrivelineChain chain, ShearBoltDevice inChain, ShearBoltJoint joint, StockItem item, HoleUse hole)
    {
        stop.ThrowIfCancellationRequested();
        bool isFitted = ReferenceEquals(inChain, Place) && ReferenceEquals(joint, Joint) && IsFittedBolt(item);
        ShearBoltDevice device = isFitted ? Place : Place.With(With(joint, item, hole));
        ProtectionQuestion question = Question.WithChain(isFitted ? chain : chain.With(inChain, device));
        BoltComparison against = BoltComparison.Of(device, isFitted, Place, Specified, Terms.Policy);

        // Trips were seen with the fitted bolt: only of a stronger one is that no observation.
        question = question.WithTripsInNormalWork(question.TripsInNormalWork == true && against.IsStrongerThanFitted != true ? true : null);
        ProtectionVerdict verdict = ProtectionCheck.Run(question, Terms.Policy);
        return new RankedBolt(item, hole, verdict, device, against, LimitKnowledge.IsComplete(verdict) && verdict.GuardMargin > 0);
    }

    /// <summary>
    /// May be offered: every limit is known and its own trip has an end, or it holds no more than what is fitted and what is specified.
    /// </summary>
    public bool MayOffer(RankedBolt bolt) => LimitKnowledge.IsAnyKnown(bolt.Verdict)
        && ((LimitKnowledge.IsComplete(bolt.Verdict) && bolt.GuardMargin > 0)
            || BoltComparison.Of(bolt.Device, bolt.IsFitted, Place, Specified, Terms.Policy).IsNoStronger);

    /// <summary>True when a hole for the bolt takes at most half of the shaft it crosses.</summary>
    public static bool IsSlender(StockItem item, ShearBoltJoint joint) =>
        joint.Layout != JointLayout.ThroughShaft || item.Bolt.DiameterM <= joint.RadiusM * (1 + 1e-9);

    /// <summary>The hole a bolt would use; null when it fits none, or would leave nothing of the shaft it crosses.</summary>
    private HoleUse? HoleFor(StockItem item) => Terms.Holes.For(item, MadeFor) is { } hole && CanCross(item, hole) ? hole : null;

    private RankedBolt InPlace(StockItem item, HoleUse hole) => In(Question.Chain, Place, Joint, item, hole);

    private bool CanCross(StockItem item, HoleUse hole) =>
        Joint.Layout != JointLayout.ThroughShaft || Math.Max(item.Bolt.DiameterM, hole.HoleM) < 2 * Joint.RadiusM;

    private bool IsFittedBolt(StockItem item)
    {
        ShearBolt bolt = Joint.Bolt;
        return !bolt.NeedsNeck && bolt.NeckDiameter is null && NamedBolt.IsSame(item.Bolt, bolt);
    }

    // A plain bolt of the stock is cut where the fitted plain bolt is cut: the joint decides. In place of a pin or a neck nobody knows.
    // The manual's bolt is cut where the manual has it cut; a pin is the same all along.
    private ShearBoltJoint With(ShearBoltJoint joint, StockItem item, HoleUse hole)
    {
        ShearBolt fitted = joint.Bolt;
        bool isPlain = fitted.Thread is not null && !fitted.NeedsNeck;
        ShearBolt bolt = item.Bolt;
        bolt = bolt.Thread is null ? bolt
            : NamedBolt.Of(Specified) is { } named && named.PlaneThrough != PlaneThrough.NotKnown && NamedBolt.IsSame(bolt, named)
                ? bolt.With(named.PlaneThrough).WithBody(named.BodyStyle)
            : isPlain ? bolt.With(fitted.PlaneThrough).WithBody(fitted.BodyStyle)
            : bolt;
        ShearBoltJoint with = joint.With(bolt).InHole(hole.HoleM, hole.InShaftM);
        return hole.IsLoose && with.HoleFit == HoleFit.Tight ? with.WithHoleFit(HoleFit.NotKnown) : with;
    }
}
