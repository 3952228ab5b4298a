using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Chains;

/// <summary>Whether the shear planes of a bolt cut its shank or its thread, from its lengths.</summary>
/// <remarks>
/// The plain shank ends at s = bolt length − thread length under the head. A bolt through hub D and shaft d is cut at (D − d)/2 and
/// (D + d)/2; one through a wall t and a grip g at t or g − t, whichever way round it sits; with a grip alone somewhere from 0 to g. All
/// planes before s lie in the shank, all behind it in the thread; between the two nothing is known.
/// </remarks>
internal static class ShearPlanePlace
{
    /// <summary>Shank or thread; not known when lengths are missing or the planes cut one of each.</summary>
    public static PlaneThrough Of(FittedBolt fitted)
    {
        StatedBolt bolt = fitted.Stated;
        if (bolt.Thread is null || bolt.BoltLength is not { } length || bolt.ThreadLength is not { } threaded
            || Planes(fitted) is not { } planes)
        {
            return PlaneThrough.NotKnown;
        }

        double shank = Math.Max(0, Si.Meters(length) - Si.Meters(threaded));
        return planes.Last <= shank ? PlaneThrough.Shank
            : planes.First >= shank ? PlaneThrough.Thread
            : PlaneThrough.NotKnown;
    }

    private static (double First, double Last)? Planes(FittedBolt fitted)
    {
        if (fitted is { Layout: JointLayout.ThroughShaft, ShaftDiameter: { } shaft, HubDiameter: { } hub })
        {
            return ((Si.Meters(hub) - Si.Meters(shaft)) / 2, (Si.Meters(hub) + Si.Meters(shaft)) / 2);
        }

        if (fitted.GripLength is not { } grip)
        {
            return null;
        }

        double g = Si.Meters(grip);
        return fitted is { Layout: not JointLayout.ThroughShaft, YokeThickness: { } wall } && Si.Meters(wall) < g
            ? (Math.Min(Si.Meters(wall), g - Si.Meters(wall)), Math.Max(Si.Meters(wall), g - Si.Meters(wall)))
            : (0, g);
    }
}
