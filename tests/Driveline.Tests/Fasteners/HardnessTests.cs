using Driveline.Fasteners;
using Driveline.Quantities;

namespace Driveline.Tests.Fasteners;

public sealed class HardnessTests
{
    [Theory]
    [InlineData("HRC 28", HardnessScale.RockwellC, 28)]
    [InlineData("28 HRC", HardnessScale.RockwellC, 28)]
    [InlineData("hrc28,5", HardnessScale.RockwellC, 28.5)]
    [InlineData("HV 300", HardnessScale.Vickers, 300)]
    [InlineData("300 HV10", HardnessScale.Vickers, 300)]
    [InlineData("HBW 241", HardnessScale.Brinell, 241)]
    [InlineData("HB 241", HardnessScale.Brinell, 241)]
    [InlineData("HRB 85", HardnessScale.RockwellB, 85)]
    public void Hardness_WrittenByPeople_IsUnderstood(string text, HardnessScale scale, double value) =>
        Assert.Equal(Hardness.Of(scale, value), Hardness.Parse(text));

    [Theory]
    [InlineData("28")]
    [InlineData("HRC")]
    [InlineData("HRD 40")]
    [InlineData("HRC -5")]
    [InlineData("")]
    [InlineData("HRC 71")]
    [InlineData("HRB 106")]
    [InlineData("HV 0")]
    [InlineData("HV 1001")]
    public void Hardness_NotAReading_IsAProblem(string text)
    {
        Assert.False(Hardness.TryParse(text, out Hardness? hardness, out string? problem));
        Assert.Null(hardness);
        Assert.NotNull(problem);
        Assert.ThrowsAny<ArgumentException>(() => Hardness.Parse(text));
    }

    [Fact]
    public void Hardness_ScaleNotKnownOrNotANumber_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Hardness.Of(HardnessScale.NotKnown, 30));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hardness.Of(HardnessScale.RockwellC, double.NaN));
        Assert.Throws<ArgumentException>(() => new HardnessRange(Hardness.Parse("HRC 30"), Hardness.Parse("HRC 25")));
        Assert.Throws<ArgumentException>(() => new HardnessRange(Hardness.Parse("HRB 80"), Hardness.Parse("HRC 25")));
    }

    [Fact]
    public void ToTensile_Rockwell100B_IsTheDocumentedExample()
    {
        StressBand tensile = Hardness.Parse("HRB 100").ToTensile();

        // ASTM A370 Table 3: 116 ksi = 799.8 MPa; 5 % to each side covers the other tables (DIN 50150: 800).
        Assert.Equal(800, tensile.Expected!.Value.Megapascals, 0.5);
        Assert.Equal(0.95 * 799.8, tensile.Low.Megapascals, 0.1);
        Assert.Equal(1.05 * 799.8, tensile.High!.Value.Megapascals, 0.1);
        Assert.Equal(BandEnd.Interval95, tensile.Basis.HighEnd);
    }

    [Fact]
    public void ToTensile_BetweenLines_IsInterpolated() =>
        // DIN 50150: HV 330 = 1060, HV 340 = 1095 MPa; the middle is 1077.5.
        Assert.Equal(1077.5, Hardness.Parse("HV 335").ToTensile().Expected!.Value.Megapascals, 6);

    [Theory]
    [InlineData(20.5, 111, "both tables at HRC 20.5: 111 ksi")]
    [InlineData(44.5, 212, "Brinell-based table, last line: HBW 415, HRC 44.5, 212 ksi")]
    [InlineData(44.75, 213, "hand: halfway from 212 ksi at HRC 44.5 to 214 ksi at HRC 45 (ASTM A370 Table 2)")]
    [InlineData(45, 214, "ASTM A370 Table 2, last line: HRC 45, 214 ksi")]
    public void ToTensile_RockwellCWhereTwoTablesMeet_HasNoStep(double reading, double ksi, string source)
    {
        double got = Hardness.Of(HardnessScale.RockwellC, reading).ToTensile().Expected!.Value.KilopoundsForcePerSquareInch;
        Assert.True(Math.Abs(got - ksi) < 0.01, FormattableString.Invariant($"{source}; got {got:0.###} ksi"));
    }

    [Theory]
    [InlineData(HardnessScale.RockwellC, 20, 45)]
    [InlineData(HardnessScale.RockwellB, 65, 100)]
    [InlineData(HardnessScale.Vickers, 80, 450)]
    [InlineData(HardnessScale.Brinell, 76, 428)]
    public void ToTensile_DenseGridOverAScale_NeverFalls(HardnessScale scale, double from, double to)
    {
        const int Points = 20_000;
        Band softer = Hardness.Of(scale, from).ToTensile().SiBand;
        for (int i = 1; i <= Points; i++)
        {
            double reading = from + ((to - from) * i / Points);
            Band harder = Hardness.Of(scale, reading).ToTensile().SiBand;
            Assert.True(
                softer.Low <= harder.Low + 1 && softer.Expected <= harder.Expected + 1 && softer.High <= harder.High + 1,
                FormattableString.Invariant($"{scale} {reading}: {harder} after {softer}"));
            softer = harder;
        }
    }
}
