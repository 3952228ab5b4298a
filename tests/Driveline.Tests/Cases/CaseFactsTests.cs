using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Cases;

public class CaseFactsTests
{
    [Fact]
    public void With_BeyondItsRange_NamesRangeAndValue()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => TractorFacts.Empty.WithPtoSpeed(RotationalSpeed.FromRevolutionsPerMinute(3001)));
        Assert.Contains("ptoSpeed must be above 0 rpm, up to 3000 rpm; got 3001 rpm.", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => TractorFacts.Empty.WithPtoType(5));
        Assert.Throws<ArgumentOutOfRangeException>(() => CaseFile.Empty.WithTitle(""));
        Assert.Throws<ArgumentOutOfRangeException>(() => CaseFile.Empty.WithDate(new DateTime(2026, 1, 1, 12, 0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearBoltFacts.Empty.WithHub((HubState)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkFacts.Empty.WithPeaksPerHour(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => DrivelineElement.Named(ElementKind.NotKnown, "x"));
        Assert.Throws<ArgumentOutOfRangeException>(() => DrivelineElement.Named(ElementKind.Branch, "x"));
        Assert.Throws<ArgumentException>(() => CaseFile.Empty.WithTitle("\uD800"));
        Assert.Throws<ArgumentException>(() => ShearBoltFacts.Empty.WithThread("M10 x"));
        Assert.Throws<ArgumentException>(() => CaseFile.Empty.WithDriveline([null!]));
    }

    [Fact]
    public void With_BandOfAnotherBasis_IsRefused()
    {
        TorqueBand remembered = TorqueBand.Exactly(Torque.FromNewtonMeters(5), Basis.FromMemory("somewhere"));
        var error = Assert.Throws<ArgumentException>(() => TractorFacts.Empty.WithStubDamagedAt(remembered));
        Assert.Contains("FromMemory: somewhere", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void With_Null_MakesTheFactUnknownAgain()
    {
        TractorFacts tractor = TractorFacts.Empty.WithPtoType(1);
        Assert.False(tractor.IsEmpty);
        Assert.Equal(TractorFacts.Empty, tractor.WithPtoType(null));
        Assert.Equal(ShearBoltFacts.Empty, ShearBoltFacts.Empty.WithHub(HubState.Free).WithHub(HubState.NotKnown));
        Assert.Equal(CaseFile.Empty, CaseFile.Empty.WithTractor(TractorFacts.Empty).WithDriveline([]));
    }

    [Fact]
    public void Equality_DifferentUnitsOfOneValue_AreEqual() => Assert.Equal(
        TractorFacts.Empty.WithPtoPower(Power.FromKilowatts(26)),
        TractorFacts.Empty.WithPtoPower(Power.FromWatts(26000)));

    [Fact]
    public void Writer_Contradiction_IsRefused()
    {
        CaseFile contradiction = CaseFile.Empty.WithPartsComplete(true);
        var error = Assert.Throws<ArgumentException>(() => CaseWriter.Write(contradiction));
        Assert.Contains("no driveline is stated", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Writer_NestedTooDeep_IsRefused()
    {
        DrivelineElement element = DrivelineElement.Named(ElementKind.Shaft, "s");
        for (int i = 0; i < 100; i++)
        {
            element = DrivelineElement.OfBranch("b", RatioBand.Exactly(0.5, Basis.Given("the case")), [element]);
        }

        var error = Assert.Throws<ArgumentException>(() => CaseWriter.Write(CaseFile.Empty.WithDriveline([element])));
        Assert.Contains("at most 64 deep", error.Message, StringComparison.Ordinal);
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
              "driveline": [ { "shearBolt": { "shaftDiameter": "1 1/4 in", "thread": "M10" } }, { "gearbox": "main", "ratio": 1.47, "damagedAt": { "low": "2100 N.m" } } ] }
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
