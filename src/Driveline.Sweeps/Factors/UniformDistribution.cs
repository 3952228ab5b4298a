using System.Numerics;
using System.Runtime.InteropServices;

namespace Driveline.Sweeps.Factors;

/// <summary>Every value from low to high equally likely.</summary>
internal sealed class UniformDistribution(double low, double high) : Distribution
{
    public override string Kind => "uniform";

    public override double Low => low;

    public override double High => high;

    public override string Mark => FormattableString.Invariant($"uniform {low:R} {high:R}");

    public override double Quantile(double share) => low + (share * (high - low));

    public override void Quantiles(Span<double> shares)
    {
        Span<Vector<double>> wide = MemoryMarshal.Cast<double, Vector<double>>(shares);
        var from = new Vector<double>(low);
        var range = new Vector<double>(high - low);
        for (int k = 0; k < wide.Length; k++)
        {
            wide[k] = from + (wide[k] * range);
        }

        for (int k = wide.Length * Vector<double>.Count; k < shares.Length; k++)
        {
            shares[k] = Quantile(shares[k]);
        }
    }
}
