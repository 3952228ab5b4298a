namespace Driveline.Torsion;

/// <summary>Modal systems found lately: runs of one model come back to the same few states of its links.</summary>
/// <remarks>When there are many, the oldest gives its room to the next.</remarks>
internal sealed class ModalCache
{
    private const int Most = 64;

    private readonly List<ModalSystem> kept = [];
    private readonly List<ModalStep> scratch = [];
    private readonly ModalSystemOf builder;
    private readonly ModalStepPool pool;
    private int oldest;

    public ModalCache(int rotors, int links)
    {
        builder = new ModalSystemOf(rotors, links);
        pool = new ModalStepPool(rotors + links);
    }

    public ModalSystem Of(Mechanism m, RunState x, Plan plan, StepSeries series)
    {
        for (int n = kept.Count - 1; n >= 0; n--)
        {
            if (kept[n].IsOf(m, x))
            {
                return kept[n];
            }
        }

        if (kept.Count < Most)
        {
            kept.Add(new ModalSystem(pool));
            builder.Fill(kept[kept.Count - 1], m, x, plan, series);
            return kept[kept.Count - 1];
        }

        ModalSystem reused = kept[oldest];
        oldest = (oldest + 1) % Most;
        builder.Fill(reused, m, x, plan, series);
        return reused;
    }

    /// <summary>A step of that many modes for a length that comes once.</summary>
    public ModalStep Scratch(int modes)
    {
        while (scratch.Count <= modes)
        {
            scratch.Add(new ModalStep(scratch.Count));
        }

        return scratch[modes];
    }
}
