namespace Driveline.Sweeps.Outputs;

/// <summary>What an output costs a row, which sets how many rows make a group.</summary>
internal enum OutputCost
{
    /// <summary>A few nanoseconds to a few microseconds.</summary>
    ClosedForm = 0,

    /// <summary>A mapped case.</summary>
    Case,

    /// <summary>A simulated event, with the protection and without.</summary>
    Simulation,

    /// <summary>A simulated event at every end of what is stated, as damage needs.</summary>
    WholeSimulation,
}
