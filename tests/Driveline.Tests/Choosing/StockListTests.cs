using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Choosing;

public class StockListTests
{
    [Fact]
    public void Usual_HoldsThreeGradesOfEachCoarseSize()
    {
        Assert.Equal((8 * 3) + (7 * 3), StockList.Usual.Items.Count);   // 8 inch and 7 metric sizes
        Assert.Equal(BasisKind.CommonPractice, StockList.Usual.Basis.Kind);
        Assert.All(StockList.Usual.Items, i => Assert.Null(i.Price));
        Assert.Contains(StockList.Usual.Items, i => i.Name == "3/8-16 UNC SAE 2");
        Assert.Contains(StockList.Usual.Items, i => i.Name == "M10 ISO 8.8");
    }

    [Fact]
    public void Parse_GradesSizesPrices_AreRead()
    {
        StockList list = StockList.Parse(" 3/8-16 UNC, SAE 5, 0.45 ; M10, 8.8; ");
        Assert.Equal(["3/8-16 UNC SAE 5", "M10 ISO 8.8"], list.Items.Select(i => i.Name));
        Assert.Equal([0.45, null], list.Items.Select(i => i.Price));
        Assert.Equal(BasisKind.Given, list.Basis.Kind);
    }

    [Theory]
    [InlineData(null, "at least one bolt")]
    [InlineData("", "at least one bolt")]
    [InlineData(";;", "at least one bolt")]
    [InlineData("M10", "not a thread, a grade")]
    [InlineData("M10, 8.8, 1, 2", "not a thread, a grade")]
    [InlineData("M10 x, 8.8", "M10 x")]
    [InlineData("M10, 99", "99")]
    [InlineData("M10, 8.8, -1", "not a price")]
    [InlineData("M10, 8.8, 1e5", "not a price")]
    [InlineData("M10, 8.8, NaN", "not a price")]
    [InlineData("M10, 8.8, 1000000001", "not a price")]
    [InlineData("M10, 8.8; M10, 8.8, 2", "got it twice")]
    public void TryParse_BadText_SaysWhatIsWrong(string? text, string words)
    {
        Assert.False(StockList.TryParse(text, out StockList? list, out string? problem));
        Assert.Null(list);
        Assert.Contains(words, problem, StringComparison.Ordinal);
        Assert.Contains(words, Assert.Throws<ArgumentException>(() => StockList.Parse(text!)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void TryParse_TooManyBolts_IsRefusedAtOnce() =>
        Assert.False(StockList.TryParse(string.Concat(Enumerable.Repeat("M10, 8.8;", 100000)), out _, out _));

    [Fact]
    public void Of_TwiceOrMissing_IsRefused()
    {
        StockItem item = StockItem.Of(ScrewThread.Parse("M10"), BoltGrade.Parse("8.8"));
        Assert.Throws<ArgumentException>(() => StockList.Of(item, item.WithPrice(2)));
        Assert.Throws<ArgumentException>(() => StockList.Of(item, null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => item.WithPrice(-0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => item.WithPrice(double.NaN));
        Assert.Equal(0, item.WithPrice(0).Price);
    }

    [Fact]
    public void Choice_PriceOfACaller_ComesBackWithTheBolt() =>
        Assert.Equal(0.35,
            BoltChoice.For(Bench.Question(3000, 300), ChoiceTerms.Default.WithStock(Bench.Stock("M8, 8.8, 0.35"))).Choices[0].Item.Price);
}
