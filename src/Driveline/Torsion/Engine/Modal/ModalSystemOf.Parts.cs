namespace Driveline.Torsion;

/// <content>What hangs together, and what of it hangs on nothing outside itself.</content>
internal sealed partial class ModalSystemOf
{
    // What hangs on nothing outside itself turns on as one: √M of each body, of length 1.
    private bool IsFree(Mechanism m, RunState x, Plan plan, int count)
    {
        double square = 0;
        for (int i = 0; i < count; i++)
        {
            ModalState state = states[members[i]];
            if (state.Root < 0 ? !IsBetweenFree(m, x, plan, state.Link) : HasViscous(m, plan, state.Root))
            {
                return false;
            }

            still[i] = state.Root < 0 ? 0 : state.Scale;
            square += still[i] * still[i];
        }

        double length = Math.Sqrt(square);
        for (int i = 0; i < count; i++)
        {
            still[i] /= length;
        }

        return square > 0;
    }

    private static bool IsBetweenFree(Mechanism m, RunState x, Plan plan, int l) => x.Links[l] == LinkState.Locked
        && m.To[l] >= 0
        && plan.Bodies.Inverse[plan.Bodies.Body[m.From[l]]] > 0
        && plan.Bodies.Inverse[plan.Bodies.Body[m.To[l]]] > 0;

    private static bool HasViscous(Mechanism m, Plan plan, int root)
    {
        bool has = false;
        for (int i = 0; i < m.Rotors; i++)
        {
            has |= plan.Bodies.Body[i] == root && plan.Viscous[i] > 0;
        }

        return has;
    }

    // States that act on one another get the same number.
    private void Connect()
    {
        for (int i = 0; i < n; i++)
        {
            part[i] = i;
        }

        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                if (a[(i * n) + j] != 0 && part[i] != part[j])
                {
                    Merge(part[i], part[j]);
                }
            }
        }
    }

    private void Merge(int kept, int merged)
    {
        for (int i = 0; i < n; i++)
        {
            part[i] = part[i] == merged ? kept : part[i];
        }
    }
}
