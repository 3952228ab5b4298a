using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>
/// Austenitic stainless bolts of ISO 3506-1, metric. Figures in MPa as printed; no maximum is specified, so the high end is unbounded.
/// </summary>
internal static class Iso3506
{
    private const string Standard = "ISO 3506-1";

    private static readonly Basis DataSheet =
        Basis.CommonPractice(Standard + ", austenitic stainless steel bolts, edition not stated").ReadVia("a fastener data sheet");

    private static readonly Basis SizeLimit2009 =
        Basis.CommonPractice("ISO 3506-1:2009 holds classes 70 and 80 to M24");

    /// <summary>Every steel and class held: A1, A2, A4 in classes 50, 70, 80.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
    [
        Class("A1", 50), Class("A1", 70), Class("A1", 80),
        Class("A2", 50), Class("A2", 70), Class("A2", 80),
        Class("A4", 50), Class("A4", 70), Class("A4", 80),
    ];

    private static BoltGrade Class(string steel, int strength)
    {
        string name = FormattableString.Invariant($"{steel}-{strength}");
        return new BoltGrade(Standard, name, name, name, MaterialFamily.StainlessSteel, ShearClass.Stainless, Row(strength));
    }

    private static GradeRange Row(int strength) => strength switch
    {
        50 => GradeRange.Of(SizeRange.Millimeters(1.6, 39, "M1.6 to M39"), "MPa", null, 210, 500, null, DataSheet),
        70 => To24(450, 700),
        _ => To24(600, 800),
    };

    // The older copy stops short of M20; between M20 and M24 the figures rest on the 2009 edition.
    private static GradeRange To24(double yield, double tensile) =>
        GradeRange.Of(SizeRange.Millimeters(1.6, 24, "M1.6 to M24"), "MPa", null, yield, tensile, null, DataSheet)
            .WithConflict("largest nominal diameter", new Sourced(24, "mm", SizeLimit2009), new Sourced(20, "mm", DataSheet));
}
