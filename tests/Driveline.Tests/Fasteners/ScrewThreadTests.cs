using System.Globalization;
using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

public sealed class ScrewThreadTests
{
    [Theory]
    [InlineData("1/2-13", "1/2-13 UNC", false)]
    [InlineData("1/2-13 UNC", "1/2-13 UNC", false)]
    [InlineData("1/2 -13unc", "1/2-13 UNC", false)]
    [InlineData("1/2-13 UNC-2A", "1/2-13 UNC", false)]
    [InlineData("1/2-13 NC", "1/2-13 UNC", false)]
    [InlineData("1/2 UNC", "1/2-13 UNC", false)]
    [InlineData("1/2 UNF", "1/2-20 UNF", false)]
    [InlineData("1/2 fine", "1/2-20 UNF", false)]
    [InlineData("1/2 in", "1/2-13 UNC", true)]
    [InlineData("1/2\"", "1/2-13 UNC", true)]
    [InlineData("½ in", "1/2-13 UNC", true)]
    [InlineData("1/2", "1/2-13 UNC", true)]
    [InlineData("0.5 in", "1/2-13 UNC", true)]
    [InlineData(".5 in", "1/2-13 UNC", true)]
    [InlineData("0,5 in", "1/2-13 UNC", true)]
    [InlineData("1/2 in-20", "1/2-20 UNF", false)]
    [InlineData("1 in", "1-8 UNC", true)]
    [InlineData("1-8", "1-8 UNC", false)]
    [InlineData("1-12 UNF", "1-12 UNF", false)]
    [InlineData("1 1/4-7 UNC", "1-1/4-7 UNC", false)]
    [InlineData("1-1/4-7", "1-1/4-7 UNC", false)]
    [InlineData("1 1/4 in", "1-1/4-7 UNC", true)]
    [InlineData("#10-24", "No. 10-24 UNC", false)]
    [InlineData("10-32", "No. 10-32 UNF", false)]
    [InlineData("No. 10-24 UNC", "No. 10-24 UNC", false)]
    [InlineData("no 10", "No. 10-24 UNC", true)]
    [InlineData("M10", "M10", true)]
    [InlineData("m10", "M10", true)]
    [InlineData("M 12", "M12", true)]
    [InlineData("M10x1.5", "M10", false)]
    [InlineData("M10 x 1,25", "M10x1.25", false)]
    [InlineData("M10×1", "M10x1", false)]
    [InlineData("M10X1.25", "M10x1.25", false)]
    [InlineData("M10-1.5", "M10", false)]
    [InlineData("M10x1.5-6g", "M10", false)]
    [InlineData("M3.5", "M3.5", true)]
    public void Thread_WrittenByPeople_IsUnderstood(string text, string designation, bool seriesAssumed)
    {
        var thread = ScrewThread.Parse(text);
        Assert.Equal(designation, thread.Designation);
        Assert.Equal(seriesAssumed, thread.IsSeriesAssumed);
    }

