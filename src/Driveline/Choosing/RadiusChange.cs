using Driveline.Findings;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>The radius at which a bolt of the stock would both guard and stay quiet.</summary>
/// <remarks>
/// The low end of the break torque grows with the radius, T = m·A·τ·r, so r ≥ r0·(margin asked for)/(work margin at r0); the high end
/// carries friction besides, so the greatest r is found by halving. A bolt through a shaft moves beside it: one bolt, cut once, no gap.
/// </remarks>
internal static class RadiusChange
{
    private const double LeastM = 0.01;
    private const double MostM = 0.5;

    public static Finding? Of(BoltSearch search)
    {
        StockItem? best = null;
        double low = 0;
        double high = 0;
        foreach (StockItem item in search.Terms.Stock.Items)
        {
            if (TryRange(search, item, out double least, out double most) && (best is null || most / least > high / low))
            {
                best = item;
                low = least;
                high = most;
            }
        }

        return best is null ? null : Finding.Of(ChoosingFindings.ChangeRadius, Severity.Note)
            .With("bolt", best.Name)
            .With("now", QuantityKind.Length, search.Joint.RadiusM)
            .With("low", QuantityKind.Length, low)
            .With("high", QuantityKind.Length, high);
    }

    private static bool TryRange(BoltSearch search, StockItem item, out double least, out double most)
    {
        double r0 = search.Joint.RadiusM;
        least = most = 0;
        if (At(search, item, r0) is not { WorkMargin: > 0 } there)
        {
            return false;
        }

        // Beside a shaft a bolt clears it by half its own diameter.
        double clearM = search.Joint.Layout == JointLayout.ThroughShaft ? r0 + (item.Bolt.DiameterM / 2) : LeastM;
        least = Math.Max(clearM, r0 * search.Terms.Policy.MinimumWorkMargin / there.WorkMargin.Value * (1 + 1e-9));
        if (least >= MostM || !At(search, item, least).LeavesRoom)
        {
            return false;
        }

        double inside = least;
        double outside = MostM;
        while (outside - inside > 1e-6)
        {
            double middle = (inside + outside) / 2;
            bool guards = At(search, item, middle).GuardMargin > search.Terms.Policy.MinimumGuardMargin;
            inside = guards ? middle : inside;
            outside = guards ? outside : middle;
        }

        most = inside;
        return true;
    }

    private static RankedBolt At(BoltSearch search, StockItem item, double radiusM) =>
        search.In(search.Question.Chain, search.Place, JointAt(search.Joint, radiusM), item, HoleUse.Own(item));

    private static ShearBoltJoint JointAt(ShearBoltJoint joint, double radiusM)
    {
        Length radius = Length.FromMeters(radiusM);
        ShearBoltJoint moved = joint.Layout == JointLayout.BoltCircle
            ? ShearBoltJoint.BoltCircle(joint.Bolt, radius * 2, joint.Bolts)
            : ShearBoltJoint.Tangential(joint.Bolt, radius);
        moved = joint.Layout == JointLayout.ThroughShaft ? moved.WithPlanes(1)
            : joint.ArePlanesStated ? moved.WithPlanes(joint.PlanesPerBolt)
            : moved;
        moved = moved.WithHubOf(joint).WithHoleFit(joint.HoleFit);
        moved = joint.Layout == JointLayout.ThroughShaft ? moved.WithStandOff(Length.Zero)
            : joint.IsStandOffStated ? moved.WithStandOff(Length.FromMeters(joint.StandOffM))
            : moved;
        return joint.FlangeFriction is { } flange ? moved.WithFlangeFriction(flange) : moved;
    }
}
