using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Tests.ShearBolts;

public class ShearPlanePublished
{
    // Three printed figures.
    private const double Printed = 0.006;

    public static TheoryData<string> Minima() =>
        [.. PublishedShear.All().Where(r => r.Kind != "mean" && r.Confidence == "seen").Select(r => r.ToString())];

    public static TheoryData<string> Means() =>
        [.. PublishedShear.All().Where(r => r.Kind == "mean").Select(r => r.ToString())];

    // EN 25, BS 8, anchor rods 11, ACI 6; the means of the anchor rods.
    [Fact]
    public void PublishedRows_Compared_AreAllThere()
    {
        Assert.Equal(25 + 8 + 11 + 6, Minima().Count);
        Assert.Equal(11, Means().Count);
    }

    // A code's or supplier's least load, with its safety taken off, is never below our low end, nor above our high end.
    [Theory]
    [MemberData(nameof(Minima))]
    public void Load_PublishedMinimumStripped_LiesBetweenLowAndHigh(string row)
    {
        PublishedShear published = Row(row);
        Close.Cite(published.Source);
        Band load = Band(published);
        Assert.True(published.Stripped >= published.Planes * load.Low * (1 - Printed),
            $"low {published.Planes * load.Low:F0} N above {published.Stripped:F0} N: {row}");
        Assert.True(published.LoadN <= published.Planes * load.High, row);
    }

    // A mean of tests lies within the band.
    [Theory]
    [MemberData(nameof(Means))]
    public void Load_PublishedMean_LiesWithinTheBand(string row)
    {
        PublishedShear published = Row(row);
        Close.Cite(published.Source);
        Band load = Band(published);
        Assert.InRange(published.Stripped, published.Planes * load.Low, published.Planes * load.High);
    }

    // Printed shear load over (145 ksi, or 135 ksi from 5/8 in, × nominal area) lies within the ratios of a quenched class through the
    // shank.
    [Fact]
    public void Ratio_FlatHeadSocketScrews_LieWithinTheQuenchedRatios()
    {
        int rows = 0;
        Band ratio = ShearRatios.Of(ShearClass.Quenched129, PlaneThrough.Shank).Ratio.SiBand;
        foreach (ReferenceRow row in ReferenceTable.Read("fasteners", "published-shear.csv")
            .Where(r => r["spec"].StartsWith("flat-head", StringComparison.Ordinal)))
        {
            Close.Cite(row["source"]);
            double inches = row["size"] switch
            {
                "No. 4" => 0.112,
                "No. 5" => 0.125,
                "No. 6" => 0.138,
                "No. 8" => 0.164,
                "No. 10" => 0.190,
                "1/4" => 0.25,
                "5/16" => 0.3125,
                "3/8" => 0.375,
                "7/16" => 0.4375,
                "1/2" => 0.5,
                "5/8" => 0.625,
                "3/4" => 0.75,
                _ => double.NaN,
            };
            double ksi = inches >= 0.625 ? 135 : 145;
            double kappa = row.Number("load_lbf") / (ksi * 1000 * Math.PI / 4 * inches * inches);

            // The printed loads are rounded to 10 or 50 lbf, up to half of 50 in 950.
            Assert.InRange(kappa, ratio.Low * 0.97, ratio.High * 1.03);
            rows++;
        }

        Assert.Equal(16, rows);
    }

    // Printed shear over printed ultimate tensile load of mild-steel studs: the stress-area ratio between the low (in the stress
    // area's terms) and high end of soft steel.
    [Fact]
    public void Ratio_MildSteelStuds_LieWithinTheSoftRatios()
    {
        int rows = 0;
        Band ratio = ShearRatios.Of(ShearClass.Soft46, PlaneThrough.Thread).Ratio.SiBand;
        foreach (ReferenceRow row in ReferenceTable.Read("fasteners", "published-shear.csv")
            .Where(r => r["spec"].StartsWith("threaded weld stud", StringComparison.Ordinal)))
        {
            Close.Cite(row["source"]);
            string note = row["note"];
            int at = note.IndexOf("ultimate ", StringComparison.Ordinal) + "ultimate ".Length;
            double ultimate = double.Parse(
                note[at..note.IndexOf(" lbf", at, StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture);
            Assert.InRange(row.Number("load_lbf") / ultimate, ratio.Low, ratio.High);
            rows++;
        }

        Assert.Equal(10, rows);
    }

    private static PublishedShear Row(string text) => PublishedShear.All().First(r => r.ToString() == text);

    private static Band Band(PublishedShear published) => ShearPlane.Of(
        ShearBolt.Of(ScrewThread.Parse(published.Size), published.BoltGrade).With(published.Plane)).Load.SiBand;
}
