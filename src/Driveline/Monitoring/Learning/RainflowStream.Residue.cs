namespace Driveline.Monitoring;

/// <content>The residue of a snapshot in few bits.</content>
internal sealed partial class RainflowStream
{
    // All ranges but the newest grow strictly and then shrink, so that they are two sets of ranges from 1 to 512 classes.
    private void ExchangeResidue(ref SnapshotCursor cursor)
    {
        if (count == 0)
        {
            return;
        }

        cursor.Index(ref open[0], -Half, Half);
        if (count == 1)
        {
            return;
        }

        int[] ranges = new int[count - 1];
        bool up = count > 1 && open[1] > open[0];
        if (!cursor.Reads)
        {
            for (int k = 0; k < ranges.Length; k++)
            {
                ranges[k] = Math.Abs(open[k + 1] - open[k]);
            }
        }

        int settled = ranges.Length - 1;
        int growing = Growing(ranges, settled);
        cursor.Flag(ref up);
        cursor.Index(ref growing, 0, settled);
        cursor.Index(ref ranges[settled], 1, Ranges);
        cursor.Strict(ranges.AsSpan(0, growing), Ranges, rises: true);
        cursor.Strict(ranges.AsSpan(growing, settled - growing), Ranges, rises: false);
        if (cursor.Reads && !cursor.Failed)
        {
            Climb(ranges, up);
        }
    }

    private static int Growing(int[] ranges, int settled)
    {
        int growing = settled > 0 ? 1 : 0;
        while (growing > 0 && growing < settled && ranges[growing] > ranges[growing - 1])
        {
            growing++;
        }

        return growing;
    }

    // A point beyond the classes is left where IsPossible finds that it cannot be.
    private void Climb(int[] ranges, bool up)
    {
        for (int k = 0; k < ranges.Length; k++)
        {
            open[k + 1] = open[k] + (up ? ranges[k] : -ranges[k]);
            up = !up;
        }
    }
}
