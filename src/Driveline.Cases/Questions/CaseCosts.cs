using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>The costs of a case: the owner's terms and options. What is left out costs nothing, except a habit: that counts as the worst.</summary>
internal static class CaseCosts
{
    private const int UsualYears = 10;
    private static readonly RatioBand None = RatioBand.Exactly(0, Basis.Given("none stated"));

    public static OwnerAdvice AddTo(OwnerAdvice advice, CostFacts? facts, List<CaseError> errors)
    {
        if (facts?.Currency is not { } currency)
        {
            return advice;
        }

        OwnershipTerms terms = OwnershipTerms.Of(currency, facts.Years ?? UsualYears, facts.DiscountRate ?? 0);
        terms = facts.HourOfWork is { } hour ? terms.WithHourOfWork(hour) : terms;
        terms = facts.HourOfDowntime is { } standing ? terms.WithHourOfDowntime(standing) : terms;
        var options = new List<OwnershipOption>();
        for (int k = 0; k < facts.Options.Count; k++)
        {
            try
            {
                options.Add(OptionOf(facts.Options[k], facts.BoltPrice));
            }
            catch (ArgumentException contradiction)
            {
                errors.Add(CaseChain.Contradiction(FormattableString.Invariant($"{CaseFileMembers.Costs.Name}.{CostMembers.Options.Name}[{k}]"), contradiction));
            }
        }

        advice = facts.HourOfWork is { } worth ? advice.WithPrices(currency, worth, facts.BoltPrice) : advice;
        return options.Count > 0 ? advice.WithCosts(terms, [.. options]) : advice;
    }

    private static OwnershipOption OptionOf(CostOptionFacts facts, MoneyBand? usualBolt)
    {
        OwnershipOption option = OwnershipOption.Of(facts.Name!, facts.Kind);
        option = facts.Outlay is { } outlay ? option.WithOutlay(outlay) : option;
        option = facts.Proceeds is { } proceeds ? option.WithProceeds(proceeds) : option;
        if (facts.BreaksPerYear is { } breaks)
        {
            MoneyBand bolt = facts.BoltPrice ?? usualBolt ?? MoneyBand.Nothing;
            option = facts.MinutesPerChange is { } minutes ? option.WithBreaks(breaks, bolt, minutes) : option.WithBreaks(breaks, bolt, facts.Access);
        }

        option = facts.YearlyService is null && facts.ServiceMinutes is null ? option
            : option.WithYearlyService(facts.YearlyService ?? MoneyBand.Nothing, facts.ServiceMinutes ?? None);
        option = facts.FacingSet is { } set ? option.WithFacings(set, facts.FacingSetsPerYear ?? None) : option;
        option = facts.OverloadsPerYear is { } overloads
            ? option.WithOverloads(overloads, facts.FailsToProtect ?? None, facts.Damage ?? MoneyBand.Nothing)
            : option;
        bool hasClutch = facts.SlipCare != SlipCare.NotKnown || facts.Kind is OptionKind.Clutch or OptionKind.TradeIn;
        return hasClutch ? option.WithSlipCare(facts.SlipCare, facts.Climate) : option;
    }
}
