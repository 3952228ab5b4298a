using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>The table of shear-to-tensile ratios by kind of bolt and shear plane.</summary>
/// <remarks>
/// Low: the code's minimum with its safety factor taken off. Plain plane: 0.60 of all classes (EN 1993-1-8). Threaded plane:
/// 0.60 for 4.6, 5.6 and 8.8, applied to the root area, which is 8 to 17 % below the stress area the code uses; for 4.8, 5.8, 6.8,
/// 10.9 and the classes above the code's 0.50 on the stress area. The code multiplies nominal strengths (400, 500, 1000 MPa), ISO 898-1
/// promises up to 5 % more (420, 520, 1040 MPa), so the ratio is cut by nominal over promised: the low end is never above the code's
/// reading.
/// Expected: the class series 0.70, 0.65, 0.62, 0.60, which falls with strength; soft headed bolts 0.73, between that series and the tests
/// of annealed mild steel and rivets (0.75 to 0.80); pins turned from bar 0.80.
/// High: 0.85 for steel that is not hardened, the top of the range for structural steel in direct shear;
/// 0.72 to 0.70 for quenched steel: the expected ratio and two standard deviations of about 0.03.
/// A threaded plane takes more than the thread's stress area would: see <see cref="ThreadedArea"/>.
/// </remarks>
internal static class ShearRatios
{
    private const double SoftHighest = 0.85;

    private static readonly Basis Code06 = Basis.Published("EN 1993-1-8", "2005", "Table 3.4, α_v = 0.6")
        .ReadVia("public copies of the table");

    private static readonly Basis Code05 = Basis.Published("EN 1993-1-8", "2005", "Table 3.4, α_v = 0.5 of the nominal strength")
        .ReadVia("public copies of the table");

    private static readonly Basis Series = Basis.CommonPractice(
        "class series 0.70, 0.65, 0.62, 0.60 of VDI 2230 Part 1 after Thomala (1995), in a public calculation data file");

    private static readonly Basis Between = Basis.CommonPractice("between the neighbouring ratios of the class series of VDI 2230 Part 1");

    private static readonly Basis SoftHeaded = Basis.CommonPractice(
        "between the class series (0.70) and tests of annealed mild steel and rivets (0.75 to 0.80, Lueger 1904)");

    private static readonly Basis Bar = Basis.CommonPractice(
        "0.80 of tensile for steel pins, a metalworking table book quoted on web pages");

    private static readonly Basis SoftHigh = Basis.CommonPractice(
        "0.80 to 0.85 for structural steel, VDI 2230 Part 1 (2015) Table 6, in a public calculation data file");

    private static readonly Basis QuenchedHigh = Basis.FromMemory(
        "expected ratio and two standard deviations (about 0.03) of single-bolt tests");

    private static readonly Basis Anchors = Basis.CommonPractice("0.6 of tensile for anchor rods, stainless ones included");

    private static readonly Basis Austenitic = Basis.CommonPractice(
        "austenitic steel: 0.65 to 0.75 strain hardened, 0.80 annealed, VDI 2230 Part 1 (2015) Table 6, in a public calculation data file");

    private static readonly Basis LowAlloys = Basis.FromMemory("lowest typical ratio of the alloys held (0.582) less 5 %");

    private static readonly Basis CopperSpread = Basis.CommonPractice("copper alloys: sources from 0.5 to 0.9 conflict");

    private static readonly Basis LowestHeld = Basis.FromMemory("lowest ratio of every steel held");

