using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>Which bolts may take the place of the fitted one, best first, and what would help when none is good.</summary>
/// <remarks>
/// The machine's manual decides: its bolt stands apart (<see cref="Manuals"/>), with its verdict, in stock or not. The others are ranked
/// by the answers, a No last, and by the worse of two margins: the weakest bolt of its kind over the highest work peak, the weakest part
/// over the strongest. A bolt with a guard margin below 1 never stands above one with at least 1, and none that is stronger than
/// specified above one that is not: it is the last remedy, only with the maker's consent. Loose bolts are left out. Where no part's
/// limit is known nothing is offered; where some limit is open, nothing that may be stronger than the fitted or the specified bolt.
/// </remarks>
public sealed class BoltChoice
{
    private IReadOnlyList<Caution>? cautions;

    private BoltChoice(ProtectionQuestion question, ChoiceTerms terms, CancellationToken stop)
    {
        Question = question;
        Terms = terms;
        AsFitted = ProtectionCheck.Run(question, terms.Policy);
        Place = PlaceOf(question, terms);
        if (Place is null)
        {
            Findings = ChoiceFindings.WithoutJoint(AsFitted);
            return;
        }

        var search = new BoltSearch(question, terms, AsFitted, Place, stop);
        Specified = search.Specified;
        Manuals = search.Manuals();
        IsManualsInStock = Manuals is { } manuals ? search.IsInStock(manuals.Item) : null;
        Choices = [.. search.Fitting.Where(search.MayRank).OrderBy(b => b, BoltOrder.BestFirst)];
        LeftOut = LeftOutBolts.Of(search);
        Findings = ChoiceFindings.Of(search, Manuals, Choices);
    }

    /// <summary>The question whose bolt is chosen.</summary>
    public ProtectionQuestion Question { get; }

    /// <summary>The terms of the choice.</summary>
    public ChoiceTerms Terms { get; }

    /// <summary>The verdict with what is fitted now.</summary>
    public ProtectionVerdict AsFitted { get; }

    /// <summary>The shear bolt to replace; null when no shear-bolt joint is known.</summary>
    public ShearBoltDevice? Place { get; }

    /// <summary>What the manual specifies for that place; null when not known.</summary>
    public ProtectiveDevice? Specified { get; }

    /// <summary>The bolt that the manual specifies, in this machine; null when it is not stated, or not as a thread with a grade.</summary>
    public RankedBolt? Manuals { get; }

    /// <summary>True when the stock has the manual's bolt; null when that is not known.</summary>
    public bool? IsManualsInStock { get; }

    /// <summary>The bolts offered, best first; those stronger than specified last. Empty when there is none.</summary>
    public IReadOnlyList<RankedBolt> Choices { get; } = [];

    /// <summary>The bolts of the stock that are not offered, each with the reason, in the order of the stock.</summary>
    public IReadOnlyList<LeftOut> LeftOut { get; } = [];

    /// <summary>
    /// The best of them, when both its margins leave room and it is no stronger than specified; null when there is none, or when nobody
    /// knows what is specified.
    /// </summary>
    public RankedBolt? Best => Choices.FirstOrDefault(c => c.LeavesRoom && c.IsStrongerThanSpecified == false);

    /// <summary>What a caller must notice, worst first, and what would help when nothing fits.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The cautions that go with every choice; each bolt has its own beside them.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= VerdictCautions.Of(Question.Machine, Question.Chain, Terms.Policy);

    /// <summary>The choice on the default terms.</summary>
    public static BoltChoice For(ProtectionQuestion question) => For(question, ChoiceTerms.Default);

    /// <summary>The choice of a bolt.</summary>
    /// <param name="question">The driveline with what is fitted now.</param>
    /// <param name="terms">Stock, holes, policy, and which bolt.</param>
    /// <exception cref="ArgumentException">
    /// The terms name a shear bolt that is not in the driveline; the message lists those that are.
    /// </exception>
    public static BoltChoice For(ProtectionQuestion question, ChoiceTerms terms) => For(question, terms, CancellationToken.None);

    /// <summary>The same, until it is stopped: asked before each bolt of the stock.</summary>
    /// <param name="question">The driveline with what is fitted now.</param>
    /// <param name="terms">Stock, holes, policy, and which bolt.</param>
    /// <param name="stop">Ends the search.</param>
    /// <exception cref="ArgumentException">
    /// The terms name a shear bolt that is not in the driveline; the message lists those that are.
    /// </exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BoltChoice For(ProtectionQuestion question, ChoiceTerms terms, CancellationToken stop) =>
        new(Guard.NotNull(question, nameof(question)), Guard.NotNull(terms, nameof(terms)), stop);

    /// <inheritdoc/>
    public override string ToString() => Best?.ToString() ?? "nothing fits";

    private static ShearBoltDevice? PlaceOf(ProtectionQuestion question, ChoiceTerms terms)
    {
        ShearBoltDevice[] bolts = [.. question.Chain.Devices.OfType<ShearBoltDevice>()];
        if (terms.Device is not { } name)
        {
            return bolts.FirstOrDefault();
        }

        return Array.Find(bolts, b => b.Name == name) ?? throw new ArgumentException(
            "\"" + name + "\" is not a known shear-bolt joint of this driveline; there are: "
            + (bolts.Length > 0 ? string.Join(", ", bolts.Select(b => b.Name)) : "none") + ".",
            nameof(terms));
    }
}
