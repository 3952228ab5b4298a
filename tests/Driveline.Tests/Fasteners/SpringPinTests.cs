using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

public sealed class SpringPinTests
{
    public static TheoryData<ReferenceRow> Rows =>
        ReferenceTable.Where("fasteners", "published-shear.csv", r => r["group"] is "spring pin" or "dowel pin" && r.Has("load_kN"));

    [Theory]
    [MemberData(nameof(Rows))]
    public void Pin_EveryPublishedRow_HasThePrintedLoad(ReferenceRow row)
    {
        string standard = row["spec"].StartsWith("ASME", StringComparison.Ordinal) ? "ASME B18.8.2"
            : string.Join(' ', row["spec"].Split(' ').Take(2));
        string material = row["grade_or_class"] is "austenitic" or "30302/30304" ? " austenitic"
            : row["grade_or_class"] == "beryllium copper" ? " beryllium copper"
            : row["group"] == "dowel pin" ? " dowel"
            : string.Empty;
        var pin = SpringPin.Parse(standard + " " + row["size"] + material);
        Assert.Equal(row.Number(row.Has("load_lbf") ? "load_lbf" : "load_kN"), pin.PublishedLoad.Value);
        Assert.Equal(row["shear_planes"] == "double" ? 2 : 1, pin.PublishedPlanes);

        // The kN column is rounded to 1 N.
        double planes = row["shear_planes"] == "double" ? 1 : 2;
        Assert.Equal(planes * row.Number("load_kN"), pin.MinimumDoubleShearLoad.Kilonewtons, 0.0011);
        Assert.Equal(row["confidence"] == "memory", pin.PublishedLoad.Basis.Kind == BasisKind.FromMemory);
        Assert.False(pin.DoubleShearLoad.IsBounded);
    }

    [Fact]
    public void Pins_HeldInCode_AreExactlyThoseOfTheTable() => Assert.Equal(Rows.Cast<object>().Count(), SpringPin.All.Count);

    [Theory]
    [InlineData("ISO 8752 - 8 x 40 - St", "ISO 8752 8 mm, spring steel")]
    [InlineData("ISO 8752 8x40 A", "ISO 8752 8 mm, austenitic stainless steel")]
    [InlineData("8 mm ISO 8752", "ISO 8752 8 mm, spring steel")]
    [InlineData("iso8750 6", "ISO 8750 6 mm, spring steel")]
    [InlineData("ASME B18.8.2 5/16\"", "ASME B18.8.2 5/16 in, spring steel")]
    public void Pin_WrittenByPeople_IsUnderstood(string text, string designation) =>
        Assert.Equal(designation, SpringPin.Parse(text).Designation);

    [Theory]
    [InlineData("ISO 8752 7 mm", "held of that standard and material: 1 mm, 1.5 mm")]
    [InlineData("ISO 9999 8 mm", "Standards held: ISO 8752")]
    [InlineData("roll pin", "A pin is a standard and a size")]
    [InlineData("ISO 8752 1/0", "is not among the pins held here")]
    [InlineData("", "A pin is a standard and a size")]
    public void Pin_NotHeld_SaysWhatIsHeld(string text, string expected)
    {
        Assert.False(SpringPin.TryParse(text, out SpringPin? pin, out string? problem));
        Assert.Null(pin);
        Assert.Contains(expected, problem!, StringComparison.Ordinal);
        Assert.Contains(expected, Assert.Throws<ArgumentException>(() => SpringPin.Parse(text)).Message, StringComparison.Ordinal);
    }
}
