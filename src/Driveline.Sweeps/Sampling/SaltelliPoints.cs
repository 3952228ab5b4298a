namespace Driveline.Sweeps.Sampling;

/// <summary>The rows of a variance-based study: of each base point A, B, and A with one coordinate of B after the other.</summary>
/// <remarks>
/// A. Saltelli et al., Comput. Phys. Commun. 181 (2010) 259-270: A and B are the two halves of points of twice as many dimensions;
/// n (k + 2) rows, those of one base point side by side.
/// </remarks>
internal sealed class SaltelliPoints : UnitPoints
{
    private readonly UnitPoints doubled;

    public SaltelliPoints(UnitPoints doubled)
        : base(doubled.Dimensions / 2, doubled.Count * ((doubled.Dimensions / 2) + 2)) => this.doubled = doubled;

    /// <summary>Rows of one base point.</summary>
    public int RowsPerPoint => Dimensions + 2;

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        long from = first / RowsPerPoint;
        int points = (int)(((first + count - 1) / RowsPerPoint) - from + 1);
        var both = new double[doubled.Dimensions][];
        for (int d = 0; d < both.Length; d++)
        {
            both[d] = new double[points];
        }

        doubled.Fill(from, points, both);
        for (int d = 0; d < Dimensions; d++)
        {
            double[] a = both[d];
            double[] b = both[d + Dimensions];
            int point = 0;
            int place = (int)(first % RowsPerPoint);
            for (int k = 0; k < count; k++)
            {
                columns[d][at + k] = place == 1 || place == d + 2 ? b[point] : a[point];
                if (++place == RowsPerPoint)
                {
                    place = 0;
                    point++;
                }
            }
        }
    }
}
