using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Wording;

namespace Driveline.Tests.Cases;

public class ResultWriterTests
{
    private static readonly JavaScriptEncoder Encoder = JavaScriptEncoder.Create(UnicodeRanges.All);

    [Fact]
    public void Number_OfAnySize_HasTheDigitsOfTheRoundTripFormat()
    {
        var numbers = new WrittenNumbers();
        var random = new Random(20261127);
        Span<byte> room = stackalloc byte[32];
        for (int k = 0; k < 200_000; k++)
        {
            double number = BitConverter.Int64BitsToDouble(random.NextInt64());
            number = k % 4 == 0 ? Math.Pow(10, (20 * random.NextDouble()) - 5) : number;
            number = k % 4 == 1 ? Math.Round(1e6 * random.NextDouble(), k % 7) : number;
            number = k % 40 == 2 ? Math.Pow(2, random.Next(-1074, 1024)) : number;
            if (double.IsFinite(number))
            {
                AssertDigits(numbers, number, room);
                AssertDigits(numbers, -number, room);
            }
        }
    }

    [Theory]
    [InlineData(0.0001, "0.0001")]
    [InlineData(0.00009, "9E-05")]
    [InlineData(0.1, "0.1")]
    [InlineData(0.30000000000000004, "0.30000000000000004")]   // 0.1 + 0.2
    [InlineData(1536.5, "1536.5")]
    [InlineData(-2.5, "-2.5")]
    [InlineData(9007199254740993.0, "9007199254740992")]   // 2^53 + 1 is no double
    [InlineData(1e300, "1E+300")]
    [InlineData(5e-324, "5E-324")]
    [InlineData(-0.0, "-0")]
    public void Number_WithAnEnd_IsWrittenShortest(double number, string digits)
    {
        Span<byte> room = stackalloc byte[32];
        int length = new WrittenNumbers().Put(number, room);
        Assert.Equal(digits, Encoding.UTF8.GetString(room[..length]));
    }

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void Document_OfAVerdict_IsWrittenAsUtf8JsonWriterWould(Language language)
    {
        CaseAssessment asked = CaseAssessment.Of(CaseReader.Read(DemoCases.Json("millbrook-feed-auger")));
        ResultDocument document = VerdictJson.Of(asked.Verdict(), ResultOptions.Default.WithCase(asked.File!).WithLanguage(language));
        for (int k = 0; k < 2; k++)
        {
            var compact = new ArrayBufferWriter<byte>();
            document.Write(compact);
            Assert.Equal(Again(compact.WrittenMemory, false), Encoding.UTF8.GetString(compact.WrittenSpan));
            Assert.Equal(Again(compact.WrittenMemory, true), document.ToJson());
        }
    }

    [Fact]
    public void Document_WithEveryKindOfText_EscapesWhatCouldEndAString()
    {
        const string Title = "quote \" back \\ slash / <b> & 'it' + ` tab \t line \u2028 é ° · € 𝄞 \uD800 \u0000 \u007F";
        ResultDocument document = VerdictJson.Of(CaseAssessment.Of(CaseFile.Empty).Verdict(), ResultOptions.Default.WithTitle(Title));
        var compact = new ArrayBufferWriter<byte>();
        document.Write(compact);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = Encoder }))
        {
            json.WriteStringValue(Title);
        }

        Assert.Contains("\"title\":" + Encoding.UTF8.GetString(stream.ToArray()) + ",", Encoding.UTF8.GetString(compact.WrittenSpan),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Document_WithinAnother_IsWrittenAsItIndents()
    {
        ResultDocument document = VerdictJson.Of(CaseAssessment.Of(CaseFile.Empty).Verdict());
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, Encoder = Encoder }))
        {
            document.Write(json);
        }

        Assert.Equal(document.ToJson(), Encoding.UTF8.GetString(stream.ToArray()));
    }

    [Fact]
    public async Task Documents_OfManyThreads_AreEachTheSame()
    {
        ResultDocument document = VerdictJson.Of(CaseAssessment.Of(Sample.BrushCutter).Verdict());
        string alone = document.ToJson();
        string[] all = await Task.WhenAll(Enumerable.Range(0, 32).Select(_ => Task.Run(document.ToJson)));
        Assert.All(all, json => Assert.Equal(alone, json));
    }

    private static string Again(ReadOnlyMemory<byte> written, bool isIndented)
    {
        using JsonDocument parsed = JsonDocument.Parse(written);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = Encoder, Indented = isIndented }))
        {
            parsed.RootElement.WriteTo(json);
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void AssertDigits(WrittenNumbers numbers, double number, Span<byte> room)
    {
        int length = numbers.Put(number, room);
        string expected = number.ToString("R", CultureInfo.InvariantCulture);
#if NETSTANDARD_BUILD
        // The digits of "R" for 2^-25 read back as its neighbour: that build writes 17 digits then, as .NET Framework needs more often.
        expected = double.Parse(expected, CultureInfo.InvariantCulture).Equals(number)
            ? expected : number.ToString("G17", CultureInfo.InvariantCulture);
#endif
        if (!Encoding.UTF8.GetString(room[..length]).Equals(expected, StringComparison.Ordinal))
        {
            Assert.Equal(expected, Encoding.UTF8.GetString(room[..length]));
        }
    }
}
