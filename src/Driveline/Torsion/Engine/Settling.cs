namespace Driveline.Torsion;

/// <summary>Shows that what swings can never again reach a peak so far or a capacity while the links keep their states.</summary>
/// <remarks>
/// Each tree of springs has a motion without swings: at the speed of what holds it, at ΣT/Σc under viscous loads, else in common
/// acceleration ΣT/ΣJ; equilibrium from leaf to root gives its torques. The energy E of the difference, Σ½Ju² + Σ½kφ², never
/// rises, so that a spring's torque stays within √(2E)·√(k + c²(1/J₁ + 1/J₂)) of it (Cauchy–Schwarz).
/// </remarks>
internal sealed class Settling
{
    private readonly int[] tree;
    private readonly double[] speed;
    private readonly double[] acceleration;
    private readonly double[] inertia;
    private readonly double[] momentum;
    private readonly double[] viscous;
    private readonly double[] energy;
    private readonly double[] steady;
    private readonly double[] reach;
    private readonly bool[] solved;
    private bool known;
    private bool suits;

    public Settling(int rotors, int links)
    {
        tree = new int[rotors];
        speed = new double[rotors];
        acceleration = new double[rotors];
        inertia = new double[rotors];
        momentum = new double[rotors];
        viscous = new double[rotors];
        energy = new double[rotors];
        steady = new double[links];
        reach = new double[links];
        solved = new bool[links];
    }

    /// <summary>To be called when a link changes its state.</summary>
    public void Forget() => known = false;

    /// <summary>True when no torque can reach its peak so far or its capacity any more.</summary>
    public bool Holds(Mechanism m, RunState x, Plan plan, RunLog log)
    {
        if (!known)
        {
            known = true;
            suits = Solve(m, x, plan);
        }

        if (!suits)
        {
            return false;
        }

        Energies(m, x, plan);
        for (int n = 0; n < plan.SpringCount; n++)
        {
            ref readonly Spring spring = ref plan.Springs[n];
            double inverse = plan.Inverse[spring.From] + (spring.To < 0 ? 0 : plan.Inverse[spring.To]);
            reach[n] = Math.Sqrt(2 * energy[tree[spring.From]] * (spring.Stiffness + (spring.Damping * spring.Damping * inverse)));
            if (!IsBelow(plan, log, spring.Link, steady[n], reach[n]))
            {
                return false;
            }
        }

        for (int k = 0; k < plan.OtherCount; k++)
        {
            int l = plan.Others[k];
            if (x.Links[l] == LinkState.Locked && !IsStopBelow(m, plan, log, l))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsBelow(Plan plan, RunLog log, int l, double mean, double around) =>
        mean + around < Math.Min(log.Most[l], plan.Forward[l]) && around - mean < Math.Min(log.Least[l], plan.Reverse[l]);

    // A stop carries what its rotor's springs and inputs leave.
    private bool IsStopBelow(Mechanism m, Plan plan, RunLog log, int l)
    {
        int i = m.From[l];
        double mean = plan.Input[i];
        double around = 0;
        for (int n = 0; n < plan.SpringCount; n++)
        {
            ref readonly Spring spring = ref plan.Springs[n];
            if (spring.From == i || spring.To == i)
            {
                mean -= spring.From == i ? steady[n] : -steady[n];
                around += reach[n];
            }
        }

        double share = plan.Bodies.GroundShare(l);
        return IsBelow(plan, log, l, share * mean, share * around);
    }

    private void Energies(Mechanism m, RunState x, Plan plan)
    {
        Array.Clear(energy, 0, m.Rotors);
        Array.Clear(momentum, 0, m.Rotors);
        for (int i = 0; i < m.Rotors; i++)
        {
            momentum[tree[i]] += plan.Inverse[i] > 0 ? m.Inertia[i] * x.Speed[i] : 0;
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            int root = tree[i];
            double common = double.IsNaN(speed[root]) ? momentum[root] / inertia[root] : speed[root];
            double off = x.Speed[i] - common;
            energy[root] += plan.Inverse[i] > 0 ? 0.5 * m.Inertia[i] * off * off : 0;
        }

        for (int n = 0; n < plan.SpringCount; n++)
        {
            ref readonly Spring spring = ref plan.Springs[n];
            double off = x.Twist[spring.Link] - (steady[n] / spring.Stiffness);
            energy[tree[spring.From]] += 0.5 * spring.Stiffness * off * off;
        }
    }

    // False when springs close a ring, or a tree is held at two places.
    private bool Solve(Mechanism m, RunState x, Plan plan)
    {
        FindTrees(m, plan);
        for (int i = 0; i < m.Rotors; i++)
        {
            speed[i] = double.NaN;
            inertia[i] = momentum[i] = viscous[i] = 0;
        }

        for (int n = 0; n < plan.SpringCount; n++)
        {
            if (plan.Springs[n].To < 0 && !Hold(tree[plan.Springs[n].From], 0))
            {
                return false;
            }
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            if (plan.Inverse[i] == 0 && !Hold(tree[i], x.Speed[i]))
            {
                return false;
            }

            inertia[tree[i]] += plan.Inverse[i] > 0 ? m.Inertia[i] : 0;
            momentum[tree[i]] += plan.Input[i];
            viscous[tree[i]] += plan.Viscous[i];
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            bool isHeld = !double.IsNaN(speed[i]);
            speed[i] = !isHeld && viscous[i] > 0 ? momentum[i] / viscous[i] : speed[i];
            acceleration[i] = isHeld || viscous[i] > 0 ? 0 : momentum[i] / inertia[i];
        }

        return Torques(m, plan);
    }

    private bool Hold(int root, double at)
    {
        (bool isFirst, speed[root]) = (double.IsNaN(speed[root]), at);
        return isFirst;
    }

    private void FindTrees(Mechanism m, Plan plan)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            tree[i] = i;
        }

        for (int n = 0; n < plan.SpringCount; n++)
        {
            ref readonly Spring spring = ref plan.Springs[n];
            int kept = tree[spring.From];
            int merged = spring.To < 0 ? kept : tree[spring.To];
            for (int i = 0; i < m.Rotors && merged != kept; i++)
            {
                tree[i] = tree[i] == merged ? kept : tree[i];
            }
        }
    }

