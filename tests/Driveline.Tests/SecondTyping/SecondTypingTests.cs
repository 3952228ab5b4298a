namespace Driveline.Tests.SecondTyping;

/// <summary>Reference tables against what somebody typed a second time without having seen them.</summary>
public sealed class SecondTypingTests
{
    public static TheoryData<string> Tables => [.. TypedValue.All.Select(v => v.Table).Distinct()];

    [Theory]
    [MemberData(nameof(Tables))]
    public void SecondTyping_OfEachValue_AgreesWithTheFirst(string table) =>
        Assert.Empty(TypedValue.All.Where(v => v.Table == table && !v.MayDiffer && !v.Agrees())
            .Select(v => v.Place + ": typed again " + v.Second));

    [Fact]
    public void SecondTyping_ThatMayDiffer_DiffersWhereTheFirstSaysThatCopiesConflict()
    {
        TypedValue[] differing = [.. TypedValue.All.Where(v => v.MayDiffer)];
        Assert.All(differing, v => Assert.False(v.Agrees(), v.Place + " agrees"));
        Assert.All(differing, v => Assert.Equal("conflicting", v.FirstRow()["confidence"]));
    }

    [Fact]
    public void SecondTyping_TypesEachValueOnce() =>
        Assert.Empty(TypedValue.All.GroupBy(v => v.Table + ": " + v.Place).Where(g => g.Count() > 1).Select(g => g.Key));

    // Whoever extends a table types it again there, too. C 125 is left out, as its tests do: the print contradicts itself.
    [Fact]
    public void SecondTyping_OfClassesGradesAndDiscs_HasEveryRow()
    {
        Assert.Empty(Missing("fasteners", "iso-898-1-classes.csv", r => r.Has("Rm_min_MPa")));
        Assert.Empty(Missing("fasteners", "sae-j429-grades.csv", r => r["grade"] != "5 (A449-type)"));
        Assert.Empty(Missing("clutch", "disc-spring-examples.csv", r => r["kind"] == "table" && r["id"] != "DC125"));
    }

    private static IEnumerable<string> Missing(string pack, string file, Func<ReferenceRow, bool> wanted) =>
        ReferenceTable.Read(pack, file).Where(wanted).Select(r => r.ToString())
            .Except(TypedValue.All.Where(v => v.Table == pack + "/" + file).Select(v => v.FirstRow().ToString()));
}