    // By number: a dictionary over an enumeration is compiled anew in every process that starts.
    private static readonly Dictionary<int, Row> Rows = new()
    {
        [(int)ShearClass.Soft46] = new(0.60, 0.60, 0.73, SoftHighest, 0.60, Code06, Code06, SoftHeaded, SoftHigh),
        [(int)ShearClass.Soft56] = new(0.60, 0.60, 0.70, SoftHighest, 0.60, Code06, Code06, Series, SoftHigh),
        [(int)ShearClass.ColdHeaded] = new(0.60, 0.5 * 400 / 420, 0.70, SoftHighest, 0.60, Code06, Code05, Series, SoftHigh),
        [(int)ShearClass.BarSteel] = new(0.60, 0.5 * 400 / 420, 0.80, SoftHighest, 0.60, Code06, Code05, Bar, SoftHigh),
        [(int)ShearClass.ColdWorked48] = new(0.60, 0.5 * 400 / 420, 0.70, SoftHighest, 0.75, Code06, Code05, Series, SoftHigh),
        [(int)ShearClass.ColdWorked58] = new(0.60, 0.5 * 500 / 520, 0.70, SoftHighest, 0.75, Code06, Code05, Series, SoftHigh),
        [(int)ShearClass.ColdWorked68] = new(0.60, 0.50, 0.70, SoftHighest, 0.75, Code06, Code05, Series, SoftHigh),
        [(int)ShearClass.Quenched88] = new(0.60, 0.60, 0.65, 0.72, 0.75, Code06, Code06, Series, QuenchedHigh),
        [(int)ShearClass.Quenched98] = new(0.60, 0.50, 0.64, 0.72, 0.80, Code06, Code05, Between, QuenchedHigh),
        [(int)ShearClass.Quenched109] = new(0.60, 0.5 * 1000 / 1040, 0.62, 0.70, 0.85, Code06, Code05, Series, QuenchedHigh),
        [(int)ShearClass.Quenched129] = new(
            0.54, 0.5 * 1200 / 1220, 0.60, 0.70, 0.85,
            Basis.FromMemory("expected ratio less two standard deviations: the code does not cover 12.9"),
            Basis.FromMemory("the code's 0.5 for 10.9, carried to 12.9 which it does not cover"),
            Series,
            QuenchedHigh),
        [(int)ShearClass.Stainless] = new(0.60, 0.60, 0.70, 0.82, 0.40, Anchors, Anchors, Austenitic, Austenitic),
        [(int)ShearClass.Aluminium] = new(
            0.55, 0.55, 0.65, 0.73, 0.50,
            LowAlloys,
            LowAlloys,
            Basis.CommonPractice("textbook estimate for aluminium alloys"),
            Basis.FromMemory("highest typical ratio of the alloys held (0.667) and 10 %")),
        [(int)ShearClass.Copper] = new(
            0.50, 0.50, 0.65, 0.90, 0.25,
            CopperSpread,
            CopperSpread,
            Basis.CommonPractice("copper alloys: middle figure one page prefers"),
            CopperSpread),
        [(int)ShearClass.NotKnown] = new(
            0.50, 0.5 * 400 / 420, 0.68, SoftHighest, 0.40,
            LowestHeld,
            LowestHeld,
            Basis.FromMemory("middle of the expected ratios of the steels held"),
            Basis.FromMemory("highest ratio of every steel held")),
    };

    /// <summary>The ratio for a plain plane (shank, pin, neck, step, taper) or a threaded one.</summary>
    /// <param name="shearClass">Kind of bolt; not known gives the widest ratio of any steel.</param>
    /// <param name="plane">Where the plane lies; it must be known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The plane is not known: take both and span them.</exception>
    /// <example>8.8 through the shank: 0.60, 0.65, 0.72 on the plain section.</example>
    public static ShearRatio Of(ShearClass shearClass, PlaneThrough plane)
    {
        Row row = Rows.TryGetValue((int)shearClass, out Row? held) ? held : Rows[(int)ShearClass.NotKnown];
        return plane switch
        {
            PlaneThrough.Thread => row.Threaded,
            PlaneThrough.Shank or PlaneThrough.Neck or PlaneThrough.Step or PlaneThrough.Taper => row.Plain,
            _ => throw new ArgumentOutOfRangeException(
                nameof(plane), "Shear plane must be one of Shank, Thread, Neck, Step, Taper; got " + plane + "."),
        };
    }

    /// <summary>Lowest ratio of yield to tensile strength in the class, used where only the tensile strength is known.</summary>
    /// <remarks>
    /// Rounded down from the grade tables: 0.6 for 4.6, 5.6 and SAE 2, 0.75 for grade 5, 0.85 for grade 8; below 0.42 for stainless 50.
    /// </remarks>
    internal static double YieldToTensile(ShearClass shearClass) =>
        (Rows.TryGetValue((int)shearClass, out Row? held) ? held : Rows[(int)ShearClass.NotKnown]).YieldRatio;

    private sealed class Row
    {
        public Row(
            double plainLow, double threadLow, double expected, double high, double yieldRatio, Basis plainBasis, Basis threadBasis,
                Basis expectedBasis, Basis highBasis)
        {
            YieldRatio = yieldRatio;
            Plain = new ShearRatio(
                Band(plainLow, expected, high, plainBasis, expectedBasis, highBasis), ShearArea.Plain, ShearArea.Plain);
            Threaded = new ShearRatio(
                Band(threadLow, expected, high, threadBasis, expectedBasis, highBasis),
                ShearArea.MeanThreaded,
                ShearArea.GreatestThreaded);
        }

        public ShearRatio Plain { get; }

        public ShearRatio Threaded { get; }

        public double YieldRatio { get; }

        private static RatioBand Band(double low, double expected, double high, Basis lowBasis, Basis expectedBasis, Basis highBasis) =>
            RatioBand.Between(
            low, expected, high, new BandBasis(lowBasis, expectedBasis, highBasis, BandEnd.Interval95, BandEnd.Interval95));
    }
}
