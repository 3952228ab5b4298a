using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

public partial class ChoiceTextTests
{
    private static readonly ReportOptions Spanish = ReportOptions.Default.WithLanguage(Language.Spanish);

    public static TheoryData<string> Demos => [.. DemoCases.Names];

    public static TheoryData<string> MadeUp => ReportCases.Names;

    [Theory]
    [InlineData("thornbeck-bolt-right",
        "Keep the manual's bolt, 3/8-16 UNC SAE 5: it acts in time and stays quiet, as far as the numbers go.")]
    [InlineData("thornbeck-bolt-right", "Bolts in place of the shear bolt, most room first")]
    [InlineData("thornbeck-bolt-right",
        "3/8-16 UNC SAE 8 (stronger than fitted, STRONGER than the manual's): Only the size and grade in the machine's manual, unless "
            + "its maker agrees.")]
    [InlineData("ravensmoor-rock", "Keep the manual's bolt, 5/16-18 UNC SAE 5:")]
    [InlineData("thornbeck-too-soft", "The manual's bolt, 3/8-16 UNC SAE 5, is not sure both to act in time and to stay quiet")]
    [InlineData("thornbeck-too-soft",
        "3/8-16 UNC SAE 8 (stronger than fitted, STRONGER than the manual's): Only the size and grade in the machine's manual")]
    [InlineData("thornbeck-too-strong", "M12 ISO 8.8: loose in its hole")]
    [InlineData("thornbeck-too-soft", "Put that one back before you think of any other.")]
    [InlineData("thornbeck-seized-hub", "Free and grease the hub first.")]
    [InlineData("thornbeck-seized-hub", "638 to no known end")]
    [InlineData("saltmere-spreader-pin", "pin 8 mm HRC 28: it acts in time and stays quiet")]
    [InlineData("ashby-lane-facts-missing", "No bolt is offered.")]
    [InlineData("ashby-lane-facts-missing", "DANGER: Nothing is offered")]
    [InlineData("hollinmoor-no-bolt-fits", "is not sure both to act in time and to stay quiet")]
    public void Text_Demo_Says(string name, string words) =>
        Assert.Contains(words, OneLine(ChoiceText.Of(Demo(name))), StringComparison.Ordinal);

