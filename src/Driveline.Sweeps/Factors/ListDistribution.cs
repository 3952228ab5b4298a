namespace Driveline.Sweeps.Factors;

/// <summary>One of several values, each as likely; of texts the value is the place in the list, from 0.</summary>
internal sealed class ListDistribution : Distribution
{
    private readonly double[] values;

    public ListDistribution(IReadOnlyList<double> values)
    {
        this.values = [.. values];
        Mark = "values " + string.Join(' ', this.values.Select(v => v.ToString("R", System.Globalization.CultureInfo.InvariantCulture)));
    }

    public override string Kind => "values";

    public override double Low => values.Min();

    public override double High => values.Max();

    public override int Levels => values.Length;

    public override string Mark { get; }

    public double ValueAt(int place) => values[place];

    public int PlaceOf(double value) => Array.IndexOf(values, value);

    public override double Quantile(double share) => values[Math.Min((int)(share * values.Length), values.Length - 1)];
}
