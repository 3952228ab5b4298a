using Driveline.Advice;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>The remedies in words, each with its price in protection and money and its caution.</summary>
internal static class RemedySentences
{
    private const string GuardMargin = "letter.guardMargin";

    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        if (LetterRemedies.IsNothingTold(advice) && LetterRemedies.All(advice).Count == 0)
        {
            return;
        }

        bool isKnown = LetterRemedies.IsCauseKnown(advice) || LetterRemedies.IsNothingTold(advice);
        blocks.Add(ReportBlock.Heading(phrase.Of(isKnown ? "letter.remedies" : "letter.remedies.onceShown")));
        IReadOnlyList<Remedy> remedies = LetterRemedies.All(advice);
        if (remedies.Count == 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.remedies.none")));
            return;
        }

        if (remedies.Any(r => r.WorkMargin is not null || r.GuardMargin is not null))
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.remedies.margins")));
        }

        blocks.Add(ReportBlock.Numbered(remedies.Select(r => string.Join(" ",
        [
            phrase.Of(r.Code),
            Margin(GuardMargin, r.GuardMargin, GuardCode(r), phrase),
            Margin("letter.workMargin", r.WorkMargin, "letter.work." + r.OnWorkMargin, phrase),
            .. r.StillFails == true && r.Code != LetterRemedies.LeaveAsIs
                ? new[] { phrase.Of(FailsCode(r)), Needed(r, phrase) }.OfType<string>() : [],
            Cost(r, advice, phrase),
            phrase.Of(r.Caution.Code),
        ]))));
    }

    /// <summary>A remedy as one step of the page: what to do, what it leaves of protection and work, time and money.</summary>
    public static string Short(Remedy remedy, OwnerAdvice advice, Phrase phrase) => string.Join(" ",
        new[] { phrase.Of(remedy.Code), After(remedy, phrase), Price(remedy, advice, phrase) }.Where(t => t.Length > 0));

    /// <summary>What it would take where a remedy is not enough; null when that is not known.</summary>
    public static string? Needed(Remedy remedy, Phrase phrase) =>
        !remedy.IsFreeHabit && remedy.MustHold is { } hold && remedy.MustActBelow is { } below
        ? phrase.Of(Phrase.Code(remedy.NothingFits ? "letter.needed.noneFits" : "letter.needed")
            .With("hold", QuantityKind.Torque, hold.NewtonMeters).With("below", QuantityKind.Torque, below.NewtonMeters))
        : null;

    // "It protects" is said of a Yes alone: a margin above 1 may stand beside a fact that nobody knows.
    private static string After(Remedy remedy, Phrase phrase)
    {
        if (remedy.After is not { } after)
        {
            return remedy.OnGuardMargin is MarginEffect.Lowers or MarginEffect.NotKnown
                ? phrase.Of(GuardCode(remedy)) : string.Empty;
        }

        string guards = after.Guards switch
        {
            Answer.Yes => "letter.after.guards",
            Answer.No => "letter.after.fails",
            _ => remedy.GuardMargin is > 0 and < 1 ? "letter.after.mayFail" : "letter.after.open",
        };
        string? quiet = after.Quiet == Answer.Yes ? "letter.after.quiet"
            : after.Quiet == Answer.No || remedy.WorkMargin is > 0 and < 1 ? "letter.after.acts"
            : null;
        return quiet is null ? phrase.Of(guards) : phrase.Of(guards) + " " + phrase.Of(quiet);
    }

    // What mends a fault lets the protection hold what its maker meant; only a stronger bolt takes protection away.
    private static string GuardCode(Remedy remedy) => remedy.OnGuardMargin == MarginEffect.Lowers && remedy.Code != Remedies.StrongerBolt
        ? "letter.guard.Lowers.restored" : "letter.guard." + remedy.OnGuardMargin;

    private static string FailsCode(Remedy remedy) => remedy.GuardMargin is > 0 and < 1 || remedy.WorkMargin is > 0 and < 1
        ? "letter.stillFails"
        : remedy.After?.Guards == Answer.No ? "letter.stillFails.guards" : "letter.stillFails.acts";

    private static string Price(Remedy remedy, OwnerAdvice advice, Phrase phrase)
    {
        bool isPriced = advice.Currency is not null;
        string between = advice.ArePricesGuessed ? "letter.price.guess" : "letter.price.between";
        string time = remedy.Minutes is > 0 and { } minutes
            ? phrase.Of(Phrase.Code("letter.time").With("minutes", QuantityKind.Count, minutes)) : string.Empty;
        string money = remedy.Cost switch
        {
            { High: 0 } => phrase.Of("letter.free"),
            { High: { } high } cost when isPriced => phrase.Of(Phrase.Code(between)
                .With("low", MoneyWords.PriceFrom(cost.Low, advice, phrase)).With("high", MoneyWords.Price(high, advice, phrase))),
            { } cost when isPriced && cost.Low > 0 =>
                phrase.Of(Phrase.Code("letter.price.from").With("low", MoneyWords.Price(cost.Low, advice, phrase))),
            _ => string.Empty,
        };
        return string.Join(" ", new[] { time, money }.Where(t => t.Length > 0));
    }

    // A margin of 0 is no measured zero: nothing bounds what the protection may hold, or what the work asks of it.
    private static string Margin(string code, double? margin, string effect, Phrase phrase) => margin is 0
        ? phrase.Of(code + ".unbounded")
        : margin is { } value ? phrase.Of(Phrase.Code(code).With("margin", phrase.Quantity(value, QuantityKind.Margin)))
        : phrase.Of(effect);

    private static string Cost(Remedy remedy, OwnerAdvice advice, Phrase phrase) => remedy.Cost switch
    {
        { High: 0 } => phrase.Of("letter.cost.nothing"),
        { High: { } high } cost when advice.Currency is not null => phrase.Of(Phrase.Code(
                advice.ArePricesGuessed ? "letter.price.guess" : "letter.cost.between")
            .With("low", MoneyWords.PriceFrom(cost.Low, advice, phrase))
            .With("high", MoneyWords.Price(high, advice, phrase))),
        { } cost when advice.Currency is not null =>
            phrase.Of(Phrase.Code("letter.cost.open").With("low", MoneyWords.Price(cost.Low, advice, phrase))),
        _ => !phrase.Has("letter.cost." + remedy.Code) && remedy.Minutes is > 0 and { } minutes
            ? phrase.Of(Phrase.Code("letter.cost.minutes").With("minutes", QuantityKind.Count, minutes))
            : phrase.Of(phrase.Has("letter.cost." + remedy.Code) ? "letter.cost." + remedy.Code : "letter.cost.notKnown"),
    };
}
