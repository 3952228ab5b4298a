using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <content>The joint at another radius.</content>
public sealed partial class ShearBoltJoint
{
    /// <summary>The same joint at another radius of its planes, half the shaft's diameter for a bolt through a shaft.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Not finite or not above 0; of a bolt through a shaft, a shaft no thicker than its bolt or hole, or no thinner than its hub.
    /// </exception>
    internal ShearBoltJoint AtRadius(double radiusM)
    {
        Guard.Positive(radiusM, "Radius of the shear plane", "m", nameof(radiusM));
        double thinnestM = Math.Max(holeM, Bolt.DiameterM);
        if (Layout == JointLayout.ThroughShaft && !(2 * radiusM > thinnestM && (HubDiameterM == 0 || 2 * radiusM < HubDiameterM)))
        {
            throw Guard.OutOfRange(
                "Shaft diameter", FormattableString.Invariant($"above its bolt and hole, {thinnestM:G6} m, and below its hub"),
                    2 * radiusM, "m", nameof(radiusM));
        }

        var moved = (ShearBoltJoint)MemberwiseClone();
        moved.RadiusM = radiusM;
        return moved;
    }
}
