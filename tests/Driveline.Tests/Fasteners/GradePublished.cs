using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Fasteners;

/// <summary>Every grade row as printed.</summary>
public sealed class GradePublished
{
    private const double Mpa = 1e6;

    private const double Ksi = 6.894757293168362e6;

    public static TheoryData<ReferenceRow> Sae =>
        ReferenceTable.Seen("fasteners", "sae-j429-grades.csv", r => r["grade"] != "5 (A449-type)");

    public static TheoryData<ReferenceRow> Iso =>
        ReferenceTable.Seen("fasteners", "iso-898-1-classes.csv", r => r["property_class"] != "all");

    public static TheoryData<ReferenceRow> Specs =>
        ReferenceTable.Seen("fasteners", "other-specs.csv", r => r["spec"].StartsWith("ASTM", StringComparison.Ordinal));

    public static TheoryData<ReferenceRow> Stainless =>
        ReferenceTable.Seen("fasteners", "other-specs.csv", r => r["spec"] == "ISO 3506-1");

    public static TheoryData<ReferenceRow> Rods => ReferenceTable.Seen("fasteners", "other-specs.csv",
        r => r["spec"] is "aluminium rod" or "bolt material" or "brass rod" or "low-carbon steel rod" or "ISO 8839");

    [Theory]
    [MemberData(nameof(Sae))]
    public void SaeGrade_EveryRow_IsAsPrinted(ReferenceRow row)
    {
        BoltGrade grade = BoltGrade.Parse("SAE grade " + row["grade"]);
        GradeRange range = grade.Ranges.Single(r => Math.Abs(r.Sizes.Maximum.Inches - row.Number("size_max_in")) < 1e-9);
        Close.Digits(row.Number("size_min_in"), range.Sizes.Minimum.Inches, 9);
        Assert.Equal(row["size_note"].StartsWith("over", StringComparison.Ordinal), !range.Sizes.IncludesMinimum);
        CheckKsi(row, range);
        if (row["confidence"] == "conflicting")
        {
            Assert.NotEmpty(range.Conflicts);
            return;
        }

        CheckHardness(row["core_hardness_min"], row["core_hardness_max"], range);
        // 5.1 stands in no table that names its edition; no hardness of the others does, but that of edition j.
        bool isChart = row["grade"] == "5.1";
        Assert.Equal(isChart ? BasisKind.CommonPractice : BasisKind.Published, range.Basis.Kind);
        Assert.True(range.HardnessBasis.Kind == BasisKind.CommonPractice || range.HardnessBasis.Edition == "edition j");
    }

    [Theory]
    [MemberData(nameof(Iso))]
    public void IsoClass_EveryRow_IsAsPrinted(ReferenceRow row)
    {
        BoltGrade grade = BoltGrade.Parse("class " + row["property_class"]);
        GradeRange range = row["size_note"].StartsWith("d > 16", StringComparison.Ordinal) ? grade.Ranges[1] : grade.Ranges[0];
        Close.Digits(row.Number("Rm_min_MPa"), range.Strength.Tensile.SiBand.Low / Mpa, 6);
        Assert.Equal(row.Number("Sp_MPa"), range.Strength.PublishedProofStress!.Value);
        string yield = row.Has("ReL_min_MPa") ? "ReL_min_MPa" : row.Has("Rp02_min_MPa") ? "Rp02_min_MPa" : "Rpf_min_MPa";
        Assert.Equal(row.Number(yield), range.Strength.PublishedYieldStrength!.Value);
        CheckHardness("HV " + row["HV_min"], "HV " + row["HV_max"], range);
    }

    [Theory]
    [MemberData(nameof(Specs))]
    public void AstmSpecification_EveryRow_IsAsPrinted(ReferenceRow row)
    {
        BoltGrade grade = BoltGrade.Parse(AstmName(row["spec"], row["grade_or_alloy"]));
        GradeRange range = grade.Ranges.Single(r =>
            Math.Abs(r.Strength.MinimumTensile.Value - row.Number("tensile_min_ksi")) < 1e-9);
        CheckKsi(row, range);
        if (row.Has("tensile_max_ksi"))
        {
            Close.Digits(row.Number("tensile_max_ksi"), range.Strength.Tensile.SiBand.High / Ksi, 6);
            Assert.Equal(BandEnd.Limit, range.Strength.Tensile.Basis.HighEnd);
        }

        if (row.Has("hardness_max"))
        {
            CheckHardness(row["hardness_min"], row["hardness_max"], range);
        }

        Assert.Equal(row["confidence"] == "conflicting", range.Conflicts.Count > 0);
    }

