namespace Driveline.Torsion;

/// <summary>Modal systems found lately: runs of one model come back to the same few states of its links.</summary>
internal sealed class ModalCache
{
    private const int Most = 64;

    private readonly List<ModalSystem> kept = [];
    private readonly List<ModalStep> scratch = [];
    private readonly RunState unit;
    private int oldest;

    public ModalCache(int rotors, int links) => unit = new RunState(rotors, links);

    public ModalSystem Of(Mechanism m, RunState x, Plan plan, StepSeries series)
    {
        for (int n = kept.Count - 1; n >= 0; n--)
        {
            if (kept[n].IsOf(m, x))
            {
                return kept[n];
            }
        }

        ModalSystem system = ModalSystemOf.Links(m, x, plan, series, unit);
        if (kept.Count < Most)
        {
            kept.Add(system);
        }
        else
        {
            kept[oldest] = system;
            oldest = (oldest + 1) % Most;
        }

        return system;
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
