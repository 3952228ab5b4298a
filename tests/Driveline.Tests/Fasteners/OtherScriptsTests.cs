using Driveline.Fasteners;

namespace Driveline.Tests.Fasteners;

public class OtherScriptsTests
{
    [Theory]
    [InlineData("M٣")]
    [InlineData("١/٢-13 UNC")]
    public void Thread_DigitsOfOtherScripts_AreAProblemNotACrash(string text)
    {
        Assert.False(ScrewThread.TryParse(text, out _, out string? problem));
        Assert.NotNull(problem);
    }

    [Fact]
    public void SpringPin_DigitsOfOtherScripts_AreAProblemNotACrash()
    {
        Assert.False(SpringPin.TryParse("ISO 8752 ٣ mm", out _, out string? problem));
        Assert.NotNull(problem);
    }

    [Fact]
    public void Hardness_DigitsOfOtherScripts_AreAProblemNotACrash()
    {
        Assert.False(Hardness.TryParse("HRC ٢٨", out _, out string? problem));
        Assert.NotNull(problem);
    }
}
