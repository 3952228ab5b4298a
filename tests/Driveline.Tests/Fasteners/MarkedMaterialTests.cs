using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Fasteners;

public sealed class MarkedMaterialTests
{
    private static readonly ScrewThread HalfInch = ScrewThread.Parse("1/2-13 UNC");

    private static readonly string[] Marks =
    [
        "none", "three radial lines", "5 lines", "six lines", "307A", "307B", "A325", "A449", "A490", "BC", "BD", "A2-70", "A4-80",
        "4.6", "5.8", "8.8", "9.8", "10.9", "12.9",
    ];

    [Fact]
    public void Marked_ThreeLines_SpansEveryGradeTheyMayMean()
    {
        FastenerMaterial material = FastenerMaterial.Marked(HeadMark.Parse("three radial lines"), HalfInch);

        // SAE J429: 5, 5.1 and 5.2 from 120 ksi = 827.4 MPa; 5.1 up to HRC 40: 182 ksi (ASTM A370 Table 2) to 184 ksi at HRC 40.4 = 1255 to
        // 1269 MPa.
        Assert.Equal(827.4, material.Tensile!.Low.Megapascals, 0.05);
        Assert.InRange(material.Tensile.High!.Value.Megapascals, 1250, 1270);
        Assert.True(material.IsIdentified);
        Assert.Null(material.Grade);
    }

    [Fact]
    public void Marked_NumberOfOneClass_IsThatClass()
    {
        ScrewThread m12 = ScrewThread.Parse("M12");
        FastenerMaterial material = FastenerMaterial.Marked(HeadMark.Parse("8.8"), m12);
        Assert.Equal(Iso898.Class8_8, material.Grade);
        Assert.Equal(FastenerMaterial.Graded(Iso898.Class8_8, m12).Tensile!.SiBand, material.Tensile!.SiBand);
    }

    [Fact]
    public void Marked_NoMark_IsTheUnmarkedBoltWithoutAMaximum()
    {
        Assert.Equal(FastenerMaterial.UnmarkedInchBolt, FastenerMaterial.Marked(HeadMark.None, HalfInch));
        Assert.Equal(FastenerMaterial.UnmarkedMetricBolt, FastenerMaterial.Marked(HeadMark.None, ScrewThread.Parse("M12")));
    }

    [Fact]
    public void Marked_TenLines_IsNeverBounded()
    {
        FastenerMaterial material = FastenerMaterial.Marked(HeadMark.RadialLines(10), HalfInch);
        Assert.Null(material.Tensile!.High);
        Assert.False(material.IsIdentified);
    }

    [Fact]
    public void Marked_MarkNobodyKnows_IsNotKnown() =>
        Assert.Equal(FastenerMaterial.NotKnown, FastenerMaterial.Marked(HeadMark.Parse("QQ"), HalfInch));

    [Theory]
    [InlineData("SAE 2", "none")]
    [InlineData("SAE 2", "no marks")]
    [InlineData("SAE 5", "three radial lines")]
    [InlineData("SAE 8", "6 lines")]
    [InlineData("ASTM A325", "A325")]
    public void WithHeadMark_MarkOfTheGrade_ChangesNothing(string grade, string mark)
    {
        FastenerMaterial stated = FastenerMaterial.Graded(BoltGrade.Parse(grade), HalfInch);
        Assert.Equal(stated, stated.WithHeadMark(HeadMark.Parse(mark), HalfInch));
    }

    [Theory]
    [InlineData("1/2-13 UNC")]
    [InlineData("M12")]
    public void WithHeadMark_EveryMarkThatIsNotTheGrades_BarsBothYes(string thread)
    {
        ScrewThread size = ScrewThread.Parse(thread);
        int judged = 0;
        foreach (BoltGrade grade in BoltGrades.All.Where(g => g.TryAt(size, out _)))
        {
            foreach (HeadMark mark in Marks.Select(HeadMark.Parse))
            {
                bool isItsOwn = HeadMarks.Identify(mark, size).Candidates.Any(c => grade.Equals(c.Grade))
                    || (mark.Text is null && mark.Lines == 0 && grade.HeadMark.StartsWith("no ", StringComparison.Ordinal));
                ShearBolt bolt = ShearBolt.Of(size, grade).With(PlaneThrough.Shank).WithHeadMark(mark);
                ShearBoltDevice device = ShearBoltDevice.Of(
                    "bolt", ShearBoltJoint.Tangential(bolt, Length.FromMillimeters(50)).WithHub(HubState.Free));
                bool contradicts = device.GuardBars.Any(f => f.Code == ShearBoltFindings.MarksContradict);
                Assert.True(contradicts != isItsOwn, grade + " with " + mark);
                Assert.Equal(contradicts, device.QuietBars.Any(f => f.Code == ShearBoltFindings.MarksContradict));
                Assert.True(isItsOwn || !device.IsIdentified, grade + " with " + mark);
                judged += isItsOwn ? 0 : 1;
            }
        }

        Assert.True(judged > 100, FormattableString.Invariant($"{judged} contradictions were judged."));
    }

    [Fact]
    public void WithHeadMark_AnotherGradesMark_SpansBoth()
    {
        FastenerMaterial material = FastenerMaterial.Graded(SaeJ429.Grade2, HalfInch).WithHeadMark(HeadMark.Parse("six lines"), HalfInch);

        // SAE 2: at least 74 ksi = 510.2 MPa; SAE 8.2 up to HRC 42: 193 to 195 ksi = 1331 to 1345 MPa.
        Assert.Equal(510.2, material.Tensile!.Low.Megapascals, 0.05);
        Assert.InRange(material.Tensile.High!.Value.Megapascals, 1325, 1350);
    }

    [Theory]
    [InlineData("HRC 28", "three radial lines", true)]
    [InlineData("HRC 28", "QQ", true)]
    [InlineData("HRB 85", "six lines", false)]
    public void WithHeadMark_MeasuredHardness_AgreesWithMarksOfThatStrengthOnly(string hardness, string mark, bool agrees)
    {
        FastenerMaterial measured = FastenerMaterial.OfMeasuredHardness(Hardness.Parse(hardness));
        Assert.Equal(agrees, measured.WithHeadMark(HeadMark.Parse(mark), HalfInch).IsIdentified);
    }

    [Fact]
    public void WithHeadMark_PinWithoutThread_IsRefused() => Assert.Throws<InvalidOperationException>(
        () => ShearBolt.Pin(Length.FromMillimeters(10), FastenerMaterial.NotKnown).WithHeadMark(HeadMark.None));
}
