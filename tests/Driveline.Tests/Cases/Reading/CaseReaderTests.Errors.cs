using Driveline.Cases;

namespace Driveline.Tests.Cases;

public partial class CaseReaderTests
{
    [Fact]
    public void Errors_SeveralMistakes_AreAllListedWithPathAndPlace()
    {
        CaseReadResult result = CaseReader.Read("""
            {
              "titel": "x",
              "tractor": { "ptoPower": 26, "ptoSpeed": "5400 rpm" },
              "driveline": [
                { "shaft": "tube" },
                { "shearBolt": { "thread": "1/2-13 UNC", "shaftDiameter": "0.5 m" } }
              ]
            }
            """);
        Assert.Null(result.Case);
        Assert.Equal(
            ["titel", "tractor.ptoPower", "tractor.ptoSpeed", "driveline[1].shearBolt.shaftDiameter"], result.Errors.Select(e => e.Path));
        Assert.Equal([(2, 3), (3, 28), (3, 44), (6, 63)], result.Errors.Select(e => (e.Line, e.Column)));
        CaseError diameter = result.Errors[3];
        Assert.Equal(CaseErrorKind.OutOfRange, diameter.Kind);
        Assert.Equal("from 5 mm to 200 mm", diameter.Permitted);
        Assert.Equal("\"0.5 m\"", diameter.Received);
        Assert.Equal("driveline[1].shearBolt.shaftDiameter (line 6, column 63): This must be from 5 mm to 200 mm; got \"0.5 m\".",
            diameter.ToString());
        Assert.Equal("title", result.Errors[0].Nearest);
    }