    [Theory]
    [MemberData(nameof(Stainless))]
    public void StainlessClass_EveryRow_IsAsPrintedAndUnbounded(ReferenceRow row)
    {
        string strength = row["grade_or_alloy"].Split(' ')[^1];
        foreach (string steel in new[] { "A1", "A2", "A4" })
        {
            GradeRange range = BoltGrade.Parse(steel + "-" + strength).Ranges[0];
            Assert.Equal(row.Number("tensile_min_MPa"), range.Strength.MinimumTensile.Value);
            Assert.Equal(row.Number("yield_min_MPa"), range.Strength.PublishedYieldStrength!.Value);
            Assert.False(range.Strength.Tensile.IsBounded);
            Assert.False(range.Strength.Tensile.HasExpected);
        }
    }

    [Theory]
    [MemberData(nameof(Rods))]
    public void RodMaterial_EveryRow_IsHeldOrKeptAsAConflict(ReferenceRow row)
    {
        RodMaterial rod = RodMaterial.Parse(RodName(row));
        bool ksi = row.Has("tensile_min_ksi");
        double tensile = row.Number(ksi ? "tensile_min_ksi" : "tensile_min_MPa");
        double yield = row.Number(ksi ? "yield_min_ksi" : "yield_min_MPa");
        if (row["confidence"] == "conflicting" && Math.Abs(rod.PublishedTensile.Value - tensile) > 1e-9)
        {
            Assert.Contains(rod.Conflicts, c => Math.Abs(c.Other.Value - tensile) < 1e-9);
            return;
        }

        Assert.Equal(tensile, rod.PublishedTensile.Value);
        Assert.Equal(yield, rod.PublishedYield!.Value);
        Assert.Equal(row["value_kind"] == "typical" ? RodValueKind.Typical : RodValueKind.Minimum, rod.ValueKind);
        Assert.Equal(row["confidence"] == "memory", rod.PublishedTensile.Basis.Kind == BasisKind.FromMemory);
        if (row.Has("shear_typ_ksi"))
        {
            Assert.Equal(row.Number("shear_typ_ksi"), rod.PublishedShear!.Value);
        }
    }

    private static void CheckKsi(ReferenceRow row, GradeRange range)
    {
        Assert.Equal(row.Number("tensile_min_ksi"), range.Strength.MinimumTensile.Value);
        Close.Digits(row.Number("tensile_min_ksi"), range.Strength.Tensile.SiBand.Low / Ksi, 6);
        Assert.Equal(row.Has("proof_ksi") ? row.Number("proof_ksi") : null, range.Strength.PublishedProofStress?.Value);
        Assert.Equal(row.Has("yield_min_ksi") ? row.Number("yield_min_ksi") : null, range.Strength.PublishedYieldStrength?.Value);
    }

    private static void CheckHardness(string minimum, string maximum, GradeRange range)
    {
        Assert.Equal(Hardness.Parse(minimum), range.Strength.CoreHardness!.Minimum);
        Assert.Equal(Hardness.Parse(maximum), range.Strength.CoreHardness.Maximum);
    }

    private static string AstmName(string spec, string grade) => (spec, grade) switch
    {
        ("ASTM A307", _) => spec + " " + grade[..1],
        ("ASTM A449" or "ASTM A574", _) => spec,
        ("ASTM F3125", _) => "F3125 " + grade.Split(' ')[0],
        ("ASTM A325", _) => "ASTM A325 before 2014",
        _ => spec + " grade " + grade,
    };

    private static string RodName(ReferenceRow row) => (row["spec"], row["grade_or_alloy"], row["size_note"]) switch
    {
        ("bolt material", var name, _) => name.StartsWith("18-8", StringComparison.Ordinal) ? "18-8 or 316 stainless inch bolt"
            : name.Contains("bronze", StringComparison.Ordinal) ? "651 silicon bronze" : name,
        ("brass rod", _, _) => "C36000 brass rod",
        ("low-carbon steel rod", var name, _) => name.Replace("cold drawn", "cold-drawn steel rod", StringComparison.Ordinal),
        ("ISO 8839", var name, var size) => "ISO 8839 " + name[..3]
            + (size.StartsWith("d <=", StringComparison.Ordinal) ? " to M6" : name[..3] == "AL4" ? " over M10 to M39" : " over M6 to M39"),
        (_, var alloy, _) => alloy,
    };
}
