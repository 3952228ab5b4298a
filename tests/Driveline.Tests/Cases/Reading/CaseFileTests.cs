using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

public class CaseFileTests
{
    [Fact]
    public void With_NewValue_IsReadAndTheRestStays()
    {
        CaseFile before = CaseReaderTests.ReadGood(Sample.BrushCutter);
        CaseFile after = before.With("driveline[1].shearBolt.grade", "\"SAE 5\"").Case!;
        Assert.Equal("SAE 5", after.Bolt(1).Written(ShearBoltMembers.Grade));
        Assert.Equal("SAE 2", before.Bolt(1).Written(ShearBoltMembers.Grade));
        Assert.Equal(before, after.With("driveline[1].shearBolt.grade", "\"SAE 2\"").Case);
    }

    [Fact]
    public void With_PathThroughWhatIsMissing_MakesIt()
    {
        CaseFile file = CaseFile.Empty.With("work.engagement.peak", "{ \"low\": \"200 N.m\" }").Case!;
        Assert.Equal(CaseReaderTests.ReadGood("""{ "work": { "engagement": { "peak": { "low": "200 N.m" } } } }"""), file);
        Assert.True(file.IsStated("work"));
        Assert.False(file.IsStated("strike"));
    }

    [Fact]
    public void With_Null_TakesAway()
    {
        CaseFile file = CaseReaderTests.ReadGood(Sample.BrushCutter);
        Assert.False(file.With("work", null).Case!.IsStated("work"));
        Assert.Equal(file, file.With("strike.kind", null).Case);
        Assert.Equal(["drive tube", "main", "blades"],
            file.With("driveline[1]", null).Case!.Facts.Get(CaseFileMembers.Driveline).Select(CaseElements.NameOf));
    }

    [Fact]
    public void With_WrongValue_IsRefusedAtItsPlaceInTheNewText()
    {
        CaseReadResult read = CaseReaderTests.ReadGood("""{ "title": "t" }""").With("tractor.ptoSpeed", "\"3001 rpm\"");
        CaseError error = Assert.Single(read.Errors);
        Assert.Equal("tractor.ptoSpeed (line 4, column 17): This must be above 0 rpm, up to 3000 rpm; got \"3001 rpm\".", error.ToString());
    }

    [Theory]
    [InlineData("title.x", "1", "leads nowhere")]
    [InlineData("driveline[9]", "{}", "leads nowhere")]
    [InlineData("driveline[9].shaft", "\"s\"", "leads nowhere")]
    [InlineData("title", "not json", "must be JSON text")]
    [InlineData("title", "null", "must not be null")]
    [InlineData(" ", "1", "Path")]
    public void With_NoSuchPlaceOrNoJson_IsRefused(string path, string json, string says)
    {
        CaseFile file = CaseReaderTests.ReadGood("""{ "title": "t", "driveline": [ { "shaft": "s" } ] }""");
        Assert.Contains(says, Assert.ThrowsAny<ArgumentException>(() => file.With(path, json)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void IsStated_NoMemberOfACase_IsRefused() =>
        Assert.Contains(
            "it may have $schema, format, title, notes", Assert.Throws<ArgumentException>(() => CaseFile.Empty.IsStated("titel")).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Equality_DifferentUnitsOfOneValue_AreEqual() => Assert.Equal(
        CaseReaderTests.ReadGood("""{ "tractor": { "ptoPower": "26 kW" } }"""),
        CaseReaderTests.ReadGood("""{ "tractor": { "ptoPower": "26000 W" } }"""));

    [Fact]
    public void Text_Parsed_IsWrittenAsItWasRead()
    {
        CaseFile file = CaseReaderTests.ReadGood(
            """{ "driveline": [ { "shearBolt": { "thread": "1/2 in", "grade": "gr. 5", "hardness": "28 hrc" } } ] }""");
        Assert.Equal("1/2-13 UNC", file.Bolt(0).Get(ShearBoltMembers.Thread)!.Designation);
        string written = CaseWriter.ToJson(file);
        Assert.All(new[] { "1/2 in", "gr. 5", "28 hrc" }, text => Assert.Contains("\"" + text + "\"", written, StringComparison.Ordinal));
    }

    [Fact]
    public void Writer_ShortQuantities_StayReadable() => Assert.Equal(
        """
        {
          "title": "½ “a”",
          "tractor": {
            "ptoPower": "35 hp",
            "ptoSpeed": "540 rpm"
          },
          "driveline": [
            {
              "shearBolt": {
                "thread": "M10",
                "shaftDiameter": "31.75 mm"
              }
            },
            {
              "gearbox": "main",
              "ratio": 1.47,
              "damagedAt": {
                "low": "2100 N.m"
              }
            }
          ]
        }
        """.Replace("\r\n", "\n", StringComparison.Ordinal),
        CaseWriter.ToJson(CaseReaderTests.ReadGood("""
            { "title": "½ “a”", "tractor": { "ptoSpeed": "540 rpm", "ptoPower": "35 hp" },
              "driveline": [ { "shearBolt": { "shaftDiameter": "1 1/4 in", "thread": "M10" } }, { "gearbox": "main", "ratio": 1.47,
                "damagedAt": { "low": "2100 N.m" } } ] }
            """)).Replace("\r\n", "\n", StringComparison.Ordinal));

    [Theory]
    [InlineData("ptoPwer", "ptoPower")]
    [InlineData("PTOPOWER", "ptoPower")]
    [InlineData("ptoTpye", "ptoType")]
    [InlineData("zebra", null)]
    [InlineData("", null)]
    public void NearestName_Slip_FindsTheMember(string written, string? expected) =>
        Assert.Equal(expected, NearestName.Of(written, TractorMembers.Table.Members.Select(m => m.Name)));

    [Theory]
    [InlineData("", "abc", 3)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("abcd", "abdc", 1)]
    [InlineData("same", "same", 0)]
    public void Changes_WorkedPairs_AreCounted(string a, string b, int expected) => Assert.Equal(expected, NearestName.Changes(a, b));
}
