using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <content>The yoke or hub around the bolt, and what stands out of it.</content>
public sealed partial class ShearBoltJoint
{
    /// <summary>Wall of the yoke or hub at each plane; null when not stated.</summary>
    public Length? YokeThickness => YokeThicknessM > 0 ? Length.FromMeters(YokeThicknessM) : null;

    /// <summary>Yield strength of the yoke; null when not stated.</summary>
    public StressBand? YokeYield { get; private set; }

    /// <summary>Tensile strength of the yoke; null when not stated.</summary>
    public StressBand? YokeTensile { get; private set; }

    /// <summary>Distance from the centre of the hole to the nearest edge of the yoke; null when not stated.</summary>
    public Length? YokeEdge => YokeEdgeM > 0 ? Length.FromMeters(YokeEdgeM) : null;

    /// <summary>
    /// How far the bolt stands out beyond its nut: its length less the hub it passes through and a nut as high as the bolt is thick; null
    /// when
    /// length or hub are not told, or no bolt passes through a hub.
    /// </summary>
    public Length? Protrusion => ProtrusionM is { } m ? Length.FromMeters(Math.Max(0, m)) : null;

    internal double? ProtrusionM => Layout == JointLayout.ThroughShaft && BoltLengthM > 0 && HubDiameterM > 0
        ? BoltLengthM - HubDiameterM - Bolt.DiameterM
        : null;

    internal double BoltLengthM { get; private set; }

    internal double HubDiameterM { get; private set; }

    internal double YokeThicknessM { get; private set; }

    internal double YokeEdgeM { get; private set; }

    /// <summary>The same joint with the wall of its yoke or hub, to see whether the holes oval before the bolt shears.</summary>
    /// <param name="thickness">Wall at each plane.</param>
    /// <param name="yield">Yield strength of the wall.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not finite or not above 0.</exception>
    public ShearBoltJoint WithYoke(Length thickness, StressBand yield)
    {
        Guard.NotNull(yield, nameof(yield));
        return WithWall(thickness, j => j.YokeYield = yield);
    }

    /// <summary>
    /// The same joint with the wall of its yoke or hub and its tensile strength, to see whether the bolt tears out of it.
    /// </summary>
    /// <param name="thickness">Wall at each plane.</param>
    /// <param name="tensile">Tensile strength of the wall.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not finite or not above 0.</exception>
    public ShearBoltJoint WithYokeTensile(Length thickness, StressBand tensile)
    {
        Guard.NotNull(tensile, nameof(tensile));
        return WithWall(thickness, j => j.YokeTensile = tensile);
    }

    /// <summary>The same joint with the distance from the centre of the hole to the nearest edge of the yoke.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or not above half the bolt's diameter.</exception>
    public ShearBoltJoint WithYokeEdge(Length distance)
    {
        double edgeM = Guard.Positive(Si.Meters(distance), "Distance to the edge", "m", nameof(distance));
        return edgeM > Bolt.DiameterM / 2
            ? Changed(edgeM, static (j, value) => j.YokeEdgeM = value)
            : throw Guard.OutOfRange(
                "Distance to the edge", FormattableString.Invariant($"above half the bolt's diameter {Bolt.DiameterM:G6} m"), edgeM, "m",
                    nameof(distance));
    }

    /// <summary>The same joint with the length of its bolt under the head and the outer diameter of the hub it passes through.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A length is not finite or not above 0, or the hub is not thicker than its shaft.
    /// </exception>
    public ShearBoltJoint WithBoltLength(Length underHead, Length hubDiameter)
    {
        double lengthM = Guard.Positive(Si.Meters(underHead), "Bolt length", "m", nameof(underHead));
        double hubM = Guard.Positive(Si.Meters(hubDiameter), "Hub diameter", "m", nameof(hubDiameter));
        return Layout != JointLayout.ThroughShaft || hubM > 2 * RadiusM
            ? Changed(j =>
            {
                j.BoltLengthM = lengthM;
                j.HubDiameterM = hubM;
            })
            : throw Guard.OutOfRange(
                "Hub diameter", FormattableString.Invariant($"above the shaft diameter {2 * RadiusM:G6} m"), hubM, "m",
                    nameof(hubDiameter));
    }

    private ShearBoltJoint WithWall(Length thickness, Action<ShearBoltJoint> change)
    {
        double thicknessM = Guard.Positive(Si.Meters(thickness), "Yoke thickness", "m", nameof(thickness));
        return Changed(j =>
        {
            j.YokeThicknessM = thicknessM;
            change(j);
        });
    }
}