    [Theory]
    [InlineData("""{ "tractor": { "ptoPwer": "26 kW" } }""", "tractor.ptoPwer", CaseErrorKind.UnknownMember, "did you mean \"ptoPower\"?")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "yokeStrength": "360 MPa" } } ] }""", "driveline[0].shearBolt.yokeStrength",
        CaseErrorKind.UnknownMember, "did you mean \"yokeYieldStrength\"?")]
    [InlineData("""{ "zzz": 1 }""", "zzz", CaseErrorKind.UnknownMember, "it may have $schema, format, title, notes, date")]
    [InlineData("""{ "title": "a", "title": "b" }""", "title", CaseErrorKind.DuplicateMember, "stated twice")]
    [InlineData("""{ "title": "a", "t\u0069tle": "b" }""", "title", CaseErrorKind.DuplicateMember, "stated twice")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "1 N.m", "low": "2 N.m" } } }""", "tractor.stubDamagedAt.low",
        CaseErrorKind.DuplicateMember, "stated twice")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "1 N.m", "hihg": "2 N.m" } } }""", "tractor.stubDamagedAt.hihg",
        CaseErrorKind.UnknownMember, "did you mean \"high\"?")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "high": "2 N.m" } } }""", "tractor.stubDamagedAt", CaseErrorKind.MissingMember,
        "A band needs low")]
    [InlineData("""{ "tractor": { "stubDamagedAt": "unbounded" } }""", "tractor.stubDamagedAt", CaseErrorKind.NotReadable,
        "does not begin with a number")]
    [InlineData("""{ "tractor": { "ptoPower": "26" } }""", "tractor.ptoPower", CaseErrorKind.NotReadable, "has no unit")]
    [InlineData("""{ "tractor": { "ptoPower": "26 N.m" } }""", "tractor.ptoPower", CaseErrorKind.NotReadable,
        "is a torque; here a power is wanted")]
    [InlineData("""{ "tractor": { "ptoPower": 26 } }""", "tractor.ptoPower", CaseErrorKind.WrongKind,
        "a power as a text with its unit (W, kW, hp, PS, MW) is wanted; got 26")]
    [InlineData("""{ "tractor": { "ptoPower": null } }""", "tractor.ptoPower", CaseErrorKind.WrongKind, "leave the member out")]
    [InlineData("""{ "tractor": { "ptoType": "1" } }""", "tractor.ptoType", CaseErrorKind.WrongKind,
        "a whole number from 1 to 4 is wanted; got \"1\"")]
    [InlineData("""{ "tractor": { "ptoType": 1.5 } }""", "tractor.ptoType", CaseErrorKind.OutOfRange, "got 1.5")]
    [InlineData("""{ "tractor": { "ptoType": 1e99 } }""", "tractor.ptoType", CaseErrorKind.OutOfRange, "got 1e99")]
    [InlineData("""{ "tractor": [] }""", "tractor", CaseErrorKind.WrongKind, "got a list")]
    [InlineData("""{ "driveline": {} }""", "driveline", CaseErrorKind.WrongKind, "got an object")]
    [InlineData("""{ "driveline": [ 5 ] }""", "driveline[0]", CaseErrorKind.WrongKind, "got 5")]
    [InlineData("""{ "partsComplete": "yes" }""", "partsComplete", CaseErrorKind.WrongKind, "true or false is wanted; got \"yes\"")]
    [InlineData("""{ "title": "" }""", "title", CaseErrorKind.OutOfRange, "1 to 200 characters; got 0")]
    [InlineData("""{ "title": "\uD800" }""", "title", CaseErrorKind.NotReadable, "half of a character pair")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "1 N.m", "high": "\uDC00" } } }""", "tractor.stubDamagedAt.high",
        CaseErrorKind.NotReadable, "half of a character pair")]
    [InlineData("""{ "implement": { "kind": "\uDC00" } }""", "implement.kind", CaseErrorKind.NotReadable, "half of a character pair")]
    [InlineData("""{ "\uD800": 1 }""", "[\"?\"]", CaseErrorKind.UnknownMember, "is not a member")]
    [InlineData("""{ "a b": 1 }""", "[\"a b\"]", CaseErrorKind.UnknownMember, "is not a member")]
    [InlineData("""{ "date": "31.05.2026" }""", "date", CaseErrorKind.NotReadable, "2026-05-31")]
    [InlineData("""{ "date": "2026-02-30" }""", "date", CaseErrorKind.NotReadable, "got \"2026-02-30\"")]
    [InlineData("""{ "implement": { "kind": "rotaryCuter" } }""", "implement.kind", CaseErrorKind.OutOfRange,
        "did you mean \"rotaryCutter\"?")]
    [InlineData("""{ "implement": { "kind": "notKnown" } }""", "implement.kind", CaseErrorKind.OutOfRange,
        "one of rotaryCutter, flailMower")]
    [InlineData("""{ "work": { "peaksPerHour": 1e999 } }""", "work.peaksPerHour", CaseErrorKind.OutOfRange, "got 1e999")]
    [InlineData("""{ "work": { "peaksPerHour": "40 kW" } }""", "work.peaksPerHour", CaseErrorKind.NotReadable,
        "is a power; here a plain number is wanted")]
    [InlineData("""{ "driveline": [ {} ] }""", "driveline[0]", CaseErrorKind.MissingMember, "needs one member that names its kind")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "ratio": 2 } ] }""", "driveline[0].ratio", CaseErrorKind.UnknownMember,
        "does not belong to \"shaft\"; it belongs to gearbox")]
    [InlineData("""{ "driveline": [ { "shearBolt": {}, "damagedAt": "5 N.m" } ] }""", "driveline[0].damagedAt", CaseErrorKind.UnknownMember,
        "does not belong to \"shearBolt\"")]
    [InlineData("""{ "driveline": [ { "branch": "b", "driveline": [] } ] }""", "driveline[0].powerShare", CaseErrorKind.MissingMember,
        "\"powerShare\" must be stated")]
    public void Mistake_Single_GivesOneErrorAtItsPath(string json, string path, CaseErrorKind kind, string words) =>
        AssertOneError(json, path, kind, words);

    [Theory]
    [InlineData("shearBolt.thread", "M10 x", "M10 x")]
    [InlineData("shearBolt.thread", "M\u0663", "M\u0663")]
    [InlineData("shearBolt.grade", "SAE 10", "Grade \"10\" is not in the SAE J429 data held here; held: 1, 2")]
    [InlineData("shearBolt.grade", "SAE 101", "held here")]
    [InlineData("shearBolt.grade", "rod oak", "not a rod material held here; held: ")]
    [InlineData("shearBolt.grade", "rod SAE 101", "may be SAE 1010")]
    [InlineData("shearBolt.hardness", "28", "such as HRC 28")]
    [InlineData("shearBolt.hardness", "HRC 90", "HRC")]
    [InlineData("shearBolt.springPin", "ISO 8752 7.77 mm", "held of that standard")]
    [InlineData("shearBolt.springPin", "ISO 8752 \u0663 mm", "\u0663")]
    [InlineData("specified.shearBolt.grade", "8.9", "is not a bolt grade held here; held: ")]
    public void BoltText_NotHeld_SaysWhatIs(string path, string text, string words)
    {
        CaseError error = ReadOneError(Sample.At(path, "\"" + text + "\""));
        Assert.EndsWith(path, error.Path, StringComparison.Ordinal);
        Assert.Equal(CaseErrorKind.NotReadable, error.Kind);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 1, 1, "is empty")]
    [InlineData(" \n ", 2, 2, "is empty")]
    [InlineData("{", 1, 2, "ends in the middle")]
    [InlineData("{ \"title\": \"x\" ", 1, 16, "ends in the middle")]
    [InlineData("{}x", 1, 3, "nothing after the end of the object; found 'x'")]
    [InlineData("{} {}", 1, 4, "nothing after the end of the object")]
    [InlineData("{ // note\n}", 1, 3, "Comments are not taken")]
    [InlineData("{ /* note */ }", 1, 3, "Comments are not taken")]
    [InlineData("{ \"work\": { \"peaksPerHour\": NaN } }", 1, 29, "NaN, Infinity")]
    [InlineData("{ \"work\": { \"peaksPerHour\": -Infinity } }", 1, 30, "Not JSON here")]
    [InlineData("{\n  \"title\": \"x\",\n}", 3, 1, "must not be followed by a comma")]
    [InlineData("{ 'title': 1 }", 1, 3, "double quotes")]
    [InlineData("{\n\"title\" \"x\" }", 2, 9, "Not JSON here: found '\"'")]
    public void Json_Invalid_GivesOneErrorAtItsPlace(string json, int line, int column, string words)
    {
        CaseError error = ReadOneError(json);
        Assert.Equal(CaseErrorKind.InvalidJson, error.Kind);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
        Assert.Equal((line, column), (error.Line, error.Column));
        Assert.Empty(error.Path);
    }

    [Theory]
    [InlineData("[]", "got a list")]
    [InlineData("5", "got 5")]
    [InlineData("\"case\"", "got \"case\"")]
    [InlineData("null", "got null")]
    public void Json_NoObject_IsTheWrongKind(string json, string words)
    {
        CaseError error = ReadOneError(json);
        Assert.Equal(CaseErrorKind.WrongKind, error.Kind);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Utf8_Invalid_IsNamed()
    {
        CaseError error = Assert.Single(CaseReader.Read([(byte)'{', (byte)'"', 0xFF, (byte)'"', (byte)'}']).Errors);
        Assert.Equal(CaseErrorKind.InvalidJson, error.Kind);
        Assert.Equal(3, error.Column);
        Assert.Contains("not UTF-8", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Column_AfterWideCharacters_CountsCharacters() =>
        Assert.Equal(16, ReadOneError("{ \"title\": \"é\", \"x\": 1 }".Replace("é\", ", "é\",", StringComparison.Ordinal)).Column);

    [Fact]
    public void Message_LongValue_IsCut()
    {
        CaseError error = ReadOneError(Sample.At("tractor.ptoPower", "\"" + new string('9', 5000) + "\""));
        Assert.True(error.ToString().Length < 300, error.ToString());
        error = ReadOneError("{ \"" + new string('n', 5000) + "\": 1 }");
        Assert.True(error.ToString().Length < 500, error.ToString());
    }
}
