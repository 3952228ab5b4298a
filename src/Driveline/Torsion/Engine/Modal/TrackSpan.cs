namespace Driveline.Torsion;

/// <summary>A track over an interval: its smooth part at the ends, and how far it may leave the cubic through them.</summary>
internal struct TrackSpan
{
    public double Left;
    public double LeftSlope;
    public double Right;
    public double RightSlope;

    /// <summary>Bound on the fourth derivative of the smooth part, slopes and it per interval.</summary>
    public double Fourth;

    /// <summary>Largest swing of the modes too fast for the interval.</summary>
    public double Ripple;

    /// <summary>What of it is left at the end.</summary>
    public double RippleEnd;

    /// <summary>True values at the ends.</summary>
    public double AtLeft;
    public double AtRight;

    public readonly double Highest => Polynomial.Upper(Left, LeftSlope, Right, RightSlope, 1, Fourth) + Ripple;

    public readonly double Lowest => -Polynomial.Upper(-Left, -LeftSlope, -Right, -RightSlope, 1, Fourth) - Ripple;

    /// <summary>Slope of the cubic at a part of the interval.</summary>
    public readonly double SlopeAt(double part) => (6 * part * (1 - part) * (Right - Left))
        + (((((3 * part) - 4) * part) + 1) * LeftSlope) + (((3 * part) - 2) * part * RightSlope);

    /// <summary>True when its slope is proved of one sign, so that the ends hold its largest and least values.</summary>
    public readonly bool IsMonotone
    {
        get
        {
            // The slope differs from that of the cubic by at most √3/216 of the fourth derivative.
            double error = 0.00801875373874480 * Fourth;
            double middle = (3 * (Right - Left)) - LeftSlope - RightSlope;
            return Ripple == 0
                && (Math.Min(Math.Min(LeftSlope, middle), RightSlope) > error
                || Math.Max(Math.Max(LeftSlope, middle), RightSlope) < -error);
        }
    }

    /// <summary>True when a bound allows a value above the highest or below the negative of the other.</summary>
    public readonly bool MayExceed(double most, double least) => Highest > most + (1e-15 * Math.Abs(most)) + (1e-12 * Ripple)
        || -Lowest > least + (1e-15 * Math.Abs(least)) + (1e-12 * Ripple);

    /// <summary>True when it cannot reach a bound that rises linearly.</summary>
    public readonly bool StaysBelow(double bound, double rise)
    {
        return rise == 0
            ? Highest < bound
            : Polynomial.Upper(Left - bound, LeftSlope - rise, Right - bound - rise, RightSlope - rise, 1, Fourth) + Ripple < 0;
    }

    /// <summary>The same of its negative.</summary>
    public readonly bool NegativeStaysBelow(double bound, double rise)
    {
        return rise == 0
            ? -Lowest < bound
            : Polynomial.Upper(-Left - bound, -LeftSlope - rise, -Right - bound - rise, -RightSlope - rise, 1, Fourth) + Ripple < 0;
    }
}
