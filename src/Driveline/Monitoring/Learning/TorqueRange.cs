using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>How many load cycles had a range.</summary>
internal sealed class TorqueRange
{
    private readonly double nm;

    private TorqueRange(double nm, double cycles)
    {
        this.nm = nm;
        Cycles = cycles;
    }

    /// <summary>The range, from lowest to highest torque: the middle of its class.</summary>
    public Torque Range => Torque.FromNewtonMeters(nm);

    /// <summary>Cycles of that range; halves are possible.</summary>
    public double Cycles { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Cycles} × {nm:G6} N·m");

    internal static IReadOnlyList<TorqueRange> ListOf(double[] cyclesByClass, double classNm)
    {
        var list = new List<TorqueRange>();
        for (int k = 1; k < cyclesByClass.Length; k++)
        {
            if (cyclesByClass[k] > 0)
            {
                list.Add(new TorqueRange(k * classNm, cyclesByClass[k]));
            }
        }

        return list;
    }
}
