namespace Driveline.Torsion;

/// <content>Many steps at once when nothing can happen any more: their matrices by doubling.</content>
internal sealed partial class Propagator
{
    private const int LeastSteps = 12;

    private readonly Settling settling;
    private readonly double[] row;
    private double[] product = [];

    /// <summary>Takes all whole steps before a moment on the clock, when a bound shows that nothing happens in them.</summary>
    /// <remarks>
    /// Φ(2h) = Φ², R(2h) = R + R·Φ for angles, G(2h) = G + Φᵀ·G·Φ for energies; the bits of the number of steps pick them.
    /// </remarks>
    public bool TryLeap(Mechanism m, RunState x, Plan plan, StepSeries series, RunLog log, EnergyMeter energy, double next)
    {
        double h = TransientLoop.Reach / plan.Rate;
        double steps = Math.Floor((next - x.Time) / h);
        if (!(steps >= LeastSteps && steps < int.MaxValue) || waited < 0 || stride > MostStates || !settling.Holds(m, x, plan, log))
        {
            return false;
        }

        if (!ready)
        {
            if (!Suits(m, x, plan))
            {
                waited = -1;
                return false;
            }

            Prepare(m, x, plan, series);
            log.Work += PrepareWork(m, plan);
        }

        double start = x.Time;
        for (int left = (int)steps; left > 0; left >>= 1)
        {
            if ((left & 1) != 0)
            {
                Load(x, plan);
                for (int n = 0; n < size; n++)
                {
                    end[n] = Dot(phi, n * stride, z);
                }

                Energies(m, x, plan, energy);
                Store(x, plan);
                log.Steps++;
            }

            if (left > 1)
            {
                Double(m, plan);
                log.Work += DoubleWork(m);
            }
        }

        x.Time = Math.Min(start + (steps * h), next);
        ready = false;
        waited = 0;
        return true;
    }

    private long DoubleWork(Mechanism m) => (long)size * size * (size + (2 * m.Rotors) + (2 * size * squares));

    private void Double(Mechanism m, Plan plan)
    {
        for (int q = 0; q < m.Rotors + plan.SpringCount; q++)
        {
            if (IsSquared(m, plan, q))
            {
                AddTurned(q * stride * stride);
            }
        }

        Advance(turned, m.Rotors);
        for (int i = 0; i < m.Rotors; i++)
        {
            if (m.IsHeld(i))
            {
                Advance(given, m.Rotors);
                break;
            }
        }

        for (int a = 0; a < size; a++)
        {
            RowTimesPhi(phi, a * stride, product, a * stride);
        }

        (phi, product) = (product, phi);
    }

    // Rows of a linear quantity: R + R·Φ.
    private void Advance(double[] rows, int count)
    {
        for (int i = 0; i < count; i++)
        {
            RowTimesPhi(rows, i * stride, row, 0);
            for (int a = 0; a < size; a++)
            {
                rows[(i * stride) + a] += row[a];
            }
        }
    }

    // G + Φᵀ·G·Φ; G is symmetric.
    private void AddTurned(int first)
    {
        for (int a = 0; a < size; a++)
        {
            RowTimesPhi(gram, first + (a * stride), product, a * stride);
        }

        for (int c = 0; c < size; c++)
        {
            for (int a = 0; a < size; a++)
            {
                double factor = phi[(c * stride) + a];
                if (factor != 0)
                {
                    int to = first + (a * stride);
                    for (int b = 0; b < size; b++)
                    {
                        gram[to + b] += factor * product[(c * stride) + b];
                    }
                }
            }
        }
    }

    private void RowTimesPhi(double[] rows, int from, double[] into, int at)
    {
        Array.Clear(into, at, size);
        for (int c = 0; c < size; c++)
        {
            double factor = rows[from + c];
            if (factor != 0)
            {
                var line = new ReadOnlySpan<double>(phi, c * stride, size);
                for (int b = 0; b < line.Length; b++)
                {
                    into[at + b] += factor * line[b];
                }
            }
        }
    }
}
