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

    private readonly Mechanism mechanism;
    private readonly LinkState[] links;
    private readonly bool[] relaxing;
    private readonly bool isDriveOnLine;
    private readonly double[] back;
    private readonly double[] forth;

    public ModalSystem(Mechanism m, RunState x, ModalParts? parts)
    {
        mechanism = m;
        links = (LinkState[])x.Links.Clone();
        relaxing = (bool[])x.Relaxing.Clone();
        isDriveOnLine = x.DriveLimit == 0;
        IsSound = parts is not null;
        States = parts?.States ?? [];
        Re = parts?.Re ?? [];
        Im = parts?.Im ?? [];
        Size = new double[Re.Length];
        back = parts?.Back ?? [];
        forth = parts?.Forth ?? [];
        Rows = parts?.Rows ?? [];
        RowSizes = parts?.RowSizes ?? [];
        Work = parts?.Work ?? 0;
        for (int k = 0; k < Re.Length; k++)
        {
            Size[k] = Math.Sqrt((Re[k] * Re[k]) + (Im[k] * Im[k]));
            Fastest = Math.Max(Fastest, Size[k]);
        }

        double slowest = Fastest;
        for (int k = 0; k < Re.Length; k++)
        {
            slowest = Im[k] != 0 && Size[k] > Slow * Fastest ? Math.Min(slowest, Size[k]) : slowest;
        }

        FirstLevel = Fastest == 0 ? 0 : LevelWithin(2 / slowest);
    }

    /// <summary>False when the motion does not part into modes soundly; it must then be followed by series.</summary>
    public bool IsSound { get; }

    public int Modes => Re.Length;

    /// <summary>Two numbers a mode, real and imaginary part; a real mode keeps 0 in the second.</summary>
    public int Width => 2 * Re.Length;

    public double[] Re { get; }

    public double[] Im { get; }

    /// <summary>|λ| of each mode.</summary>
    public double[] Size { get; }

    public double Fastest { get; }

    /// <summary>Level of about two radians of the slowest swing: where a stretch begins to try.</summary>
    public int FirstLevel { get; }

    /// <summary>What finding the modes costs.</summary>
    public long Work { get; }

    public ModalState[] States { get; }

    /// <summary>Rows of C, as (Re, −Im), <see cref="Width"/> numbers each; which is which tells <see cref="ModalRow"/>.</summary>
    public double[] Rows { get; }

    /// <summary>|C| of each mode in each row.</summary>
    public double[] RowSizes { get; }

    /// <summary>Steps of 2ᵏ over the fastest |λ|; filled when first asked for.</summary>
    public List<ModalStep> Levels { get; } = [];

    public ReadOnlySpan<double> Row(int row) => Rows.AsSpan(row * Width, Width);

    public bool IsOf(Mechanism m, RunState x)
    {
        bool same = ReferenceEquals(m, mechanism) && isDriveOnLine == (x.DriveLimit == 0);
        for (int l = 0; l < links.Length && same; l++)
        {
            same = x.Links[l] == links[l] && x.Relaxing[l] == relaxing[l];
        }

        return same;
    }

    public ModalStep Level(int level)
    {
        while (Levels.Count <= level)
        {
            var step = new ModalStep(Modes);
            step.Fill(this, Math.Pow(2, Levels.Count) / Fastest);
            Levels.Add(step);
        }

        return Levels[level];
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
            q[k] = Dot(forth.AsSpan(k * states.Length, states.Length), states);
        }
    }

    /// <summary>Coordinates of the states from modes.</summary>
    public void ToStates(ReadOnlySpan<double> q, Span<double> states)
    {
        for (int s = 0; s < states.Length; s++)
        {
            states[s] = Dot(back.AsSpan(s * Width, Width), q);
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
