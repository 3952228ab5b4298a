namespace Driveline.Sweeps.Pictures;

/// <summary>An axis over a range of any sign, with round ticks.</summary>
internal sealed class AxisScale
{
    private readonly double start;
    private readonly double perValue;

    public AxisScale(double low, double high, double start, double end, int ticks)
    {
        double span = high > low ? high - low : Math.Max(Math.Abs(high), 1) * 0.1;
        double rough = span / ticks;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        Step = power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 2.5 ? 2.5 : lead <= 5 ? 5 : 10);
        Low = Step * Math.Floor(low / Step);
        High = Step * Math.Ceiling(high / Step);
        High = High > Low ? High : Low + Step;
        this.start = start;
        perValue = (end - start) / (High - Low);
    }

    public double Low { get; }

    public double High { get; }

    public double Step { get; }

    public IEnumerable<double> Ticks =>
        Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(k => Math.Round((Low / Step) + k) * Step);

    public double At(double value) => start + ((Math.Clamp(value, Low, High) - Low) * perValue);
}
