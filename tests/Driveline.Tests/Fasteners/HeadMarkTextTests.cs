using Driveline.Fasteners;

namespace Driveline.Tests.Fasteners;

public sealed class HeadMarkTextTests
{
    [Theory]
    [InlineData("three radial lines", 3, LineSpacing.NotKnown, null)]
    [InlineData("Six lines", 6, LineSpacing.NotKnown, null)]
    [InlineData("6 lines", 6, LineSpacing.NotKnown, null)]
    [InlineData("3 dashes", 3, LineSpacing.NotKnown, null)]
    [InlineData("one line", 1, LineSpacing.NotKnown, null)]
    [InlineData("three evenly spaced radial lines", 3, LineSpacing.Even, null)]
    [InlineData("6 lines, grouped", 6, LineSpacing.Grouped, null)]
    [InlineData("3 lines as an upside-down T", 3, LineSpacing.UpsideDownT, null)]
    [InlineData("3 radial lines and \"XY\"", 3, LineSpacing.NotKnown, "XY")]
    [InlineData("three lines with the letters XY", 3, LineSpacing.NotKnown, "XY")]
    [InlineData("none", 0, LineSpacing.NotKnown, null)]
    [InlineData("no marks", 0, LineSpacing.NotKnown, null)]
    [InlineData("No grade mark", 0, LineSpacing.NotKnown, null)]
    [InlineData("no radial lines", 0, LineSpacing.NotKnown, null)]
    [InlineData("8.8", 0, LineSpacing.NotKnown, "8.8")]
    [InlineData("A325", 0, LineSpacing.NotKnown, "A325")]
    [InlineData("three raidal lines", 0, LineSpacing.NotKnown, "three raidal lines")]
    public void Parse_WrittenByPeople_IsUnderstood(string text, int lines, LineSpacing spacing, string? stamped)
    {
        HeadMark mark = HeadMark.Parse(text);
        Assert.Equal((lines, spacing, stamped), (mark.Lines, mark.Spacing, mark.Text));
    }

    [Fact]
    public void Parse_TheWordsOfAMark_GiveTheSameMark() => Assert.All(
        [HeadMark.None, HeadMark.RadialLines(1), HeadMark.RadialLines(6), HeadMark.RadialLines(3).WithText("B"), HeadMark.OfText("10.9")],
        mark => Assert.Equal(mark.ToString(), HeadMark.Parse(mark.ToString()).ToString()));

    [Theory]
    [InlineData("", "got no text")]
    [InlineData("6", "write \"6 lines\"")]
    [InlineData("six", "write \"six lines\"")]
    [InlineData("25 lines", "at most 24 lines")]
    public void Parse_NotAMark_IsAProblem(string text, string words)
    {
        Assert.False(HeadMark.TryParse(text, out HeadMark? mark, out string? problem));
        Assert.Null(mark);
        Assert.Contains(words, problem, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => HeadMark.Parse(text));
    }
}
