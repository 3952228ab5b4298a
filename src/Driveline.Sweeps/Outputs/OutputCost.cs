namespace Driveline.Sweeps.Outputs;

/// <summary>What an output costs a row, which sets how many rows make a group.</summary>
internal enum OutputCost
{
    /// <summary>A few nanoseconds to a few microseconds.</summary>
    ClosedForm = 0,

    /// <summary>A mapped case.</summary>
    Case,

    /// <summary>A simulated event.</summary>
    Simulation,
}
