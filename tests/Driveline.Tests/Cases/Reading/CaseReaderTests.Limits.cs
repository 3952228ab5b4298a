using System.Text;
using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

public partial class CaseReaderTests
{
    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    public void Depth_TenThousandBrackets_GivesOneErrorAtOnce(char bracket)
    {
        string nested = bracket == '[' ? new string('[', 10000) : string.Concat(Enumerable.Repeat("{\"a\":", 10000));
        CaseReadResult result = Timed(() => CaseReader.Read(nested));
        CaseError error = Assert.Single(result.Errors);
        Assert.Equal(CaseErrorKind.TooDeep, error.Kind);
        Assert.Contains("at most 64 deep", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(63, CaseErrorKind.UnknownMember)]
    [InlineData(64, CaseErrorKind.TooDeep)]
    public void Depth_Boundary_IsSixtyFour(int lists, CaseErrorKind expected) =>
        Assert.Equal(expected, ReadOneError("{ \"a\": " + new string('[', lists) + new string(']', lists) + " }").Kind);

    [Fact]
    public void Size_FourMebibytes_IsReadAndOneByteMoreIsNot()
    {
        string padded = "{ \"title\": \"x\" }".PadRight(CaseReader.LargestBytes);
        Assert.True(Timed(() => CaseReader.Read(padded)).IsRead);
        Assert.True(CaseReader.Read(new MemoryStream(Encoding.UTF8.GetBytes(padded))).IsRead);
        foreach (CaseReadResult result in new[]
        {
            CaseReader.Read(padded + " "),
            CaseReader.Read(Encoding.UTF8.GetBytes(padded + " ")),
            CaseReader.Read(new MemoryStream(Encoding.UTF8.GetBytes(padded + " "))),
        })
        {
            Assert.Equal(CaseErrorKind.TooLarge, Assert.Single(result.Errors).Kind);
        }
    }

    [Theory]
    [InlineData("\"abcdefgh\":1,", "{", "}")]
    [InlineData("\"a\":1,", "{", "}")]
    [InlineData("\"\u00e9\":1,", "{", "}")]
    public void Errors_FourMebibytesOfThem_StopAtAThousandInUnderASecond(string part, string begin, string end)
    {
        int count = (CaseReader.LargestBytes - 50) / Encoding.UTF8.GetByteCount(part);
        string json = begin + string.Concat(Enumerable.Repeat(part, count)).TrimEnd(',') + end;
        CaseReadResult result = Timed(() => CaseReader.Read(json));
        Assert.Equal(1001, result.Errors.Count);
        Assert.Contains(result.Errors, e => e.Kind == CaseErrorKind.TooMany);
    }

    [Fact]
    public void Driveline_FourMebibytesOfElements_IsRefusedInUnderASecond()
    {
        string json = "{\"driveline\":[" + string.Concat(Enumerable.Repeat("{},", 1_390_000)).TrimEnd(',') + "]}";
        CaseReadResult result = Timed(() => CaseReader.Read(json));
        Assert.Equal(201, result.Errors.Count);
        Assert.Contains(result.Errors, e => e.Message.Contains("got 1390000", StringComparison.Ordinal));
    }

    [Fact]
    public void Driveline_TwoHundredElements_AreReadAndOneMoreIsNot()
    {
        string Of(int count) => "{ \"driveline\": [" + string.Join(",", Enumerable.Repeat("{ \"shaft\": \"s\" }", count)) + "] }";
        Assert.Equal(200, ReadGood(Of(200)).Facts.Get(CaseFileMembers.Driveline).Count);
        Assert.Contains("at most 200 elements; got 201", ReadOneError(Of(201)).Message, StringComparison.Ordinal);
    }
}