    [Theory]
    [InlineData("thornbeck-bolt-right", "Siga con el perno del manual, 3/8-16 UNC SAE 5: actúa a tiempo")]
    [InlineData("thornbeck-bolt-right", "Pernos en lugar del perno fusible, primero el que más margen deja")]
    [InlineData("thornbeck-bolt-right", "1,59")]
    [InlineData("thornbeck-bolt-right", "Solo la medida y la clase del manual de la máquina, salvo que su fabricante esté de acuerdo.")]
    [InlineData("thornbeck-seized-hub", "638 a sin máximo conocido")]
    public void Text_DemoInSpanish_Says(string name, string words) =>
        Assert.Contains(words, OneLine(ChoiceText.Of(Demo(name), Spanish)), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Demos))]
    public void Text_AnyDemo_HasEveryCautionAndPlainPunctuation(string name)
    {
        BoltChoice choice = Demo(name);
        foreach (ReportOptions options in new[] { ReportOptions.Default, Spanish,
            ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary) })
        {
            Texts texts = Texts.In(options.Language);
            string text = OneLine(ChoiceText.Of(choice, options));
            Assert.All(choice.Cautions.Concat(choice.Choices.SelectMany(c => c.Cautions)),
                c => Assert.Contains(texts.Of(c.Code), text, StringComparison.Ordinal));
            Assert.EndsWith(texts.Of(choice.Cautions[^1].Code), text, StringComparison.Ordinal);
            Assert.DoesNotMatch(BadPunctuation(), text);
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Text_AnyDemo_NamesNoStrongerBoltInItsFirstSentenceAndTheManualsBlockFirst(string name)
    {
        BoltChoice choice = Demo(name);
        string text = OneLine(ChoiceText.Of(choice));
        int manuals = text.IndexOf("The manual's bolt ---", StringComparison.Ordinal);
        int ranking = text.IndexOf(", most room first", StringComparison.Ordinal);
        int consent = text.IndexOf("Would need the maker's consent", StringComparison.Ordinal);
        Assert.Equal(choice.Place is not null, manuals >= 0);
        Assert.True(ranking < 0 || manuals < ranking);
        foreach (RankedBolt stronger in choice.Choices.Where(c => c.IsStrongerThanSpecified == true))
        {
            Assert.True(consent > ranking && text.IndexOf(stronger.Item.Name, StringComparison.Ordinal) > 0);
            Assert.DoesNotContain(stronger.Item.Name, text[..manuals], StringComparison.Ordinal);
        }

        Assert.DoesNotContain("Another radius", text, StringComparison.Ordinal);
        Assert.DoesNotContain("The same kind of joint", text, StringComparison.Ordinal);
        Assert.DoesNotContain("A smaller bolt of a grade", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dunmarsh-clutch-never-slipped", "What the manual names lies in that range; set it to that.",
        "Lo que indica el manual está entre esos pares; ajústelo a eso.")]
    [InlineData("dunmarsh-clutch-well-set", "What the manual names lies in that range; set it to that.",
        "Lo que indica el manual está entre esos pares; ajústelo a eso.")]
    [InlineData("dunmarsh-clutch-rusted", "No setting of this clutch is offered.", "No se ofrece ningún ajuste de este embrague.")]
    [InlineData("wickerby-clutch-oiled", "Oil on the linings. Clean or replace them.", "Hay aceite en los forros. Límpielos o cámbielos.")]
    [InlineData("wickerby-clutch-too-hot", "Find what makes it slip before you touch its nuts.",
        "Busque qué lo hace patinar antes de tocar sus tuercas.")]
    [InlineData("wickerby-clutch-coil-bound", "Set them to the length in the manual.", "Póngalos a la longitud que indica el manual.")]
    public void Text_ClutchDemo_SaysInBothLanguages(string name, string english, string spanish)
    {
        IReadOnlyList<ClutchChoice> settings = DemoCases.Settings(name);
        Assert.Contains(english, OneLine(ChoiceText.Of(Demo(name), settings, ReportOptions.Default)), StringComparison.Ordinal);
        Assert.Contains(spanish, OneLine(ChoiceText.Of(Demo(name), settings, Spanish)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Language.English, "but the manual is not known to name such a setting. Only the spring length")]
    [InlineData(Language.Spanish, "pero no se sabe que el manual indique un ajuste así. Solo la longitud")]
    public void Text_ManualsTorqueNotStated_GivesTheRangeWithTheManualsWordsAndNoLength(Language language, string words)
    {
        IReadOnlyList<ClutchChoice> settings = CaseChoice.SettingsOf(
            DemoCases.Read("dunmarsh-clutch-never-slipped").With("specified", null).Case!);
        string text = OneLine(ChoiceText.Of(Demo("dunmarsh-clutch-never-slipped"), settings, ReportOptions.Default.WithLanguage(language)));
        Assert.Contains(words, text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"3\d[.,]\d+ mm", text);
    }

    [Theory]
    [InlineData("wickerby-clutch-oiled")]
    [InlineData("wickerby-clutch-too-hot")]
    [InlineData("wickerby-clutch-coil-bound")]
    [InlineData("dunmarsh-clutch-rusted")]
    public void Text_FaultyClutchOrManualNotStated_TellsNoLengthAndNoTurns(string name)
    {
        string text = OneLine(ChoiceText.Of(Demo(name), DemoCases.Settings(name), ReportOptions.Default));
        Assert.DoesNotContain("turns of every nut", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" long", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Text_AnyDemoWithSettings_HasEveryCautionAndPlainPunctuation(string name)
    {
        IReadOnlyList<ClutchChoice> settings = DemoCases.Settings(name);
        foreach (ReportOptions options in new[] { ReportOptions.Default, Spanish,
            ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary) })
        {
            Texts texts = Texts.In(options.Language);
            string text = OneLine(ChoiceText.Of(Demo(name), settings, options));
            Assert.All(settings.SelectMany(s => s.Cautions), c => Assert.Contains(texts.Of(c.Code), text, StringComparison.Ordinal));
            Assert.DoesNotMatch(BadPunctuation(), text);
            Assert.DoesNotMatch(@"choice\.|choosing\.", text);
        }
    }

    [Theory]
    [MemberData(nameof(MadeUp))]
    public void Text_AnyQuestion_IsPrintableAndEndsWithTheCautions(string name)
    {
        BoltChoice choice = BoltChoice.For(ReportCases.All[name].Question);
        string text = ChoiceText.Of(choice);
        Assert.DoesNotContain(text, c => char.IsControl(c) && c != '\n');
        Assert.Contains("stop the engine", OneLine(text), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Json_AnyDemo_IsTheChoiceInItsOrder(string name)
    {
        BoltChoice choice = Demo(name);
        using var stream = new MemoryStream();
        ChoiceJson.Of(choice).Write(stream);
        using JsonDocument json = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));
        JsonElement[] bolts = [.. json.RootElement.GetProperty("choices").EnumerateArray()];
        Assert.Equal(choice.Choices.Select(c => c.Item.Name),
            bolts.Select(b => b.GetProperty("thread").GetString() + " " + b.GetProperty("grade").GetString()));
        foreach ((RankedBolt bolt, JsonElement written) in choice.Choices.Zip(bolts))
        {
            Assert.Equal(bolt.Trip!.Low.NewtonMeters, written.GetProperty("tripTorqueNm").GetProperty("low").GetDouble());
            Assert.Equal(bolt.Trip.High is null, written.GetProperty("tripTorqueNm").GetProperty("high").ValueKind == JsonValueKind.String);
            Assert.Equal(bolt.GuardMargin > 0 ? bolt.GuardMargin : null, Number(written, "guardMargin"));
            Assert.Equal(bolt.WorkMargin > 0 ? bolt.WorkMargin : null, Number(written, "workMargin"));
            Assert.Equal(bolt.PassProbability is null, Number(written, "passProbability") is null);
            Assert.InRange(Number(written, "passProbability") ?? 0.5, 0.001, 0.999);
            Assert.Equal(bolt.Cautions.Select(c => c.Code),
                written.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()));
        }

        Assert.Equal(choice.Findings.Select(f => f.Code),
            json.RootElement.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()));
        Assert.Equal(choice.Cautions.Count, json.RootElement.GetProperty("cautions").GetArrayLength());
    }

    [Fact]
    public void Margin_NothingBoundsTheTrip_IsNotKnown()
    {
        BoltChoice choice = Demo("thornbeck-seized-hub");
        using var stream = new MemoryStream();
        ChoiceJson.Of(choice).Write(stream);
        using JsonDocument json = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));
        Assert.All(json.RootElement.GetProperty("choices").EnumerateArray(),
            c => Assert.Equal(JsonValueKind.Null, c.GetProperty("guardMargin").ValueKind));
        string text = OneLine(ChoiceText.Of(choice));
        Assert.Contains("we don't know", text, StringComparison.Ordinal);
        Assert.DoesNotContain("0.00", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" %", text, StringComparison.Ordinal);
        Assert.DoesNotContain("10000", text, StringComparison.Ordinal);
    }

    private static BoltChoice Demo(string name) => DemoCases.Choice(name);

    private static double? Number(JsonElement of, string name) =>
        of.GetProperty(name) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;

    private static string OneLine(string text) => Space().Replace(text, " ").Trim();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"[.,;:]{2}|\s[.,;:]|\{|\}|\(\)|NaN|∞")]
    private static partial Regex BadPunctuation();
}
