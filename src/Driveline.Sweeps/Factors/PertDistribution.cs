using MathNet.Numerics;

namespace Driveline.Sweeps.Factors;

/// <summary>PERT: a beta distribution between low and high with four times the weight on the most likely value.</summary>
/// <remarks>
/// α = 1 + 4 (m − a)/(b − a), β = 1 + 4 (b − m)/(b − a); mean (a + 4 m + b)/6. Malcolm et al., Oper. Res. 7 (1959) 646-669.
/// </remarks>
internal sealed class PertDistribution : Distribution
{
    private readonly double low;
    private readonly double high;
    private readonly double alpha;
    private readonly double beta;

    public PertDistribution(double low, double mode, double high)
    {
        this.low = low;
        this.high = high;
        alpha = 1 + (4 * (mode - low) / (high - low));
        beta = 1 + (4 * (high - mode) / (high - low));
        Mark = FormattableString.Invariant($"pert {low:R} {mode:R} {high:R}");
    }

    public override string Kind => "pert";

    public override double Low => low;

    public override double High => high;

    public override string Mark { get; }

    public override double Quantile(double share)
    {
        if (share is <= 0 or >= 1)
        {
            return share <= 0 ? low : high;
        }

        // Newton's steps, halved back into the bracket whenever they leave it.
        double below = 0;
        double above = 1;
        double x = alpha / (alpha + beta);
        double scale = Math.Exp(SpecialFunctions.GammaLn(alpha + beta) - SpecialFunctions.GammaLn(alpha) - SpecialFunctions.GammaLn(beta));
        for (int step = 0; step < 100; step++)
        {
            double error = SpecialFunctions.BetaRegularized(alpha, beta, x) - share;
            (below, above) = error < 0 ? (x, above) : (below, x);
            double density = scale * Math.Pow(x, alpha - 1) * Math.Pow(1 - x, beta - 1);
            double next = x - (error / density);
            next = next > below && next < above ? next : (below + above) / 2;
            if (Math.Abs(next - x) <= 1e-15)
            {
                break;
            }

            x = next;
        }

        return low + (x * (high - low));
    }
}
