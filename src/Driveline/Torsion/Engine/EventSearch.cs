namespace Driveline.Torsion;

/// <summary>The first bound crossed within a step.</summary>
/// <remarks>
/// Each watched bound is a power series that is negative while the present state holds. A series that starts at zero
/// (a link that has just begun to slip or to stick) is judged a hundred-thousandth of a step later: positive there
/// means that the state ends at once, otherwise the search begins there.
/// </remarks>
internal sealed class EventSearch
{
    private const double Moment = 1e-5;
    private const double Rounding = 1e-13;

    private readonly double[] g = new double[StepSeries.Stride];
    private double first;
    private Crossing crossing;
    private int link;
    private long work;

    /// <summary>The crossing found last.</summary>
    public Crossing Kind => crossing;

    /// <summary>What the last search cost.</summary>
    public long Work => work;

    /// <summary>Its link; −1 for the drive.</summary>
    public int Link => link;

    /// <summary>Part of the step at which the first bound is crossed; 2 when none is.</summary>
    public double First(Mechanism m, RunState x, Plan plan, StepSeries series, double[] torqueScale)
    {
        Begin();
        for (int l = 0; l < m.Links; l++)
        {
            switch (x.Links[l])
            {
                case LinkState.Locked:
                    Capacity(series, l, 1, plan.Forward[l], plan.ForwardRate[l], torqueScale[l], Crossing.SlipForward);
                    Capacity(series, l, -1, plan.Reverse[l], plan.ReverseRate[l], torqueScale[l], Crossing.SlipBackward);
                    break;
                case LinkState.SlipForward:
                    SlipEnd(m, x, series, l, -1);
                    if (m.SwingAngle[l] > 0 && !x.SwungBack[l])
                    {
                        Travel(series, l, 1, m.SwingAngle[l], Crossing.SwingEnd);
                    }
                    else if (!double.IsPositiveInfinity(m.EndSlip[l]))
                    {
                        Travel(series, l, 1, m.EndSlip[l], Crossing.CutThrough);
                    }

                    break;
                case LinkState.SlipBackward:
                    SlipEnd(m, x, series, l, 1);
                    break;
                case LinkState.Open:
                    Travel(series, l, 1, x.Face[l], Crossing.FacesMeet);
                    if (!double.IsPositiveInfinity(m.Backlash[l]))
                    {
                        Travel(series, l, -1, x.Face[l] - m.Backlash[l], Crossing.ReverseFacesMeet);
                    }

                    break;
                default:
                    break;
            }
        }

        if (m.DriveRotor >= 0)
        {
            Drive(m, x, series);
        }

        return first;
    }

    /// <summary>Begins a search over one interval, track by track.</summary>
    public void Begin()
    {
        first = 2;
        work = 0;
        crossing = Crossing.None;
        link = -1;
    }

    /// <summary>Part of the interval at which the first bound offered so far is crossed; 2 when none is.</summary>
    public double Part => first;

    /// <summary>Offers a quantity, times its sign, that must not rise above a bound that rises linearly over the interval.</summary>
    public void Offer(ReadOnlySpan<double> series, double sign, double bound, double rise, double scale, Crossing kind, int l)
    {
        Copy(series, sign);
        g[0] -= bound;
        g[1] -= rise;
        Take(series.Length - 1, Rounding * scale, kind, l);
    }

    private void Capacity(StepSeries series, int l, double sign, double capacity, double rate, double scale, Crossing kind)
    {
        if (double.IsPositiveInfinity(capacity))
        {
            return;
        }

        Copy(series.Of(series.Torque, l), sign);
        g[0] -= capacity;
        g[1] -= rate * series.Length;
        Take(series.Degree, Rounding * Math.Max(capacity, scale), kind, l);
    }

    private void SlipEnd(Mechanism m, RunState x, StepSeries series, int l, double sign)
    {
        Copy(series.Of(series.SlipRate, l), sign);
        double speed = Math.Abs(x.Speed[m.From[l]]);
        Take(series.Degree, Rounding * (m.To[l] < 0 ? speed : Math.Max(speed, Math.Abs(x.Speed[m.To[l]]))), Crossing.SlipEnd, l);
    }

    private void Travel(StepSeries series, int l, double sign, double place, Crossing kind)
    {
        Copy(series.Of(series.Slip, l), sign);
        g[0] -= sign * place;
        Take(series.Degree, Rounding * Math.Abs(place), kind, l);
    }

    private void Drive(Mechanism m, RunState x, StepSeries series)
    {
        ReadOnlySpan<double> speed = series.Of(series.Speed, m.DriveRotor);
        if (x.DriveLimit <= 0 && !double.IsNegativeInfinity(m.DriveLeast))
        {
            DriveBound(m, speed, x.DriveLimit == 0 ? -1 : 1, m.DriveLeast, x.DriveLimit == 0 ? Crossing.DriveLeast : Crossing.DriveOnLine);
        }

        if (x.DriveLimit >= 0 && !double.IsPositiveInfinity(m.DriveMost))
        {
            DriveBound(m, speed, x.DriveLimit == 0 ? 1 : -1, m.DriveMost, x.DriveLimit == 0 ? Crossing.DriveMost : Crossing.DriveOnLine);
        }
    }

    private void DriveBound(Mechanism m, ReadOnlySpan<double> speed, double sign, double limit, Crossing kind)
    {
        Copy(speed, -sign * m.DriveSlope);
        g[0] += sign * (m.DriveAtRest - limit);
        Take(speed.Length - 1, Rounding * m.DriveAtRest, kind, -1);
    }

    private void Copy(ReadOnlySpan<double> series, double sign)
    {
        g[1] = 0;
        for (int j = 0; j < series.Length; j++)
        {
            g[j] = sign * series[j];
        }
    }

    private void Take(int degree, double tolerance, Crossing kind, int l)
    {
        var c = new ReadOnlySpan<double>(g, 0, Math.Max(degree, 1) + 1);
        double from = 0;
        double at;
        if (g[0] > tolerance)
        {
            at = 0;
        }
        else if (g[0] < -tolerance)
        {
            at = first <= 1e-300 ? double.NaN : RootSearch.FirstRise(c, 0, Math.Min(first, 1), ref work);
        }
        else
        {
            from = Moment;
            g[0] -= tolerance;
            at = Polynomial.Value(c, from) > 0 ? 0
                : first <= from ? double.NaN
                : RootSearch.FirstRise(c, from, Math.Min(first, 1), ref work);
        }

        if (at < first)
        {
            first = at;
            crossing = kind;
            link = l;
        }
    }
}
