using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Minimum and maximum diameter of the unthreaded body, as printed: inches for inch sizes, millimeters for metric ones.</summary>
internal static class BodyDiameters
{
    private static readonly Basis HexCapScrew =
        Basis.Published("ASME B18.2.1", "2012", "Table 6, hex cap screw body").ReadVia("a public drawing page");

    private static readonly Basis SquareNeckBolt =
        Basis.Published("ASME B18.5", "1990", "body diameters of round-head square-neck bolts").ReadVia("distributor data sheets");

    private static readonly Basis Iso4014ToM10 =
        Basis.CommonPractice("AS 1110.1 (ISO 4014), body diameters of grade A to M10, edition not stated")
            .ReadVia("a bolt supplier's page of the standard");

    private static readonly Basis Iso4014AboveM10 =
        Basis.FromMemory("ISO 4014 body diameters above M10, h13 to M24 (grade A), h14 above (grade B)");

    private static readonly Row[] Inch =
    [
        new("1/4", BodyStyle.HexCapScrew, 0.245, 0.25),
        new("5/16", BodyStyle.HexCapScrew, 0.3065, 0.3125),
        new("3/8", BodyStyle.HexCapScrew, 0.369, 0.375),
        new("7/16", BodyStyle.HexCapScrew, 0.4305, 0.4375),
        new("1/2", BodyStyle.HexCapScrew, 0.493, 0.5),
        new("9/16", BodyStyle.HexCapScrew, 0.5545, 0.5625),
        new("5/8", BodyStyle.HexCapScrew, 0.617, 0.625),
        new("3/4", BodyStyle.HexCapScrew, 0.741, 0.75),
        new("7/8", BodyStyle.HexCapScrew, 0.866, 0.875),
        new("1", BodyStyle.HexCapScrew, 0.99, 1.0),
        new("1-1/8", BodyStyle.HexCapScrew, 1.114, 1.125),
        new("1-1/4", BodyStyle.HexCapScrew, 1.239, 1.25),
        new("1-3/8", BodyStyle.HexCapScrew, 1.363, 1.375),
        new("1-1/2", BodyStyle.HexCapScrew, 1.488, 1.5),
        new("1/4", BodyStyle.SquareNeckBolt, 0.237, 0.26),
        new("5/16", BodyStyle.SquareNeckBolt, 0.298, 0.324),
        new("3/8", BodyStyle.SquareNeckBolt, 0.36, 0.388),
        new("7/16", BodyStyle.SquareNeckBolt, 0.421, 0.452),
        new("1/2", BodyStyle.SquareNeckBolt, 0.483, 0.515),
        new("5/8", BodyStyle.SquareNeckBolt, 0.605, 0.642),
        new("3/4", BodyStyle.SquareNeckBolt, 0.729, 0.768),
    ];

    private static readonly Row[] Metric =
    [
        new("M4", BodyStyle.HexCapScrew, 3.82, 4),
        new("M5", BodyStyle.HexCapScrew, 4.82, 5),
        new("M6", BodyStyle.HexCapScrew, 5.82, 6),
        new("M8", BodyStyle.HexCapScrew, 7.78, 8),
        new("M10", BodyStyle.HexCapScrew, 9.78, 10),
        new("M12", BodyStyle.HexCapScrew, 11.73, 12),
        new("M14", BodyStyle.HexCapScrew, 13.73, 14),
        new("M16", BodyStyle.HexCapScrew, 15.73, 16),
        new("M18", BodyStyle.HexCapScrew, 17.73, 18),
        new("M20", BodyStyle.HexCapScrew, 19.67, 20),
        new("M22", BodyStyle.HexCapScrew, 21.67, 22),
        new("M24", BodyStyle.HexCapScrew, 23.67, 24),
        new("M27", BodyStyle.HexCapScrew, 26.48, 27),
        new("M30", BodyStyle.HexCapScrew, 29.48, 30),
        new("M36", BodyStyle.HexCapScrew, 35.38, 36),
    ];

    public static LengthBand? Of(ScrewThread thread, BodyStyle style)
    {
        double low = double.PositiveInfinity;
        double high = 0;
        Basis? basis = null;
        string size = thread is UnifiedThread inch ? inch.Size : thread.Designation.Split('x')[0];
        double unit = thread.System == ThreadSystem.Inch ? Si.Inch : 1e-3;
        foreach (Row row in thread.System == ThreadSystem.Inch ? Inch : Metric)
        {
            if (row.Size != size || (style != BodyStyle.NotKnown && style != row.Style))
            {
                continue;
            }

            low = Math.Min(low, row.Minimum * unit);
            high = Math.Max(high, row.Maximum * unit);
            Basis source = BasisOf(thread, row.Style);
            basis = basis is null ? source : Basis.Weakest(basis, source);
        }

        return basis is null ? null : LengthBand.OfSi(new Band(low, (low + high) / 2, high), BandBasis.Of(basis));
    }

    private static Basis BasisOf(ScrewThread thread, BodyStyle style) =>
        thread.System != ThreadSystem.Metric ? style == BodyStyle.SquareNeckBolt ? SquareNeckBolt : HexCapScrew
        : thread.MajorDiameterM < 0.010 + 1e-9 ? Iso4014ToM10
        : Iso4014AboveM10;

    private sealed class Row(string size, BodyStyle style, double minimum, double maximum)
    {
        public string Size { get; } = size;

        public BodyStyle Style { get; } = style;

        public double Minimum { get; } = minimum;

        public double Maximum { get; } = maximum;
    }
}
