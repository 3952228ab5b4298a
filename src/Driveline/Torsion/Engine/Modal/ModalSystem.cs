namespace Driveline.Torsion;

/// <summary>The motion of a mechanism as modes, as long as its links keep their states.</summary>
/// <remarks>
/// Between events the motion is x′ = A·x + b₀ + b₁·t. In coordinates √M·ω and √k·φ, whose square is twice the energy, A gives
/// no energy, so that every mode q′ = λ·q + g has Re λ ≤ 0: what swings never grows. A quantity of the motion (a speed, a
/// torque, a rate of slip) is a row: a₀ + a₁·t + Σ Re(Cₖ·qₖ).
/// </remarks>
internal sealed class ModalSystem
{
    // What swings a million times as slowly as the fastest sets no first step.
    private const double Slow = 1e-6;

    /// <summary>Highest level of a step.</summary>
    public const int MostLevel = 60;

    private readonly ModalStep?[] levels = new ModalStep?[MostLevel + 1];
    private readonly MotionFigures figures = new();
    private readonly ModalStepPool pool;
    private int rows;
    private LinkState[] links = [];
    private bool[] relaxing = [];
    private bool isDriveOnLine;
    private int states;

    public ModalSystem(ModalStepPool steps) => pool = steps;

    /// <summary>False when the motion does not part into modes soundly; it must then be followed by series.</summary>
    public bool IsSound { get; private set; }

    public int Modes { get; private set; }

    /// <summary>Two numbers a mode, real and imaginary part; a real mode keeps 0 in the second.</summary>
    public int Width => 2 * Modes;

    public double[] Re { get; private set; } = [];

    public double[] Im { get; private set; } = [];

    /// <summary>|λ| of each mode.</summary>
    public double[] Size { get; private set; } = [];

    public double Fastest { get; private set; }

    /// <summary>Level of about two radians of the slowest swing: where a stretch begins to try.</summary>
    public int FirstLevel { get; private set; }

    /// <summary>What finding the modes costs.</summary>
    public long Work { get; private set; }

    /// <summary>What each state is; of these arrays the front counts, they may be longer.</summary>
    public ModalState[] States { get; private set; } = [];

    public int StateCount => states;

    /// <summary>States from modes, row by row.</summary>
    public double[] Back { get; private set; } = [];

    /// <summary>Modes from states, row by row.</summary>
    public double[] Forth { get; private set; } = [];

    /// <summary>Rows of C, as (Re, −Im), <see cref="Width"/> numbers each; which is which tells <see cref="ModalRow"/>.</summary>
    public double[] Rows { get; private set; } = [];

    /// <summary>|C| of each mode in each row.</summary>
    public double[] RowSizes { get; private set; } = [];

    /// <summary>Begins anew with a mechanism in a state; without modes until they are filled in.</summary>
    public void Begin(Mechanism m, RunState x)
    {
        figures.Take(m);
        rows = ModalRow.Count(m);
        if (links.Length != m.Links)
        {
            links = new LinkState[m.Links];
            relaxing = new bool[m.Links];
        }

        Array.Copy(x.Links, links, m.Links);
        Array.Copy(x.Relaxing, relaxing, m.Links);
        isDriveOnLine = x.DriveLimit == 0;
        IsSound = false;
        Modes = 0;
        states = 0;
        Work = 0;
        Fastest = 0;
        FirstLevel = 0;
        for (int level = 0; level < levels.Length; level++)
        {
            if (levels[level] is { } step)
            {
                pool.Give(step);
                levels[level] = null;
            }
        }
    }

    /// <summary>Makes room.</summary>
    public void Fit(int ofStates, int modes, int rows)
    {
        states = ofStates;
        Modes = modes;
        if (States.Length < states || Re.Length < modes || Back.Length < states * Width || Rows.Length < rows * Width)
        {
            int most = Math.Max(modes, Re.Length), mostStates = Math.Max(states, States.Length);
            States = new ModalState[mostStates];
            Re = new double[most];
            Im = new double[most];
            Size = new double[most];
            Back = new double[2 * mostStates * most];
            Forth = new double[2 * mostStates * most];
            Rows = new double[2 * rows * most];
            RowSizes = new double[rows * most];
        }
    }

    /// <summary>Ends the filling: sizes, and the step to begin with.</summary>
    public void Finish(long work)
    {
        IsSound = true;
        Work = work;
        for (int c = 0; c < rows * Modes; c++)
        {
            double a = Rows[2 * c];
            double b = Rows[(2 * c) + 1];
            RowSizes[c] = Math.Sqrt((a * a) + (b * b));
        }

        for (int k = 0; k < Modes; k++)
        {
            Size[k] = Math.Sqrt((Re[k] * Re[k]) + (Im[k] * Im[k]));
            Fastest = Math.Max(Fastest, Size[k]);
        }

        double slowest = Fastest;
        for (int k = 0; k < Modes; k++)
        {
            slowest = Im[k] != 0 && Size[k] > Slow * Fastest ? Math.Min(slowest, Size[k]) : slowest;
        }

        FirstLevel = Fastest == 0 ? 0 : LevelWithin(2 / slowest);
    }

    public ReadOnlySpan<double> Row(int row) => Rows.AsSpan(row * Width, Width);

    public bool IsOf(Mechanism m, RunState x)
    {
        bool same = isDriveOnLine == (x.DriveLimit == 0) && figures.AreOf(m);
        for (int l = 0; l < links.Length && same; l++)
        {
            same = x.Links[l] == links[l] && x.Relaxing[l] == relaxing[l];
        }

        return same;
    }

    /// <summary>The step of 2ᵏ over the fastest |λ|; filled when first asked for.</summary>
    public ModalStep Level(int level)
    {
        ModalStep step = levels[level] ??= pool.Take();
        if (step.Length == 0)
        {
            step.Fill(this, Math.Pow(2, level) / Fastest);
        }

        return step;
    }

    /// <summary>The largest level no longer than that; 0 when there is none.</summary>
    public int LevelWithin(double length)
    {
        int level = (int)Math.Floor(Math.Log(length * Fastest) / Math.Log(2));
        return Math.Max(Math.Min(level, MostLevel), 0);
    }

    /// <summary>Modes from the coordinates of the states.</summary>
    public void ToModes(ReadOnlySpan<double> states, Span<double> q)
    {
        for (int k = 0; k < Width; k++)
        {
            q[k] = Dot(Forth.AsSpan(k * states.Length, states.Length), states);
        }
    }

    /// <summary>Coordinates of the states from modes.</summary>
    public void ToStates(ReadOnlySpan<double> q, Span<double> states)
    {
        for (int s = 0; s < states.Length; s++)
        {
            states[s] = Dot(Back.AsSpan(s * Width, Width), q);
        }
    }

    /// <summary>Σ|Cₖ|·|qₖ|.</summary>
    public double SizeOf(int row, ReadOnlySpan<double> q)
    {
        double sum = 0;
        for (int k = 0; k < Modes; k++)
        {
            sum += RowSizes[(row * Modes) + k] * Math.Sqrt((q[2 * k] * q[2 * k]) + (q[(2 * k) + 1] * q[(2 * k) + 1]));
        }

        return sum;
    }

    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length && i < b.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
