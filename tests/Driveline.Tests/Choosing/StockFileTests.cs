using Driveline.Choosing;

namespace Driveline.Tests.Choosing;

public class StockFileTests
{
    private const string Head = "sku,designation,grade,length,coating,price,currency\n";

    [Theory]
    [InlineData("A,1/2-13 x 2-1/2,SAE 2,,,0.52,USD", "1/2-13 UNC SAE 2", 63.5)]       // 2.5 in · 25.4
    [InlineData("A,1/2-13x2 1/2\",SAE 2,,,0.52,USD", "1/2-13 UNC SAE 2", 63.5)]
    [InlineData("A,M12x1.75x60,8.8,,,0.52,USD", "M12 ISO 8.8", 60.0)]
    [InlineData("A,M12 x 60,8.8,,,0.52,USD", "M12 ISO 8.8", 60.0)]
    [InlineData("A,M6x8,8.8,,,0.52,USD", "M6 ISO 8.8", 8.0)]                          // no pitch of 8 mm at M6: a length
    [InlineData("A,M10x1.25,8.8,45 mm,,0.52,USD", "M10x1.25 ISO 8.8", 45.0)]
    [InlineData("A,M10,8.8,45,,0.52,USD", "M10 ISO 8.8", 45.0)]
    [InlineData("A,3/8-16,SAE 5,1-3/4 in,,0.52,USD", "3/8-16 UNC SAE 5", 44.45)]      // 1.75 · 25.4
    [InlineData("A,3/8-16 x 3 HCS,GR 5,,,0.52,USD", "3/8-16 UNC SAE 5", 76.2)]
    [InlineData("A,\"3/8-16 x 2\"\"\",SAE 5,,,0.52,USD", "3/8-16 UNC SAE 5", 50.8)]
    public void Row_AsAPartsSystemWritesIt_IsRead(string row, string name, double millimeters)
    {
        StockFile file = StockFile.Parse(Head + row);
        Assert.Empty(file.LeftOut.Select(r => r.ToString()));
        StockItem item = Assert.Single(file.List.Items);
        Assert.Equal(name, item.Name);
        Assert.Equal(millimeters, item.Length!.Value.Millimeters, 9);
        Assert.Equal((0.52, "USD", "A"), (item.Price, item.Currency, item.Sku));
    }

    [Theory]
    [InlineData("A,pin 8 x 60,2024-T4,,,1,EUR", "pin 8 mm 2024-T4 aluminium rod", 8.0, 60.0)]
    [InlineData("A,Ø10 x 45 mm,HRC 28,,,1,EUR", "pin 10 mm HRC 28", 10.0, 45.0)]
    [InlineData("A,3/8 x 36,1018,,,1,USD", "pin 3/8 in SAE 1018 cold-drawn steel rod", 9.525, 914.4)]      // 36 · 25.4
    [InlineData("A,clevis pin 1-1/4 in x 3,C36000,,,1,USD", "pin 1 1/4 in C36000 brass rod", 31.75, 76.2)]
    [InlineData("A,5/16 rod,6061-T6,2 in,,1,USD", "pin 5/16 in 6061-T6 aluminium rod", 7.9375, 50.8)]
    [InlineData("A,ISO 8752 - 8 x 40 - St,,40 mm,,1,EUR", "ISO 8752 8 mm, spring steel", 8.0, 40.0)]
    [InlineData("A,M8 x 40,2024 aluminium bolt,,,1,EUR", "M8 2024 aluminium bolt", 8.0, 40.0)]
    [InlineData("A,3/8-16 x 2,6061-T6,,,1,USD", "3/8-16 UNC 6061-T6 aluminium rod", 9.525, 50.8)]          // cut as a thread
    public void Row_OfAPinOrRod_IsRead(string row, string name, double millimeters, double length)
    {
        StockFile file = StockFile.Parse(Head + row);
        Assert.Empty(file.LeftOut.Select(r => r.ToString()));
        StockItem item = Assert.Single(file.List.Items);
        Assert.Equal(name, item.Name);
        Assert.Equal(millimeters, item.Bolt.Diameter.Millimeters, 9);
        Assert.Equal(length, item.Length!.Value.Millimeters, 9);
        Assert.Null(item.Grade);
    }

