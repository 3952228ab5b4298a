namespace Driveline.Choosing;

/// <summary>Best first: a guard margin of at least 1 before any below, then the worse of the two margins, then the other, then the weaker bolt. Of bolts that do not guard, equal in the worse margin, the weaker comes first.</summary>
internal sealed class BoltOrder : IComparer<RankedBolt>
{
    public static readonly BoltOrder BestFirst = new();

    public int Compare(RankedBolt? x, RankedBolt? y)
    {
        if (x is null || y is null)
        {
            return (x is null ? 1 : 0) - (y is null ? 1 : 0);
        }

        int order = IsGuarding(y).CompareTo(IsGuarding(x));
        order = order != 0 ? order : (y.WorseMargin ?? -1).CompareTo(x.WorseMargin ?? -1);
        order = order != 0 || !IsGuarding(x) ? order : Better(y).CompareTo(Better(x));
        order = order != 0 ? order : x.Device.BreakTorque.IfHubFree.SiBand.High.CompareTo(y.Device.BreakTorque.IfHubFree.SiBand.High);
        order = order != 0 ? order : (x.Item.Price ?? double.MaxValue).CompareTo(y.Item.Price ?? double.MaxValue);
        return order != 0 ? order : string.CompareOrdinal(x.Item.Name, y.Item.Name);
    }

    private static bool IsGuarding(RankedBolt bolt) => bolt.GuardMargin >= 1;

    private static double Better(RankedBolt bolt) => Math.Max(bolt.GuardMargin ?? -1, bolt.WorkMargin ?? -1);
}
