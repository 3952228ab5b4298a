namespace Driveline.Fatigue;

/// <summary>The reversals that closed no cycle yet, and the cycles that closed, by the three-point rule; in spans of the caller.</summary>
internal ref struct ThreePointStack
{
    private readonly Span<RainflowCycle> cycles;
    private readonly Span<double> open;
    private int bottom;
    private int top;
    private int closed;

    public ThreePointStack(Span<RainflowCycle> cycles, Span<double> open)
    {
        this.cycles = cycles;
        this.open = open;
        bottom = 0;
        top = 0;
        closed = 0;
    }

    /// <summary>Takes a reversal.</summary>
    public void Add(double point)
    {
        int last = top;
        while (last - bottom >= 2)
        {
            double before = open[last - 1], earlier = open[last - 2];
            if (Math.Abs(point - before) < Math.Abs(before - earlier))
            {
                break;
            }

            bool isFirst = last - bottom == 2;
            cycles[closed++] = new RainflowCycle(earlier, before, isFirst ? 0.5 : 1);
            if (isFirst)
            {
                bottom++;
                break;
            }

            last -= 2;
        }

        open[last] = point;
        top = last + 1;
    }

    /// <summary>Counts what is left as half cycles; how many cycles there are.</summary>
    public int Finish()
    {
        for (int k = bottom + 1; k < top; k++)
        {
            cycles[closed++] = new RainflowCycle(open[k - 1], open[k], 0.5);
        }

        return closed;
    }
}