    [Theory]
    [InlineData("M10 x", "has no pitch after the size")]
    [InlineData("M10x", "has no pitch after the size")]
    [InlineData("M11", "nearest: M10, M10x1.25, M10x1, M12, M12x1.5, M12x1.25")]
    [InlineData("M10x40", "gives 40 mm where a pitch belongs, which looks like a length; write M10 alone")]
    [InlineData("M10x8", "nearest: M10, M10x1.25, M10x1")]
    [InlineData("M10x0.5", "nearest: M10, M10x1.25, M10x1")]
    [InlineData("1/2-11", "nearest: 1/2-13 UNC, 1/2-20 UNF")]
    [InlineData("1/2-13 UNF", "nearest: 1/2-13 UNC, 1/2-20 UNF")]
    [InlineData("13/32 in", "nearest: 3/8-16 UNC, 3/8-24 UNF, 7/16-14 UNC, 7/16-20 UNF")]
    [InlineData("#8-32", "nearest: No. 10-24 UNC, No. 10-32 UNF")]
    [InlineData("1/2-", "has no threads per inch after the dash")]
    [InlineData("12", "write M12 for millimeters or 12 in for inches")]
    [InlineData("1/0 in", "is not a thread designation understood here")]
    [InlineData("bolt", "is not a thread designation understood here")]
    [InlineData("M", "is not a thread designation understood here")]
    [InlineData("-1/2", "is not a thread designation understood here")]
    [InlineData("", "A thread is needed; got no text.")]
    public void Thread_NotUnderstood_SaysWhatIsAccepted(string text, string expected)
    {
        Assert.False(ScrewThread.TryParse(text, out ScrewThread? thread, out string? problem));
        Assert.Null(thread);
        Assert.Contains(expected, problem!, StringComparison.Ordinal);
        Assert.Contains(expected, Assert.Throws<ArgumentException>(() => ScrewThread.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Thread_NullOrVeryLongText_IsAProblemNotAnException()
    {
        Assert.False(ScrewThread.TryParse(null, out _, out string? none));
        Assert.NotNull(none);
        Assert.False(ScrewThread.TryParse(new string('1', 1000000), out _, out string? tooLong));
        Assert.Contains("at most 64 characters", tooLong!, StringComparison.Ordinal);
    }

    [Fact]
    public void Thread_EveryDesignation_ParsesBackToItself() =>
        Assert.All<ScrewThread>(
            [.. UnifiedThread.All, .. MetricThread.All], t => Assert.Equal(t, ScrewThread.Parse(t.Designation)));

    // With blanks it is read by patterns, without them found as it stands.
    [Fact]
    public void Thread_EveryDesignationWithBlanks_IsTheSameAndAssumesTheSame() => Assert.All<ScrewThread>(
        [.. UnifiedThread.All, .. MetricThread.All],
        t =>
        {
            ScrewThread read = ScrewThread.Parse(" " + t.Designation + " ");
            ScrewThread found = ScrewThread.Parse(t.Designation);
            Assert.Equal(read, found);
            Assert.Equal(read.IsSeriesAssumed, found.IsSeriesAssumed);
        });

    [Fact]
    public void Thread_InACultureWithDecimalComma_ReadsAndPrintsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("M10x1.25", ScrewThread.Parse("M10x1.25").ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Thread_OfTheOtherSystem_IsRefusedByTheTypedParser()
    {
        Assert.Throws<ArgumentException>(() => UnifiedThread.Parse("M10"));
        Assert.Throws<ArgumentException>(() => MetricThread.Parse("1/2 in"));
    }

    [Fact]
    public void Areas_HalfInchCoarse_WorkedByHand()
    {
        var thread = ScrewThread.Parse("1/2-13 UNC");

        // D = 12.7 mm, P = 25.4/13 = 1.953846 mm: minor 12.7 − 1.299038·1.953846 = 10.161880 mm, area 0.7853982·103.263805 = 81.1032 mm²;
        // shank π/4·12.7² = 126.6769 mm².
        Assert.Equal(10.161880, thread.MinorDiameter.Millimeters, 5);
        Assert.Equal(81.1032, thread.RootArea.SquareMillimeters, 3);
        Assert.Equal(126.6769, thread.ShankArea.SquareMillimeters, 3);

        // 0.1419 in² × 645.16 mm²/in² = 91.5482 mm²; ANSI B1.1-1974, in Mechanical Engineering Design, 9th ed., Table 8-2, p. 413.
        Assert.Equal(91.5482, thread.StressArea.SquareMillimeters, 3);
        Assert.Equal(BasisKind.Published, thread.AreaBasis.Kind);
    }

    [Fact]
    public void BodyDiameter_StyleNotKnown_IsTheEnvelopeOfTheStyles()
    {
        var thread = ScrewThread.Parse("1/2-13 UNC");

        // Hex cap screw 0.493 to 0.500 in, square-neck bolt 0.483 to 0.515 in.
        Assert.Equal(0.483, thread.BodyDiameterOf(BodyStyle.NotKnown)!.Low.Inches, 9);
        Assert.Equal(0.515, thread.BodyDiameterOf(BodyStyle.NotKnown)!.High!.Value.Inches, 9);
        Assert.Equal(0.493, thread.BodyDiameter!.Low.Inches, 9);
        Assert.Equal(0.4965, thread.BodyDiameter.Expected!.Value.Inches, 9);
    }

    [Theory]
    [InlineData("9/16-12 UNC", BodyStyle.SquareNeckBolt)]
    [InlineData("No. 10-24 UNC", BodyStyle.HexCapScrew)]
    [InlineData("M10", BodyStyle.SquareNeckBolt)]
    [InlineData("M33", BodyStyle.HexCapScrew)]
    public void BodyDiameter_NotTabulated_IsNull(string thread, BodyStyle style) =>
        Assert.Null(ScrewThread.Parse(thread).BodyDiameterOf(style));
}
