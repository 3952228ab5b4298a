using Driveline.Protection;

namespace Driveline.Choosing;

/// <summary>Best first, and nothing stronger than the manual's bolt above what is not.</summary>
/// <remarks>
/// Bolts stronger than specified last; then the answers, "acts in time" before "stays quiet", a No after every other; a guard margin of
/// at least 1 before any below; then the worse of the two margins, then the other, then the weaker bolt. Of bolts that do not guard,
/// equal in the worse margin, the weaker comes first.
/// </remarks>
internal sealed class BoltOrder : IComparer<RankedBolt>
{
    public static readonly BoltOrder BestFirst = new();

    public int Compare(RankedBolt? x, RankedBolt? y)
    {
        if (x is null || y is null)
        {
            return (x is null ? 1 : 0) - (y is null ? 1 : 0);
        }

        int order = (x.IsStrongerThanSpecified == true).CompareTo(y.IsStrongerThanSpecified == true);
        order = order != 0 ? order : (x.Verdict.Guards == Answer.No).CompareTo(y.Verdict.Guards == Answer.No);
        order = order != 0 ? order : IsGuarding(y).CompareTo(IsGuarding(x));
        order = order != 0 ? order : (x.Verdict.Quiet == Answer.No).CompareTo(y.Verdict.Quiet == Answer.No);
        order = order != 0 ? order : (y.WorseMargin ?? -1).CompareTo(x.WorseMargin ?? -1);
        order = order != 0 || !IsGuarding(x) ? order : Better(y).CompareTo(Better(x));
        order = order != 0 ? order : x.Device.BreakTorque.IfHubFree.SiBand.High.CompareTo(y.Device.BreakTorque.IfHubFree.SiBand.High);
        order = order != 0 ? order : (x.Item.Price ?? double.MaxValue).CompareTo(y.Item.Price ?? double.MaxValue);
        return order != 0 ? order : string.CompareOrdinal(x.Item.Name, y.Item.Name);
    }

    private static bool IsGuarding(RankedBolt bolt) => bolt.GuardMargin >= 1;

    private static double Better(RankedBolt bolt) => Math.Max(bolt.GuardMargin ?? -1, bolt.WorkMargin ?? -1);
}
