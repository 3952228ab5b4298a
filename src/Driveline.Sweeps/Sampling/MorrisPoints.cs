namespace Driveline.Sweeps.Sampling;

/// <summary>Trajectories of Morris: from a random point of a grid, each factor is stepped once, in random order and direction.</summary>
/// <remarks>
/// M. D. Morris, Technometrics 33 (1991) 161-174: p levels, step Δ = p / (2 (p - 1)), k + 1 rows a trajectory.
/// </remarks>
internal sealed class MorrisPoints : UnitPoints
{
    private readonly ulong seed;
    private readonly int levels;

    /// <param name="factors">Number of factors.</param>
    /// <param name="trajectories">Number of trajectories.</param>
    /// <param name="levels">Levels of the grid; even.</param>
    /// <param name="seed">The seed.</param>
    public MorrisPoints(int factors, long trajectories, int levels, ulong seed)
        : base(factors, trajectories * (factors + 1))
    {
        this.seed = seed;
        this.levels = levels;
    }

    /// <summary>The step, of the whole range.</summary>
    public double Step => levels / (2.0 * (levels - 1));

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        int rows = Dimensions + 1;
        for (int k = 0; k < count; k++)
        {
            long trajectory = (first + k) / rows;
            int steps = (int)((first + k) % rows);
            var order = new Permutation(Dimensions, seed, (uint)trajectory);
            for (int d = 0; d < Dimensions; d++)
            {
                columns[d][at + k] = Start(trajectory, d);
            }

            for (int step = 0; step < steps; step++)
            {
                int d = (int)order[step];
                columns[d][at + k] += IsUpward(trajectory, d) ? Step : -Step;
            }
        }
    }

    /// <summary>The factor that is stepped between two rows of a trajectory.</summary>
    public int Stepped(long trajectory, int step) => (int)new Permutation(Dimensions, seed, (uint)trajectory)[step];

    /// <summary>Whether a factor is raised or lowered in a trajectory.</summary>
    public bool IsUpward(long trajectory, int factor) =>
        (Philox.Draw(seed, (ulong)trajectory, (uint)factor, (uint)RandomStream.Trajectories).Second & 1) == 0;

    private double Start(long trajectory, int factor)
    {
        ulong half = (ulong)levels / 2;
        double level = Philox.Below(seed, (ulong)trajectory, (uint)factor, (uint)RandomStream.Trajectories, half);
        double start = level / (levels - 1);
        return IsUpward(trajectory, factor) ? start : start + Step;
    }
}