    [Theory]
    [InlineData("A,spring pin 3/8 x 2,1070,,,1,USD", ChoosingFindings.RowPin)]           // no standard: nobody knows its load
    [InlineData("A,pin 8 x 40,,,,1,USD", ChoosingFindings.RowPin)]
    [InlineData("A,pin 2.5 x 40,6061-T6,,,1,USD", ChoosingFindings.RowPin)]              // 2.5 mm or 2.5 in?
    [InlineData("A,clevis pin 3/8,SAE 5,,,1,USD", ChoosingFindings.RowPin)]
    [InlineData("A,banana,SAE 5,,,1,USD", ChoosingFindings.RowSize)]
    [InlineData("A,M10,,,,1,USD", ChoosingFindings.RowGrade)]
    [InlineData("A,M10,SAE 99,,,1,USD", ChoosingFindings.RowGrade)]
    [InlineData("A,M10,8.8,long,,1,USD", ChoosingFindings.RowLength)]
    [InlineData("A,M10,8.8,,,free,USD", ChoosingFindings.RowPrice)]
    [InlineData("A,M10,8.8,,,-1,USD", ChoosingFindings.RowPrice)]
    public void Row_ThatCannotBeRanked_IsKeptWithItsReason(string row, string code)
    {
        StockFile file = StockFile.Parse(Head + row + "\nB,M8,8.8,,,0.1,USD\n");
        Assert.Equal("M8 ISO 8.8", Assert.Single(file.List.Items).Name);
        StockRow left = Assert.Single(file.LeftOut);
        Assert.Equal((2, "A", code), (left.Line, left.Sku, left.Reason.Code));
        Assert.StartsWith("A ", left.Reason.Parameters[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A,M10,8.8,,,1,USD")]                                                            // no line of heads: the usual order
    [InlineData("price;designation;sku;grade;currency\n1;M10;A;8.8;USD")]                        // any order, semicolons
    [InlineData("price;designation;sku;grade;currency\n1,0;M10;A;8.8;USD")]                      // a decimal comma beside semicolons
    [InlineData("\uFEFFsku\tdesignation\tgrade\tprice\tcurrency\r\nA\tM10\t8.8\t1\tUSD\r\n\r\n")]  // tabs, a mark of order, Windows lines
    public void File_InAnyUsualForm_IsRead(string text)
    {
        StockItem item = Assert.Single(StockFile.Parse(text).List.Items);
        Assert.Equal(("M10 ISO 8.8", 1.0, "USD", "A"), (item.Name, item.Price, item.Currency, item.Sku));
    }

    [Fact]
    public void Twins_OfOneThreadAndGrade_AreBothRankedWithTheirTags()
    {
        StockFile file = StockFile.Parse(Head + "A,M8 x 40,8.8,,zinc,0.35,EUR\nB,M8 x 50,8.8,,plain,0.30,EUR\n");
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300), ChoiceTerms.Default.WithStock(file.List));
        Assert.Equal(["A", "B"], choice.Choices.Select(c => c.Item.Sku).Order(StringComparer.Ordinal));
        Assert.Equal([2, 3], choice.Choices.Select(c => (int)c.Item.Tag!).Order());   // lines of the file
    }

    [Fact]
    public void Tag_OfACaller_ComesBackWithTheBolt()
    {
        object mine = new();
        StockItem item = StockItem.Of(
            Driveline.Fasteners.ScrewThread.Parse("M8"), Driveline.Fasteners.BoltGrade.Parse("8.8")).WithTag(mine);
        Assert.Same(mine, BoltChoice.For(Bench.Question(3000, 300), ChoiceTerms.Default.WithStock(StockList.Of(item))).Choices[0].Item.Tag);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(Head)]
    public void File_WithoutARow_IsRefused(string? text)
    {
        Assert.False(StockFile.TryParse(text, out StockFile? file, out string? problem));
        Assert.Null(file);
        Assert.Contains("sku,designation,grade", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void File_WithTooManyRows_IsRefused() => Assert.False(
        StockFile.TryParse(string.Concat(Enumerable.Repeat("A,M8,8.8,,,1,USD\n", StockFile.MostRows + 1)), out _, out _));
}
