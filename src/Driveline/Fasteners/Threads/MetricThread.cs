using System.Globalization;
using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>An ISO metric thread, coarse or fine, M3 to M39.</summary>
internal sealed class MetricThread : ScrewThread
{
    private readonly double publishedMm2;

    internal MetricThread(double diameterMm, double pitchMm, ThreadSeries series, double publishedMm2, bool isSeriesAssumed)
        : base(Name(diameterMm, pitchMm, series), series, diameterMm / 1000, pitchMm / 1000, isSeriesAssumed)
    {
        DiameterMm = diameterMm;
        PitchMm = pitchMm;
        this.publishedMm2 = publishedMm2;
    }

    /// <summary>Every thread held.</summary>
    public static IReadOnlyList<MetricThread> All => MetricThreads.All;

    /// <inheritdoc/>
    internal override ThreadSystem System => ThreadSystem.Metric;

    /// <inheritdoc/>
    /// <remarks>Fine-pitch areas are remembered, not seen; they are kept beside the formula, which is used.</remarks>
    public override Sourced? PublishedStressArea => new(publishedMm2, "mm²", MetricThreads.PublishedBasis(Series));

    /// <inheritdoc/>
    public override Basis AreaBasis => Series == ThreadSeries.MetricCoarse ? MetricThreads.PublishedBasis(Series)
        : MetricThreads.FormulaBasis;

    /// <inheritdoc/>
    public override Basis RootAreaBasis => MetricThreads.FormulaBasis;

    internal double DiameterMm { get; }

    internal double PitchMm { get; }

    internal override double StressAreaM2 => Series == ThreadSeries.MetricCoarse
        ? publishedMm2 / 1e6
        : LoadRounding.ToThreeFigures(FormulaStressAreaM2 * 1e6) / 1e6;

    internal override double FormulaStressAreaM2
    {
        get
        {
            double m = MajorDiameterM - (0.938194 * PitchM);
            return Math.PI / 4 * m * m;
        }
    }

    internal override double MinorDiameterM => MajorDiameterM - (1.226869 * PitchM);

    /// <summary>The metric thread in a text, see <see cref="ScrewThread.Parse"/>.</summary>
    /// <exception cref="ArgumentException">The text names no metric thread held here.</exception>
    public static new MetricThread Parse(string text) => ScrewThread.Parse(text) as MetricThread
        ?? throw new ArgumentException("A metric thread is needed here, such as M10 or M10x1.25; got \"" + text + "\".", nameof(text));

    internal MetricThread Assumed() => new(DiameterMm, PitchMm, Series, publishedMm2, true);

    private static string Name(double diameterMm, double pitchMm, ThreadSeries series)
    {
        string size = "M" + diameterMm.ToString("0.##", CultureInfo.InvariantCulture);
        return series == ThreadSeries.MetricCoarse ? size : size + "x" + pitchMm.ToString("0.##", CultureInfo.InvariantCulture);
    }
}
