namespace Driveline.Torsion;

/// <summary>Steps that no system uses at present, all of one size, so that a system found anew takes them up without new memory.</summary>
internal sealed class ModalStepPool
{
    private readonly List<ModalStep> free = [];
    private readonly int modes;

    public ModalStepPool(int mostModes) => modes = mostModes;

    /// <summary>A step that is not filled.</summary>
    public ModalStep Take()
    {
        if (free.Count == 0)
        {
            return new ModalStep(modes);
        }

        ModalStep step = free[free.Count - 1];
        free.RemoveAt(free.Count - 1);
        return step;
    }

    public void Give(ModalStep step)
    {
        step.Clear();
        free.Add(step);
    }
}
