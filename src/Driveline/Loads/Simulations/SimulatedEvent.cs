namespace Driveline.Loads;

/// <summary>What is simulated.</summary>
public enum SimulatedEvent
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>The PTO clutch is engaged and runs the machine up.</summary>
    Engagement,

    /// <summary>Something stops the driveline at work.</summary>
    Strike,
}
