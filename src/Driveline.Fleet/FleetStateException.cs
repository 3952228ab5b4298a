namespace Driveline.Fleet;

/// <summary>A stored state that this silo cannot read; it stays as it is.</summary>
[GenerateSerializer, Alias("Driveline.Fleet.FleetStateException")]
public sealed class FleetStateException : Exception
{
    /// <summary>Without words.</summary>
    public FleetStateException()
    {
    }

    /// <summary>With what is wrong.</summary>
    public FleetStateException(string message)
        : base(message)
    {
    }

    /// <summary>With what is wrong and what caused it.</summary>
    public FleetStateException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
