namespace Driveline.Fleet.Web;

/// <summary>A request that is refused.</summary>
internal sealed class RefusedException(string field, string range, string received) : Exception
{
    public FleetRefusal Refusal { get; } = new(field, range, received);
}
