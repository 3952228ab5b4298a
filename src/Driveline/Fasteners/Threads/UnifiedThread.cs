using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>A Unified inch thread, ASME B1.1, UNC or UNF, No. 10 to 1 1/2 in.</summary>
internal sealed class UnifiedThread : ScrewThread
{
    private readonly double stressAreaIn2;

    internal UnifiedThread(
        string size, double diameterInch, int threadsPerInch, ThreadSeries series, double stressAreaIn2, bool isSeriesAssumed)
        : base(Name(size, threadsPerInch, series), series, diameterInch * Si.Inch, Si.Inch / threadsPerInch, isSeriesAssumed)
    {
        Size = size;
        DiameterInch = diameterInch;
        ThreadsPerInch = threadsPerInch;
        this.stressAreaIn2 = stressAreaIn2;
    }

    /// <summary>Every thread held.</summary>
    public static IReadOnlyList<UnifiedThread> All => UnifiedThreads.All;

    /// <summary>Nominal size as printed, e.g. "1/2", "1-1/4", "No. 10".</summary>
    public string Size { get; }

    /// <summary>Threads per inch (n).</summary>
    public int ThreadsPerInch { get; }

    /// <inheritdoc/>
    internal override ThreadSystem System => ThreadSystem.Inch;

    /// <inheritdoc/>
    public override Sourced? PublishedStressArea => new(stressAreaIn2, "in²", AreaBasis);

    /// <inheritdoc/>
    public override Basis AreaBasis => UnifiedThreads.AreaBasis(Size);

    /// <inheritdoc/>
    public override Basis RootAreaBasis => UnifiedThreads.RootBasis(Size);

    internal double DiameterInch { get; }

    internal override double StressAreaM2 => stressAreaIn2 * Si.Inch * Si.Inch;

    internal override double FormulaStressAreaM2
    {
        get
        {
            double m = MajorDiameterM - (0.9743 * PitchM);
            return Math.PI / 4 * m * m;
        }
    }

    internal override double MinorDiameterM => MajorDiameterM - (1.299038 * PitchM);

    /// <summary>The inch thread in a text, see <see cref="ScrewThread.Parse"/>.</summary>
    /// <exception cref="ArgumentException">The text names no inch thread held here.</exception>
    public static new UnifiedThread Parse(string text) => ScrewThread.Parse(text) as UnifiedThread
        ?? throw new ArgumentException("An inch thread is needed here, such as 1/2-13 UNC; got \"" + text + "\".", nameof(text));

    internal UnifiedThread Assumed() => new(Size, DiameterInch, ThreadsPerInch, Series, stressAreaIn2, true);

    private static string Name(string size, int threadsPerInch, ThreadSeries series) =>
        FormattableString.Invariant($"{size}-{threadsPerInch} ") + (series == ThreadSeries.Unf ? "UNF" : "UNC");
}
