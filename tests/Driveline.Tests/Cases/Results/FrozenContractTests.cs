#if !NETSTANDARD_BUILD
using System.Text.RegularExpressions;
using Driveline.Cases.Results;

namespace Driveline.Tests.Cases;

/// <summary>
/// What a program may rely on under one number of the contract: each member it held is still there and holds the same; a choice may have
/// more words. A contract of another number has a list of its own, written from results.md on the day it is frozen.
/// </summary>
public partial class FrozenContractTests
{
    private static string Frozen => File.ReadAllText(Path.Combine(
        AppContext.BaseDirectory, "approved", FormattableString.Invariant($"contract-{ResultDocument.Contract}.txt")));

    [Fact]
    public void Contract_EveryMemberOfItsNumber_HoldsWhatItHeld()
    {
        Dictionary<string, string> now = Rows(ResultDocs.Markdown());
        string[] frozen = Frozen.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.True(frozen.Length > 500, "the list must hold every member");
        Assert.All(frozen, line =>
        {
            string[] parts = line.Split(": ", 2);
            Assert.True(now.TryGetValue(parts[0], out string? value), parts[0] + " is gone: that is another contract");
            Assert.True(Keeps(parts[1], value), parts[0] + " was " + parts[1] + " and is " + value + ": that is another contract");
        });
    }

    [Theory]
    [InlineData("`A`, `B`", "`A`, `B`, `C`", true)]
    [InlineData("`A`, `B`", "`A`", false)]
    [InlineData("`A`", "`A` or null", false)]
    [InlineData("number, \"unbounded\" or null", "number, \"unbounded\" or null", true)]
    [InlineData("text", "text or null", false)]
    [InlineData("[band](#band) or null", "[band](#band)", false)]
    public void Contract_AValueThatChanges_IsKeptOnlyWhereWordsAreAdded(string was, string now, bool isKept) =>
        Assert.Equal(isKept, Keeps(was, now));

    private static bool Keeps(string was, string now)
    {
        string[] before = Words(was);
        return before.Length == 0
            ? was == now
            : before.All(Words(now).Contains) && IsMaybe(was) == IsMaybe(now);
    }

    private static bool IsMaybe(string value) => value.EndsWith(" or null", StringComparison.Ordinal);

    private static string[] Words(string value) => [.. Word().Matches(value).Select(m => m.Value)];

    private static Dictionary<string, string> Rows(string page)
    {
        var rows = new Dictionary<string, string>(StringComparer.Ordinal);
        string section = string.Empty;
        foreach (string line in page.Split('\n'))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                section = line[3..];
            }
            else if (Row().Match(line) is { Success: true } row)
            {
                rows.Add(section + "." + row.Groups[1].Value, row.Groups[2].Value);
            }
        }

        return rows;
    }

    [GeneratedRegex(@"^\| `([^`]+)` \| (.*?) \| ")]
    private static partial Regex Row();

    [GeneratedRegex("`[^`]+`")]
    private static partial Regex Word();
}
#endif
