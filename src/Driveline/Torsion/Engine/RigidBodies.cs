namespace Driveline.Torsion;

/// <summary>Rotors that rigid links join so that they move as one body, and the torques in those links.</summary>
/// <remarks>
/// Torques in rigid links that do not slip follow from equilibrium, leaf to root. Where several friction loads hold one body at
/// rest, each takes its share by capacity; a rigid stop takes all.
/// </remarks>
internal sealed class RigidBodies
{
    private readonly int[] stack;
    private readonly int[] order;
    private readonly int[] parent;
    private readonly int[] parentLink;
    private readonly bool[] atRest;
    private readonly double[] groundShare;
    private readonly double[] net;
    private int hanging;

    public RigidBodies(int rotors, int links)
    {
        Body = new int[rotors];
        Inverse = new double[rotors];
        stack = new int[rotors];
        order = new int[rotors];
        parent = new int[rotors];
        parentLink = new int[rotors];
        atRest = new bool[rotors];
        groundShare = new double[links];
        net = new double[rotors];
    }

    /// <summary>Root rotor of each rotor's body.</summary>
    public int[] Body { get; }

    /// <summary>By root: 1/ΣJ, 0 for a body that is held or at rest.</summary>
    public double[] Inverse { get; }

    /// <summary>True when any link holds rigidly, to another rotor or to the ground.</summary>
    public bool HasRigid { get; private set; }

    /// <summary>True when rotors are joined rigidly, so that torques between them must be found.</summary>
    public bool HasHanging => hanging > 0;

    /// <summary>True for a link that holds without giving way at all.</summary>
    public static bool IsRigidLock(Mechanism m, RunState x, int l) => x.Links[l] == LinkState.Locked && !m.IsElastic(l);

    /// <summary>True when the ground holds the rotor's body.</summary>
    public bool IsAtRest(int rotor) => atRest[Body[rotor]];

    /// <summary>Part of its body's torque that a locked rigid link to the ground takes.</summary>
    public double GroundShare(int link) => groundShare[link];

    /// <summary>Acceleration of the rotor's body, of the power last given to <see cref="Torques"/>.</summary>
    public double Acceleration(int rotor) => net[Body[rotor]];

    /// <summary>Finds the bodies; rotors that have just come together get their common speed.</summary>
    public void Find(Mechanism m, RunState x)
    {
        hanging = 0;
        HasRigid = false;
        for (int i = 0; i < m.Rotors; i++)
        {
            Body[i] = -1;
            atRest[i] = false;
        }

        // Held rotors first, so that they are the roots of their bodies.
        for (int pass = 0; pass < 2; pass++)
        {
            for (int i = 0; i < m.Rotors; i++)
            {
                if (Body[i] < 0 && (pass == 1 || m.IsHeld(i)))
                {
                    Grow(m, x, i);
                }
            }
        }

        for (int l = 0; l < m.Links; l++)
        {
            if (IsRigidLock(m, x, l))
            {
                HasRigid = true;
                if (m.To[l] == Mechanism.Ground)
                {
                    int root = Body[m.From[l]];
                    atRest[root] = true;
                    Inverse[root] = 0;
                }
            }
        }
    }

    /// <summary>Brings bodies that the ground holds to rest, and shares out what holds them.</summary>
    public void Rest(Mechanism m, RunState x)
    {
        for (int l = 0; l < m.Links; l++)
        {
            groundShare[l] = 0;
            if (m.To[l] != Mechanism.Ground || !IsRigidLock(m, x, l))
            {
                continue;
            }

            int root = Body[m.From[l]];
            x.Speed[m.From[l]] = 0;
            double total = 0;
            int stop = -1;
            for (int other = 0; other < m.Links; other++)
            {
                if (m.To[other] == Mechanism.Ground && IsRigidLock(m, x, other) && Body[m.From[other]] == root)
                {
                    bool stops = double.IsPositiveInfinity(m.Breakaway[other]);
                    stop = stops && stop < 0 ? other : stop;
                    total += stops ? 0 : m.Breakaway[other];
                }
            }

            groundShare[l] = stop >= 0 ? (stop == l ? 1 : 0) : total > 0 ? m.Breakaway[l] / total : 1;
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            if (IsAtRest(i))
            {
                x.Speed[i] = 0;
            }
        }
    }

    /// <summary>Torques in the rigid links from equilibrium, leaf to root; leaves each body's acceleration behind.</summary>
    /// <param name="m">The mechanism.</param>
    /// <param name="residue">All other torque on each rotor; used up.</param>
    /// <param name="torque">Series of the torque of each link.</param>
    /// <param name="j">Power of the series.</param>
    public void Torques(Mechanism m, double[] residue, double[] torque, int j)
    {
        Array.Clear(net, 0, m.Rotors);
        for (int i = 0; i < m.Rotors; i++)
        {
            net[Body[i]] += m.IsHeld(Body[i]) ? 0 : residue[i];
        }

        for (int l = 0; l < m.Links; l++)
        {
            if (groundShare[l] > 0)
            {
                double held = groundShare[l] * net[Body[m.From[l]]];
                torque[(l * StepSeries.Stride) + j] = held;
                residue[m.From[l]] -= held;
            }
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            net[i] *= Body[i] == i ? Inverse[i] : 0;
        }

        for (int n = hanging - 1; n >= 0; n--)
        {
            int i = order[n];
            int l = parentLink[i];
            double spare = residue[i] - (m.Inertia[i] * net[Body[i]]);
            torque[(l * StepSeries.Stride) + j] = m.From[l] == i ? spare : -spare;
            residue[parent[i]] += spare;
        }
    }

    private void Grow(Mechanism m, RunState x, int root)
    {
        int depth = 0;
        stack[depth++] = root;
        Body[root] = root;
        double sum = 0;
        double momentum = 0;
        bool held = false;
        while (depth > 0)
        {
            int i = stack[--depth];
            held |= m.IsHeld(i);
            if (!held)
            {
                sum += m.Inertia[i];
                momentum += m.Inertia[i] * x.Speed[i];
            }

            for (int l = 0; l < m.Links; l++)
            {
                if (!IsRigidLock(m, x, l) || m.To[l] == Mechanism.Ground || (m.From[l] != i && m.To[l] != i))
                {
                    continue;
                }

                int other = m.From[l] == i ? m.To[l] : m.From[l];
                if (Body[other] < 0)
                {
                    Body[other] = root;
                    parent[other] = i;
                    parentLink[other] = l;
                    order[hanging++] = other;
                    stack[depth++] = other;
                }
            }
        }

        Inverse[root] = held ? 0 : 1 / sum;
        double speed = held ? x.Speed[root] : momentum / sum;
        for (int i = 0; i < m.Rotors; i++)
        {
            if (Body[i] == root && i != root)
            {
                x.Speed[i] = speed;
                x.Speed[root] = speed;
            }
        }
    }
}
