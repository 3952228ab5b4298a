namespace Driveline.Reports.Simulations;

/// <summary>An axis from a low to a high value, with round ticks.</summary>
internal sealed class TraceScale
{
    private readonly double start;
    private readonly double perValue;

    public TraceScale(double low, double high, double start, double end, int ticks)
        : this(low, high, start, end, ticks, isFromZero: true)
    {
    }

    private TraceScale(double low, double high, double start, double end, int ticks, bool isFromZero)
    {
        double rough = Math.Max(high - low, 1e-9) / ticks;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        Step = power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 2.5 ? 2.5 : lead <= 5 ? 5 : 10);
        Low = !isFromZero ? low : low < 0 ? Step * Math.Floor(low / Step) : 0;
        FirstTick = isFromZero ? Low : Step * Math.Ceiling(low / Step * (1 - 1e-12));
        High = high;
        this.start = start;
        perValue = (end - start) / (High - Low);
    }

    /// <summary>An axis from a low to a high value, wherever they lie.</summary>
    public static TraceScale Between(double low, double high, double start, double end, int ticks) =>
        new(low, high, start, end, ticks, isFromZero: false);

    public double Low { get; }

    public double FirstTick { get; }

    public double High { get; }

    public double Step { get; }

    public IEnumerable<double> Ticks => Enumerable.Range(0, 60)
        .Select(k => FirstTick + (k * Step)).TakeWhile(v => v <= High + (1e-4 * Step));

    public double At(double value) => start + ((Math.Max(Low, Math.Min(High, value)) - Low) * perValue);
}
