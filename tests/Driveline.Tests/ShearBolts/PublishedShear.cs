using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Tests.ShearBolts;

/// <summary>A published shear load of a bolt, with what must be stripped from it to compare it with a breaking load.</summary>
internal sealed record PublishedShear(
    string Spec, string Size, string Grade, int Planes, PlaneThrough Plane, double LoadN, string Kind, string Confidence,
    string Source)
{
    /// <summary>What the load becomes without safety factors and at the specified minimum instead of the nominal strength.</summary>
    public double Stripped => LoadN * Safety / Clearance / LongJoint * MinimumOverNominal;

    public BoltGrade BoltGrade => BoltGrade.Parse(Grade);

    // EN: γ_M2 = 1.25. AISC: φ = 0.75. BS 5950: 375 MPa is 0.6 × 800 / 1.28; 1.25 is taken, which strips less.
    private double Safety => Spec.StartsWith("EN", StringComparison.Ordinal) || Spec.StartsWith("BS", StringComparison.Ordinal) ? 1.25
        : Spec.StartsWith("AISC", StringComparison.Ordinal) ? 1 / 0.75
        : 1;

    // EN: M12 of 8.8 and 10.9 in 2 mm clearance holes carries a factor 0.85.
    private double Clearance => Spec.StartsWith("EN", StringComparison.Ordinal) && Size == "M12" && Grade != "4.6" ? 0.85 : 1;

    // AISC: 0.9 for long joints stands in the nominal strength; single bolts do not have it.
    private double LongJoint => Spec.StartsWith("AISC", StringComparison.Ordinal) ? 0.9 : 1;

    // The codes take 500, 800 and 1000 MPa; ISO 898-1 Table 3 promises 520, 830 (above M16) and 1040 MPa.
    private double MinimumOverNominal => Grade switch
    {
        "5.8" => 520.0 / 500,
        "8.8" when int.Parse(Size[1..], System.Globalization.CultureInfo.InvariantCulture) > 16 => 830.0 / 800,
        "10.9" => 1040.0 / 1000,
        _ => 1,
    };

    public static IEnumerable<PublishedShear> All()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("fasteners", "published-shear.csv"))
        {
            string spec = row["spec"];
            bool taken = spec.StartsWith("EN", StringComparison.Ordinal) || spec.StartsWith("BS", StringComparison.Ordinal)
                || spec.StartsWith("AISC", StringComparison.Ordinal) || spec == "anchor rod"
                || (spec.StartsWith("ACI", StringComparison.Ordinal) && row["grade_or_class"] == "ASTM F1554 grade 36"
                    && row["size"] != "3/8 in");
            if (taken)
            {
                yield return new PublishedShear(
                    spec,
                    row["size"],
                    row["grade_or_class"] is "ASTM F1554 grade 36" ? "F1554 36" : row["grade_or_class"],
                    row["shear_planes"] == "double" ? 2 : 1,
                    row["plane_location"].Contains("out of", StringComparison.Ordinal) ? PlaneThrough.Shank : PlaneThrough.Thread,
                    row.Number("load_kN") * 1000,
                    row["value_kind"],
                    row["confidence"],
                    row["source"]);
            }
        }
    }

    public override string ToString() => $"{Spec}, {Grade} {Size}, {Planes} × {Plane}: {LoadN:F0} N {Kind} ({Confidence})";
}
