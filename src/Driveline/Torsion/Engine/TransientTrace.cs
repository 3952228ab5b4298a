namespace Driveline.Torsion;

/// <summary>Samples of torques or speeds at equal times, each at k·end/(n − 1), k = 0 … n − 1.</summary>
internal ref struct TransientTrace
{
    // Samples from one that is found from the start of a stretch to the next such; those between follow each from the one before.
    private const int Anchored = 32;

    private readonly ReadOnlySpan<int> of;
    private readonly bool isSpeed;
    private readonly Span<double> samples;
    private readonly double end;
    private readonly int count;
    private int done;

    public TransientTrace(ReadOnlySpan<int> of, bool isSpeed, Span<double> samples, double end)
    {
        this.of = of;
        this.isSpeed = isSpeed;
        this.samples = samples;
        this.end = end;
        count = of.Length == 0 ? 0 : samples.Length / of.Length;
        done = 0;
    }

    /// <summary>True when that is the time of the last sample.</summary>
    public readonly bool EndsAt(double time) => time == end;

    /// <summary>Samples of a step by series.</summary>
    public void Add(StepSeries series, double start, bool isEnd, RunLog log)
    {
        double h = series.Length;
        for (; done < count && Next(start + h, isEnd, out double at); done++)
        {
            double s = h > 0 ? Math.Min((at - start) / h, 1) : 0;
            for (int n = 0; n < of.Length; n++)
            {
                ReadOnlySpan<double> terms = series.Of(isSpeed ? series.Speed : series.Torque, of[n]);
                samples[(n * count) + done] = Polynomial.Value(terms, s);
                log.Work += Polynomial.ValueWork(terms);
            }
        }
    }

    /// <summary>Samples of a stretch by modes.</summary>
    public void Add(Mechanism m, ModalMotion motion, ModalStep step, double start, double length, bool isEnd, RunLog log)
    {
        ModalSystem system = motion.System;
        Span<double> q = motion.Scratch.AsSpan(0, system.Width);
        Span<double> before = motion.Before.AsSpan(0, system.Width);
        Span<double> input = motion.InputNow.AsSpan(0, system.Width);
        double last = 0;
        for (int k = 0; done < count && Next(start + length, isEnd, out double at); done++, k++)
        {
            double after = Math.Max(0, Math.Min(at - start, length));
            if (k % Anchored == 0 || after == length)
            {
                step.Fill(system, after);
                step.Advance(motion.Start.AsSpan(0, system.Width), motion.Input, motion.InputRate, q);
            }
            else
            {
                if (k % Anchored == 1)
                {
                    step.Fill(system, end / (count - 1));
                }

                q.CopyTo(before);
                motion.InputAt(last, input);
                step.Advance(before, input, motion.InputRate, q);
            }

            last = after;
            for (int n = 0; n < of.Length; n++)
            {
                int row = isSpeed ? ModalRow.Speed(of[n]) : ModalRow.Torque(m, of[n]);
                samples[(n * count) + done] =
                    motion.Offset[row] + (motion.OffsetRate[row] * after) + ModalSystem.Dot(system.Row(row), q);
            }

            log.Work += system.Width * (12L + of.Length);
        }

        step.Fill(system, length);
    }

    private readonly bool Next(double until, bool isEnd, out double at)
    {
        at = count == 1 ? 0 : end * done / (count - 1);
        return at <= until || (isEnd && done == count - 1);
    }
}
