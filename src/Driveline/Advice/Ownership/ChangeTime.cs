using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>How many minutes a bolt change takes by its place, from stopping to running again.</summary>
/// <remarks>
/// That a through-shaft bolt at the gearbox is far harder to change than one in a yoke is common practice; the minutes are from memory.
/// </remarks>
internal static class ChangeTime
{
    private static readonly Basis Memory = Basis.FromMemory("minutes of a shear-bolt change by access; nobody has timed it");

    /// <summary>Minutes of a change.</summary>
    public static RatioBand Minutes(BoltAccess access) => access switch
    {
        BoltAccess.YokeInReach => RatioBand.Between(5, 10, 20, Memory),
        BoltAccess.ThroughShaftAtGearbox => RatioBand.Between(20, 45, 120, Memory),
        _ => RatioBand.Between(5, 45, 120, Memory),
    };
}
