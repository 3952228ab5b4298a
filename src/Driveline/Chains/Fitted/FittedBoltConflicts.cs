using Driveline.Findings;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>What must hold between the facts told of a joint and of its bolt.</summary>
internal static class FittedBoltConflicts
{
    // A caliper may read 2 % too little.
    private const double CaliperShare = 0.98;

    private const double RadiusShare = 0.01;

    public static IEnumerable<FactConflict> Of(FittedBolt fitted)
    {
        double? bolt = fitted.Stated.DiameterM;
        string body = fitted.Stated.SpringPin is not null ? BoltFact.SpringPin
            : fitted.Stated.PinDiameter is not null ? BoltFact.PinDiameter
            : BoltFact.Thread;
        double? hole = M(fitted.HoleDiameter);
        if (hole < bolt * CaliperShare)
        {
            yield return new FactConflict(
                BoltFact.HoleDiameter, body,
                "The hole " + FactConflict.Shown(hole) + " must not be narrower than the bolt in it, " + FactConflict.Shown(bolt) + ".");
        }

        double? shaft = fitted.Layout == JointLayout.ThroughShaft ? M(fitted.ShaftDiameter) : null;
        if (shaft <= hole && !(shaft <= bolt))
        {
            yield return new FactConflict(
                BoltFact.HoleDiameter, BoltFact.ShaftDiameter,
                "The hole " + FactConflict.Shown(hole) + " must be thinner than the shaft it crosses, " + FactConflict.Shown(shaft) + ".");
        }

        if (shaft <= bolt)
        {
            yield return new FactConflict(
                BoltFact.ShaftDiameter, body,
                "The shaft " + FactConflict.Shown(shaft) + " must be thicker than the bolt through it, " + FactConflict.Shown(bolt) + ".");
        }

        if (M(fitted.YokeEdge) <= bolt / 2)
        {
            yield return new FactConflict(
                BoltFact.YokeEdge, body,
                "The distance from the middle of the hole to the edge must be above half the bolt's diameter "
                    + FactConflict.Shown(bolt) + ".");
        }

        if (M(fitted.HubDiameter) <= shaft)
        {
            yield return new FactConflict(
                BoltFact.HubDiameter, BoltFact.ShaftDiameter, "The hub must be thicker than the shaft " + FactConflict.Shown(shaft)
                    + " in it.");
        }

        PlaneThrough plane = ShearPlanePlace.Of(fitted);
        if (fitted.Stated.PlaneThrough is PlaneThrough.Shank or PlaneThrough.Thread && plane != PlaneThrough.NotKnown
            && plane != fitted.Stated.PlaneThrough)
        {
            yield return new FactConflict(
                BoltFact.PlaneThrough, BoltFact.ThreadLength,
                "By the lengths of bolt, thread and what it holds together the shear plane cuts the "
                    + (plane == PlaneThrough.Shank ? "shank" : "thread") + "; state one of the two.");
        }

        double? radius = M(fitted.Radius);
        double? circle = M(fitted.BoltCircleDiameter);
        if (Math.Abs((circle / 2 / radius ?? 1) - 1) > RadiusShare)
        {
            yield return new FactConflict(
                BoltFact.BoltCircleDiameter, BoltFact.Radius,
                "The bolt circle " + FactConflict.Shown(circle) + " is not twice the radius " + FactConflict.Shown(radius)
                    + "; state one of the two.");
        }
    }

    private static double? M(Length? length) => length is { } told ? Si.Meters(told) : null;
}
