namespace Driveline.Sweeps.Sampling;

/// <summary>What a stream of random numbers is for, so that two uses of one seed never share numbers.</summary>
internal enum RandomStream : uint
{
    /// <summary>Plain random points.</summary>
    Points = 0,

    /// <summary>Order of the strata of a Latin hypercube.</summary>
    Strata,

    /// <summary>Place within a stratum.</summary>
    Jitter,

    /// <summary>Swaps that spread a Latin hypercube out.</summary>
    Swaps,

    /// <summary>Scrambling of Sobol points.</summary>
    Scramble,

    /// <summary>Trajectories.</summary>
    Trajectories,

    /// <summary>Resampling for intervals.</summary>
    Bootstrap,
}
