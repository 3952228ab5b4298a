using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>
/// The costs of a case: the owner's terms and options. What is left out costs nothing, except a habit: that counts as the worst.
/// Without any costs the usual prices stand in, as guesses.
/// </summary>
internal static class CaseCosts
{
    private const int UsualYears = 10;
    private static readonly RatioBand None = RatioBand.Exactly(0, Basis.Given("none stated"));

    public static OwnerAdvice AddTo(OwnerAdvice advice, CaseObject? facts)
    {
        if (facts?.Get(CostMembers.Currency) is not { } currency)
        {
            return advice.WithGuessedPrices();
        }

        OwnershipTerms terms = OwnershipTerms.Of(
            currency, facts.Get(CostMembers.Years) ?? UsualYears, facts.Get(CostMembers.DiscountRate) ?? 0);
        terms = facts.Get(CostMembers.HourOfWork) is { } hour ? terms.WithHourOfWork(hour) : terms;
        terms = facts.Get(CostMembers.HourOfDowntime) is { } standing ? terms.WithHourOfDowntime(standing) : terms;
        OwnershipOption[] options =
            [.. facts.Get(CostMembers.Options).Select(option => OptionOf(option, facts.Get(CostMembers.BoltPrice)))];
        advice = facts.Get(CostMembers.HourOfWork) is { } worth ? advice.WithPrices(currency, worth, facts.Get(CostMembers.BoltPrice))
            : advice;
        return options.Length > 0 ? advice.WithCosts(terms, options) : advice;
    }

    private static OwnershipOption OptionOf(CaseObject facts, MoneyBand? usualBolt)
    {
        OwnershipOption option = OwnershipOption.Of(facts.Get(CostOptionMembers.Name)!, facts.Get(CostOptionMembers.Kind));
        option = facts.Get(CostOptionMembers.Outlay) is { } outlay ? option.WithOutlay(outlay) : option;
        option = facts.Get(CostOptionMembers.Proceeds) is { } proceeds ? option.WithProceeds(proceeds) : option;
        if (facts.Get(CostOptionMembers.BreaksPerYear) is { } breaks)
        {
            MoneyBand bolt = facts.Get(CostOptionMembers.BoltPrice) ?? usualBolt ?? MoneyBand.Nothing;
            option = facts.Get(CostOptionMembers.MinutesPerChange) is { } minutes ? option.WithBreaks(breaks, bolt, minutes)
                : option.WithBreaks(breaks, bolt, facts.Get(CostOptionMembers.Access));
        }

        option = facts.Get(CostOptionMembers.YearlyService) is null && facts.Get(CostOptionMembers.ServiceMinutes) is null ? option
            : option.WithYearlyService(
                facts.Get(CostOptionMembers.YearlyService) ?? MoneyBand.Nothing, facts.Get(CostOptionMembers.ServiceMinutes) ?? None);
        option = facts.Get(CostOptionMembers.FacingSet) is { } set
            ? option.WithFacings(set, facts.Get(CostOptionMembers.FacingSetsPerYear) ?? None) : option;
        option = facts.Get(CostOptionMembers.OverloadsPerYear) is { } overloads
            ? option.WithOverloads(
                overloads, facts.Get(CostOptionMembers.FailsToProtect) ?? None, facts.Get(CostOptionMembers.Damage) ?? MoneyBand.Nothing)
            : option;
        bool hasClutch = facts.Get(CostOptionMembers.SlipCare) != SlipCare.NotKnown
            || facts.Get(CostOptionMembers.Kind) is OptionKind.Clutch or OptionKind.TradeIn;
        return hasClutch ? option.WithSlipCare(facts.Get(CostOptionMembers.SlipCare), facts.Get(CostOptionMembers.Climate)) : option;
    }
}
