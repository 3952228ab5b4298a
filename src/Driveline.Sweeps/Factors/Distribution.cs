namespace Driveline.Sweeps.Factors;

/// <summary>How a factor is distributed, by its quantile function. Values in SI. Immutable.</summary>
internal abstract class Distribution
{
    // Where a distribution without ends is cut for designs that ask for its ends.
    private const double Cut = 0.005;

    /// <summary>What it is called in a study file.</summary>
    public abstract string Kind { get; }

    /// <summary>Least value; −∞ when it has none.</summary>
    public abstract double Low { get; }

    /// <summary>Greatest value; +∞ when it has none.</summary>
    public abstract double High { get; }

    /// <summary>Number of values when it is a list; 0 when not.</summary>
    public virtual int Levels => 0;

    public bool HasEnds => !double.IsInfinity(Low) && !double.IsInfinity(High);

    /// <summary>Parameters as text that tells one distribution from another, for the mark of a study.</summary>
    public abstract string Mark { get; }

    /// <summary>The value below which a share lies.</summary>
    public abstract double Quantile(double share);

    /// <summary>Turns shares into values, in place.</summary>
    public virtual void Quantiles(Span<double> shares)
    {
        for (int k = 0; k < shares.Length; k++)
        {
            shares[k] = Quantile(shares[k]);
        }
    }

    /// <summary>Turns places of a grid from 0 to 1 into shares: a distribution without ends is cut at 0.5 % and 99.5 %.</summary>
    public void Cuts(Span<double> places)
    {
        if (HasEnds)
        {
            return;
        }

        for (int k = 0; k < places.Length; k++)
        {
            places[k] = Cut + (places[k] * (1 - (2 * Cut)));
        }
    }
}
