using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>How the rows of a study are chosen: kind, size and seed. Immutable.</summary>
/// <remarks>Every row depends on the design and its own number alone, so that any part of a study can be computed anywhere.</remarks>
public sealed class Design
{
    private Design(DesignKind kind, long size, ulong seed, bool isMaximin, int levels, bool isScrambled)
    {
        Kind = kind;
        Size = size;
        Seed = seed;
        IsMaximin = isMaximin;
        Levels = levels;
        IsScrambled = isScrambled;
    }

    /// <summary>The kind.</summary>
    public DesignKind Kind { get; }

    /// <summary>Rows of a plain design; levels of each factor of a grid; trajectories of Morris; base points with sensitivity.</summary>
    public long Size { get; }

    /// <summary>The seed; one seed gives the same rows on every machine.</summary>
    public ulong Seed { get; }

    /// <summary>True for a Latin hypercube whose points are spread out.</summary>
    public bool IsMaximin { get; }

    /// <summary>Levels of a Morris design.</summary>
    public int Levels { get; }

    /// <summary>True when Sobol points are scrambled by the seed.</summary>
    public bool IsScrambled { get; }

    /// <summary>Every combination of so many levels of each factor; a list has as many levels as values.</summary>
    /// <param name="levels">1 or more. Ends included; a factor without ends is cut at 0.5 % and 99.5 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">No level.</exception>
    public static Design Grid(int levels) => new(DesignKind.Grid, Positive(levels, "Levels", nameof(levels)), 0, false, 0, false);

    /// <summary>Independent random rows.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No row.</exception>
    public static Design Random(long rows, ulong seed) =>
        new(DesignKind.Random, Positive(rows, "Rows", nameof(rows)), seed, false, 0, false);

    /// <summary>A Latin hypercube.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No row.</exception>
    public static Design LatinHypercube(long rows, ulong seed) =>
        new(DesignKind.LatinHypercube, Positive(rows, "Rows", nameof(rows)), seed, false, 0, false);

    /// <summary>A Latin hypercube whose points are spread out, by swaps that raise the smallest distances.</summary>
    /// <param name="rows">1 to 2000.</param>
    /// <param name="seed">The seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">No row, or too many.</exception>
    public static Design MaximinLatinHypercube(int rows, ulong seed) => new(
        DesignKind.LatinHypercube, Guard.Within(rows, 1, Sampling.MaximinPoints.MostRows, "Rows", nameof(rows)), seed, true, 0, false);

    /// <summary>Sobol points, scrambled by the seed; a power of 2 of them is evenest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No row.</exception>
    public static Design Sobol(long rows, ulong seed) =>
        new(DesignKind.Sobol, Positive(rows, "Rows", nameof(rows)), seed, false, 0, true);

    /// <summary>Sobol points as published, each moved to the middle of its cell of 2^-32.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No row.</exception>
    public static Design UnscrambledSobol(long rows) =>
        new(DesignKind.Sobol, Positive(rows, "Rows", nameof(rows)), 0, false, 0, false);

    /// <summary>Trajectories of Morris on a grid of four levels.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No trajectory.</exception>
    public static Design Morris(int trajectories, ulong seed) => Morris(trajectories, 4, seed);

    /// <summary>Trajectories of Morris.</summary>
    /// <param name="trajectories">1 or more; 10 to 50 are usual.</param>
    /// <param name="levels">Levels of the grid; even, 2 to 1000. A factor without ends is cut at 0.5 % and 99.5 %.</param>
    /// <param name="seed">The seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">No trajectory, or an odd number of levels.</exception>
    public static Design Morris(int trajectories, int levels, ulong seed) => levels % 2 == 0
        ? new(DesignKind.Morris, Positive(trajectories, "Trajectories", nameof(trajectories)), seed, false,
            Guard.Within(levels, 2, 1000, "Levels", nameof(levels)), false)
        : throw new ArgumentOutOfRangeException(
            nameof(levels), FormattableString.Invariant($"Levels must be even, from 2 to 1000; got {levels}."));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant(
        $"{Kind} {Size} seed {Seed}{(IsMaximin ? " maximin" : "")}{(Levels > 0 ? " levels " + Levels : "")}")
        + (Kind == DesignKind.Sobol && !IsScrambled ? " as published" : string.Empty);

    private static long Positive(long value, string what, string parameter) => value >= 1 ? value
        : throw new ArgumentOutOfRangeException(parameter, FormattableString.Invariant($"{what} must be 1 or more; got {value}."));
}
