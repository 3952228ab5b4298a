using System.Text.RegularExpressions;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

public partial class SpanishNamesInTextsTests
{
    [Fact]
    public void Text_ThatNamesAPartInASentence_SetsTheNameApart()
    {
        string[] bare = [.. Texts.Spanish.Codes.Where(c => NameAfterAWord().IsMatch(Texts.Spanish.Of(c)))];
        Assert.True(bare.Length == 0, string.Join("\n", bare));
    }

    [Theory]
    [InlineData("letter.think.sure")]
    [InlineData("letter.think.seen")]
    [InlineData("letter.think.likely")]
    [InlineData("letter.think.perhaps")]
    [InlineData("letter.think.open")]
    [InlineData("letter.think.or")]
    [InlineData("letter.think.orTwo")]
    public void Cause_InSpanish_FollowsNoVerb(string code) =>
        Assert.Matches(@": \{(cause|first)\}", Texts.Spanish.Of(code));      // "es agujeros gastados" is no Spanish

    [GeneratedRegex(@"\p{L} \{(name|part|device)\}(?! \()")]
    private static partial Regex NameAfterAWord();
}
