namespace Driveline.Reports.Pictures;

/// <summary>A line through many points, without those that lie within a tenth of a pixel of the line between their neighbours.</summary>
/// <remarks>
/// From the last point kept a wedge of directions still open narrows with each point; a point outside it ends the stretch. No extreme value
/// is lost by more than the tenth.
/// </remarks>
internal sealed class SlimPath(int capacity)
{
    private const double Allowed = 0.1;

    private readonly List<(double X, double Y)> points = new(Math.Min(capacity, 512));
    private (double X, double Y) last;
    private double low = double.NegativeInfinity;
    private double high = double.PositiveInfinity;
    private bool isOpen;

    /// <summary>Adds a point to the right of the one before.</summary>
    public void Add(double x, double y)
    {
        if (points.Count == 0)
        {
            points.Add((x, y));
            return;
        }

        (double fromX, double fromY) = points[points.Count - 1];
        double run = x - fromX;
        if (isOpen && !(run > 0 && (y - fromY) / run >= low && (y - fromY) / run <= high))
        {
            points.Add(last);
            (fromX, fromY) = last;
            run = x - fromX;
            low = double.NegativeInfinity;
            high = double.PositiveInfinity;
        }

        if (run > 0)
        {
            low = Math.Max(low, (y - Allowed - fromY) / run);
            high = Math.Min(high, (y + Allowed - fromY) / run);
        }

        last = (x, y);
        isOpen = true;
    }

    /// <summary>The points kept, with the last one.</summary>
    public IReadOnlyList<(double X, double Y)> Done()
    {
        if (isOpen)
        {
            points.Add(last);
            isOpen = false;
        }

        return points;
    }
}