    private bool Torques(Mechanism m, Plan plan)
    {
        Array.Clear(solved, 0, plan.SpringCount);
        for (int left = plan.SpringCount; left > 0; left--)
        {
            int found = -1;
            for (int i = 0; i < m.Rotors && found < 0; i++)
            {
                found = plan.Inverse[i] > 0 ? OnlyUnsolved(plan, i) : -1;
                if (found >= 0)
                {
                    double rest = plan.Input[i] - (plan.Viscous[i] > 0 ? plan.Viscous[i] * speed[tree[i]] : 0) - (
                        m.Inertia[i] * acceleration[tree[i]]);
                    Balance(plan, i, found, rest);
                }
            }

            if (found < 0)
            {
                return false;
            }
        }

        return true;
    }

    private int OnlyUnsolved(Plan plan, int rotor)
    {
        int only = -1;
        for (int n = 0; n < plan.SpringCount; n++)
        {
            if (!solved[n] && (plan.Springs[n].From == rotor || plan.Springs[n].To == rotor))
            {
                if (only >= 0)
                {
                    return -1;
                }

                only = n;
            }
        }

        return only;
    }

    private void Balance(Plan plan, int rotor, int spring, double rest)
    {
        for (int n = 0; n < plan.SpringCount; n++)
        {
            if (solved[n])
            {
                rest -= plan.Springs[n].From == rotor ? steady[n] : 0;
                rest += plan.Springs[n].To == rotor ? steady[n] : 0;
            }
        }

        steady[spring] = plan.Springs[spring].From == rotor ? rest : -rest;
        solved[spring] = true;
    }
}
