namespace Driveline.Fleet.Tests;

public class AlarmIdTests
{
    [Theory]
    [InlineData("a", 2, 9, "b", 1, 0)]
    [InlineData("a", 2, 9, "a", 10, 0)]
    [InlineData("a", 2, 1, "a", 2, 10)]
    public void Ids_InTheOrderTheyAreTold_Rise(string driveline, long sequence, int index, string later, long laterSequence, int laterIndex)
    {
        var first = new AlarmId(driveline, sequence, index);
        var second = new AlarmId(later, laterSequence, laterIndex);
        Assert.True(first < second && second > first && first != second && first <= second && !(first >= second));
        Assert.Equal(FormattableString.Invariant($"{driveline}/{sequence}/{index}"), first.ToString());
    }

    [Fact]
    public void Alarms_ToldAgain_AreNew_OnlyOnce()
    {
        var seen = new SeenAlarms();
        AlarmId[] told = [new("a", 1, 0), new("a", 1, 1), new("b", 1, 0), new("a", 1, 0), new("a", 1, 1), new("a", 2, 0), new("b", 1, 0)];
        Assert.Equal([new("a", 1, 0), new("a", 1, 1), new("b", 1, 0), new("a", 2, 0)], told.Where(seen.IsNew));
    }
}
