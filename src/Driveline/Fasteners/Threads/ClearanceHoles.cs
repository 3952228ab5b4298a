using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Diameters of the holes a bolt of a size goes through, as the standards grade them: normal and loose.</summary>
internal static class ClearanceHoles
{
    private const double Quarter = 0.00635;
    private const double OneInch = 0.0254;

    // The loose holes of inch bolts from 1/4 to 1 1/2 in.
    private static readonly Basis InchLoose = Basis.Published("ASME B18.2.8", "1999, reaffirmed 2017", "Table 1a, loose fit, least hole")
        .ReadVia("Machinery's Handbook, 31st edition, p. 1741");

    private static readonly Basis Iso273 = Basis.Published("ISO 273", "1979", "medium and coarse series")
        .ReadVia("the hole tables of an open CAD system");

    private static readonly Basis InchTo1 = Basis.Published("ASME B18.2.8", "1999", "least hole, normal fit to 1 in, loose fit of No. 10")
        .ReadVia("the chart of an open machinists' project");

    private static readonly Basis InchAbove1 = Basis.FromMemory("clearance holes of ASME B18.2.8:1999, normal fit above 1 in");

    // Nominal size, normal hole, loose hole: millimeters.
    private static readonly double[][] Metric =
    [
        [2, 2.4, 2.6], [2.5, 2.9, 3.1], [3, 3.4, 3.6], [4, 4.5, 4.8], [5, 5.5, 5.8], [6, 6.6, 7], [8, 9, 10], [10, 11, 12],
            [12, 13.5, 14.5], [14, 15.5, 16.5], [16, 17.5, 18.5],
        [18, 20, 21], [20, 22, 24], [22, 24, 26], [24, 26, 28], [27, 30, 32], [30, 33, 35], [33, 36, 38], [36, 39, 42], [39, 42, 45],
    ];

    // Nominal size, normal hole, loose hole: inches.
    private static readonly double[][] Inch =
    [
        [0.19, 0.221, 0.238], [0.25, 0.281, 0.297], [0.3125, 0.344, 0.359], [0.375, 0.406, 0.422], [0.4375, 0.469, 0.484],
            [0.5, 0.562, 0.609],
        [0.625, 0.688, 0.734], [0.75, 0.812, 0.906], [0.875, 0.938, 1.031], [1, 1.094, 1.156], [1.125, 1.219, 1.312], [1.25, 1.344, 1.438],
        [1.375, 1.5, 1.609], [1.5, 1.625, 1.734],
    ];

    /// <summary>Where the normal hole of a bolt comes from.</summary>
    public static Basis NormalBasis(ScrewThread thread) => thread.System == ThreadSystem.Metric ? Iso273
        : thread.MajorDiameterM < OneInch + 1e-9 ? InchTo1
        : InchAbove1;

    /// <summary>Where the widest hole in which a bolt is still a fit comes from.</summary>
    public static Basis LooseBasis(ScrewThread thread) => thread.System == ThreadSystem.Metric ? Iso273
        : thread.MajorDiameterM > Quarter - 1e-9 ? InchLoose
        : InchTo1;

    /// <summary>The widest hole in which a plain pin is still a fit, m: the loose hole of a metric bolt as thick.</summary>
    public static double LooseForPinM(double diameterM) => diameterM + Clearance(Metric, 1e-3, diameterM, 2);

    /// <summary>The hole a plain pin normally gets, m: the normal hole of a metric bolt as thick.</summary>
    public static double NormalForPinM(double diameterM) => diameterM + Clearance(Metric, 1e-3, diameterM, 1);

    /// <summary>The hole a bolt of that size normally gets, m.</summary>
    public static double NormalM(ScrewThread thread) => thread.MajorDiameterM + Clearance(thread, 1);

    /// <summary>The widest hole in which a bolt of that size is still a fit, m.</summary>
    public static double LooseM(ScrewThread thread) => thread.MajorDiameterM + Clearance(thread, 2);

    // A size that is not listed gets the clearance of the next smaller one: never more than the standard would give it.
    private static double Clearance(ScrewThread thread, int column) => thread.System == ThreadSystem.Metric
        ? Clearance(Metric, 1e-3, thread.MajorDiameterM, column)
        : Clearance(Inch, Si.Inch, thread.MajorDiameterM, column);

    private static double Clearance(double[][] rows, double unit, double diameterM, int column)
    {
        double clearance = 0;
        foreach (double[] row in rows)
        {
            if (row[0] * unit > diameterM + 1e-9)
            {
                break;
            }

            clearance = (row[column] - row[0]) * unit;
        }

        return clearance;
    }
}
