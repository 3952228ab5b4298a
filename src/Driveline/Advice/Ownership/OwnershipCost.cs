using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What an option costs over the years, and at how many breaks a year another one is cheaper.</summary>
/// <remarks>
/// C = outlay − proceeds + Σ_{k=1..n} (1 + r)^−k · [B · (bolt + min/60 · (w + d)) + service + s/60 · w + f · facings + O · p_k · damage],
/// B breaks a year, w and d an hour of work and of downtime, s minutes of service, f facing sets a year, O overloads a year,
/// p_k the share of overloads not caught in year k: fails + (1 − fails) · stuck_k, stuck_k the chance that the clutch is stuck by then.
/// Payments at the end of each year. Every cost input raises the result; proceeds lower it.
/// </remarks>
public sealed class OwnershipCost
{
    // A chance from which on something is to be reckoned with.
    private const double Likely = 0.5;

    private readonly double[] variable;
    private readonly double[] fixedCost;

    private OwnershipCost(OwnershipOption option, OwnershipTerms terms)
    {
        Option = option;
        Terms = terms;
        Basis basis = Basis.Weakest(option.Inputs().Select(i => i.WeakestBasis)
            .Concat([terms.HourOfWork.WeakestBasis, terms.HourOfDowntime.WeakestBasis])
            .Concat(option.SlipCare is { } care ? [StuckClutch.WithinAYear(care, option.Climate).WeakestBasis] : []));
        fixedCost = [Fixed(End.Low), Fixed(End.Expected), Fixed(End.High)];
        variable = [PerBreak(End.Low), PerBreak(End.Expected), PerBreak(End.High)];
        Total = new CostEstimate(
            fixedCost[0] + Product(variable[0], Of(option.BreaksPerYear, End.Low)),
            fixedCost[1] + Product(variable[1], Of(option.BreaksPerYear, End.Expected)),
            fixedCost[2] + Product(variable[2], Of(option.BreaksPerYear, End.High)),
            basis);
    }

    private enum End
    {
        Low,
        Expected,
        High,
    }

    /// <summary>The option.</summary>
    public OwnershipOption Option { get; }

    /// <summary>The owner's terms.</summary>
    public OwnershipTerms Terms { get; }

    /// <summary>The cost over the years, discounted to now.</summary>
    public CostEstimate Total { get; }

    /// <summary>Expected probability that the clutch is stuck when needed in the last year; null when the option has no clutch.</summary>
    /// <remarks>It is already in the cost; a verdict on the conversion must say it too.</remarks>
    public Probability? StuckInLastYear
    {
        get
        {
            if (Option.SlipCare is not { } care)
            {
                return null;
            }

            RatioBand stuck = StuckClutch.InYear(care, Option.Climate, Terms.Years);
            return new Probability(stuck.SiBand.Expected, stuck.WeakestBasis);
        }
    }

    /// <summary>True when the clutch is more likely stuck than not in the last year: then the option protects nothing.</summary>
    public bool IsLikelyStuck => StuckInLastYear is { Value: >= Likely };

    /// <summary>The cost of an option.</summary>
    public static OwnershipCost Of(OwnershipOption option, OwnershipTerms terms) =>
        new(Guard.NotNull(option, nameof(option)), Guard.NotNull(terms, nameof(terms)));

    /// <summary>Several options, cheapest expected first; those of unknown expected cost last.</summary>
    public static IReadOnlyList<OwnershipCost> Ranked(OwnershipTerms terms, params OwnershipOption[] options) =>
        [.. Guard.NotNull(options, nameof(options)).Select(o => Of(o, terms)).OrderBy(c => c.Total.Expected ?? double.PositiveInfinity)];

    /// <summary>Breaks a year above which another option costs less than this one; null when no number of breaks makes it so.</summary>
    /// <remarks>
    /// This option's cost is F + B · v with its breaks B set free; the other's is taken as it stands:
    /// B* = (C_other − F) / v, in expected values. 0 when the other is cheaper without any break.
    /// </remarks>
    /// <param name="other">The other option under the same terms.</param>
    /// <exception cref="ArgumentException">The terms differ.</exception>
    public double? BreakEvenBreaksPerYear(OwnershipCost other)
    {
        Guard.NotNull(other, nameof(other));
        if (!ReferenceEquals(Terms, other.Terms))
        {
            throw new ArgumentException("Both options must be costed under the same terms.", nameof(other));
        }

        double v = variable[1];
        double ahead = (other.Total.Expected ?? double.PositiveInfinity) - fixedCost[1];
        return ahead <= 0 ? 0 : !(v > 0) || !Guard.IsFinite(ahead) || !Guard.IsFinite(v) ? null : ahead / v;
    }

    /// <summary>Break-even with every input of both at its good and bad ends: from the fewest to the most breaks a year.</summary>
    /// <param name="other">The other option under the same terms.</param>
    /// <returns>The fewest breaks (this one expensive, the other cheap); null when even then no number of breaks is enough.</returns>
    public double? FewestBreakEvenBreaksPerYear(OwnershipCost other)
    {
        Guard.NotNull(other, nameof(other));
        double ahead = other.Total.Low - fixedCost[2];
        return ahead <= 0 ? 0 : variable[2] > 0 ? ahead / variable[2] : null;
    }

    private static double Of(QuantityBand band, End end) =>
        end == End.Low ? band.SiBand.Low : end == End.High ? band.SiBand.High : band.SiBand.Expected;

    // 0 × ∞ is 0: what never happens costs nothing.
    private static double Product(double a, double b) => a == 0 || b == 0 ? 0 : a * b;

    private double PerBreak(End end)
    {
        double hours = Of(Option.MinutesPerChange, end) / 60;
        double one = Of(Option.BoltPrice, end) + Product(hours, Of(Terms.HourOfWork, end) + Of(Terms.HourOfDowntime, end));
        double years = 0;
        for (int k = 1; k <= Terms.Years; k++)
        {
            years += Terms.Discount(k);
        }

        return one * years;
    }

    private double Fixed(End end)
    {
        // The good end of the whole has the most proceeds.
        End opposite = end == End.Low ? End.High : end == End.High ? End.Low : End.Expected;
        double proceeds = Of(Option.Proceeds, opposite);
        double total = Of(Option.Outlay, end) - (Guard.IsFinite(proceeds) ? proceeds : Option.Proceeds.Low);
        double yearly = Of(Option.YearlyService, end)
            + Product(Of(Option.ServiceMinutesPerYear, end) / 60, Of(Terms.HourOfWork, end))
            + Product(Of(Option.FacingSetsPerYear, end), Of(Option.FacingSet, end));
        double fails = Of(Option.FailsToProtect, end);
        for (int k = 1; k <= Terms.Years; k++)
        {
            double stuck = Option.SlipCare is { } care ? Of(StuckClutch.InYear(care, Option.Climate, k), end) : 0;
            double damage = Product(Product(Of(Option.OverloadsPerYear, end), fails + ((1 - fails) * stuck)), Of(Option.Damage, end));
            total += Terms.Discount(k) * (yearly + damage);
        }

        return total;
    }
}
