using Driveline.Quantities;

namespace Driveline.Fatigue;

/// <summary>Rainflow counting of a load history.</summary>
/// <remarks>
/// Three-point rule of ASTM E1049-85, 5.4.4: X newest range, Y the one before; X ≥ Y closes Y: half a cycle when it holds the first
/// point, else a full one; what is left counts as half cycles. Equal neighbours and points that are no reversals are dropped first.
/// Four-point rule: an inner range not larger than both its neighbours closes as a full cycle; the rest is the residue.
/// </remarks>
public static class Rainflow
{
    /// <summary>Counts a history by the three-point rule, in the order the cycles close.</summary>
    /// <param name="history">Loads or stresses in the order they came; finite.</param>
    /// <returns>Full and half cycles; none for fewer than two different values.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    /// <example>-2 1 -3 5 -1 3 -4 4 -2: half cycles 3, 4; full 4; half 8, 9, 8, 6.</example>
    public static IReadOnlyList<RainflowCycle> Count(ReadOnlySpan<double> history)
    {
        var cycles = new RainflowCycle[history.Length];
        int count = Count(history, cycles, new double[history.Length]);
        Array.Resize(ref cycles, count);
        return cycles;
    }

    /// <summary>Counts a history by the three-point rule into spans; allocates nothing.</summary>
    /// <param name="history">Loads or stresses in the order they came; finite.</param>
    /// <param name="cycles">Room for the cycles, as long as the history.</param>
    /// <param name="open">Room for the reversals that closed no cycle yet, as long as the history; what stood there is lost.</param>
    /// <returns>How many cycles were written to the front, in the order they close.</returns>
    /// <exception cref="ArgumentException">Too little room.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public static int Count(ReadOnlySpan<double> history, Span<RainflowCycle> cycles, Span<double> open)
    {
        if (cycles.Length < history.Length || open.Length < history.Length)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"The spans must hold as many as the history, {history.Length}; got {cycles.Length} and {open.Length}."),
                nameof(cycles));
        }

        var stack = new ThreePointStack(cycles, open);
        int first = 0;
        while (first < history.Length && Finite(history[first]).Equals(history[0]))
        {
            first++;
        }

        if (first == history.Length)
        {
            return 0;
        }

        stack.Add(history[0]);
        double newest = Finite(history[first]);
        bool rises = newest > history[0];
        foreach (double value in history.Slice(first + 1))
        {
            if (!(Math.Abs(value) <= double.MaxValue))
            {
                Finite(value);
            }

            if (value > newest != rises && value != newest)
            {
                stack.Add(newest);
                rises = !rises;
            }

            newest = value;
        }

        stack.Add(newest);
        return stack.Finish();
    }

    /// <summary>Closed cycles of a history by the four-point rule, in the order they close.</summary>
    /// <param name="history">Loads or stresses in the order they came; finite.</param>
    /// <param name="residue">Reversals that closed no cycle: growing, then shrinking ranges.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public static IReadOnlyList<RainflowCycle> ClosedCycles(ReadOnlySpan<double> history, out IReadOnlyList<double> residue)
    {
        var cycles = new List<RainflowCycle>();
        var open = new List<double>();
        foreach (double point in Reversals(history))
        {
            open.Add(point);
            while (open.Count >= 4)
            {
                int last = open.Count - 1;
                if (!InnerCloses(open[last - 3], open[last - 2], open[last - 1], open[last]))
                {
                    break;
                }

                cycles.Add(new RainflowCycle(open[last - 2], open[last - 1], 1));
                open.RemoveRange(last - 2, 2);
            }
        }

        residue = open;
        return cycles;
    }

    /// <summary>True when of four reversals on end the range of the inner two is not larger than both its neighbours.</summary>
    internal static bool InnerCloses(double first, double second, double third, double fourth)
    {
        double inner = Math.Abs(third - second);
        return inner <= Math.Abs(fourth - third) && inner <= Math.Abs(second - first);
    }

    /// <summary>The turning points of a history, with its first and last value.</summary>
    internal static List<double> Reversals(ReadOnlySpan<double> history)
    {
        var turns = new List<double>();
        foreach (double value in history)
        {
            Finite(value);
            int count = turns.Count;
            if (count > 0 && value.Equals(turns[count - 1]))
            {
                continue;
            }

            if (count > 1 && (turns[count - 1] > turns[count - 2]) == (value > turns[count - 1]))
            {
                turns[count - 1] = value;
            }
            else
            {
                turns.Add(value);
            }
        }

        return turns;
    }

    private static double Finite(double value) => Guard.IsFinite(value) ? value
        : throw Guard.OutOfRange("History", "finite values", value, string.Empty, "history");
}
