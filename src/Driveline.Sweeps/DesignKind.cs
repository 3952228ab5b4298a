namespace Driveline.Sweeps;

/// <summary>How the rows of a study are chosen.</summary>
public enum DesignKind
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Every combination of levels.</summary>
    Grid,

    /// <summary>Independent random rows.</summary>
    Random,

    /// <summary>A Latin hypercube: one row in each of n slices of each factor.</summary>
    LatinHypercube,

    /// <summary>Sobol points, evener than random ones.</summary>
    Sobol,

    /// <summary>Trajectories of Morris, which step one factor after the other.</summary>
    Morris,
}
