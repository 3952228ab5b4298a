using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Reports in Spanish, read whole.</summary>
public partial class SpanishReportTests
{
    private static readonly ReportOptions Spanish = ReportOptions.Default.WithLanguage(Language.Spanish);

    public static TheoryData<string> Demos => [.. DemoCases.Names];

    public static TheoryData<string> Clutches => [.. DemoCases.Names.Where(n => CaseClutch.AllOf(DemoCases.Read(n)).Count > 0)];

    public static TheoryData<string> MadeUp => ReportCases.Names;

    [Theory]
    [InlineData("Protegido, pero por poco: un 3 % más de lo necesario, con cifras recordadas que pueden errar otro tanto.")]
    [InlineData("Las tres preguntas ------------------ - ¿Cederá antes de que se rompa algo caro? Sí. La pieza más justa es el eje en el "
        + "agujero del perno: resiste un 3 % más de lo que aguanta como máximo el perno fusible.")]
    [InlineData("¿Le dejará trabajar tranquilo? Sí. Como mínimo el perno fusible aguanta un 59 % más de lo que "
        + "exige el pico más alto del trabajo normal.")]
    [InlineData("Qué (en N·m) Más bajo Más probable Más alto")]
    [InlineData("Trabajo normal 420 500 650")]
    [InlineData("Lo mismo que especifica el manual.")]
    [InlineData("Eje de la toma de fuerza (tipo 1): sí. La protege el perno fusible, por el lado del trabajo.")]
    [InlineData("Drive tube: sí.")]
    [InlineData("Los números por encima de 1 dejan margen. Un perno más resistente que el del manual es una modificación de la máquina: "
        + "solo su fabricante puede permitirlo.")]
    [InlineData("Nota: El agujero de 9,52 mm a través del eje de 31,8 mm deja")]
    [InlineData("Para esta respuesta no hace falta nada más.")]
    [InlineData("El número más débil en que se apoya es de memoria: nadie lo ha comprobado (relación esperada más dos desviaciones "
        + "típicas (unos 0,03) de ensayos con pernos sueltos).")]
    [InlineData("Tenga cuidado ------------- - Antes de acercar las manos a la transmisión cardán: desconecte la toma de fuerza, pare "
        + "el motor, saque la llave y espere a que todo haya dejado de girar. - No haga funcionar nunca")]
    public void Text_DemoInWhichAllIsWell_Says(string words) =>
        Assert.Contains(words, OneLine(VerdictText.Of(DemoCases.Verdict("thornbeck-bolt-right"), Spanish)), StringComparison.Ordinal);

    [Theory]
    [InlineData("thornbeck-unmarked", "Puede que no proteja: es dudoso que actúe antes de que se dañe una pieza.")]
    [InlineData("thornbeck-unmarked", "PELIGRO: 1/2-13 UNC, perno en pulgadas sin marca: nada indica cuánto aguanta como máximo.")]
    [InlineData("thornbeck-unmarked", "sin máximo conocido")]
    [InlineData("thornbeck-too-strong", "MÁS RESISTENTE que lo que especifica el manual")]
    [InlineData("thornbeck-seized-hub",
        "El cubo está agarrotado. Con el perno cortado o quitado, el eje puede seguir moviendo la máquina: el perno no protege nada.")]
    [InlineData("hollinmoor-no-bolt-fits", "Pare: el trabajo es más duro de lo que aguanta la pieza más débil.")]
    [InlineData("hollinmoor-no-bolt-fits", "No. El perno fusible aguanta, según el cálculo, más que «drive shaft».")]
    [InlineData("ashby-lane-facts-missing", "No se ha identificado el perno fusible: nadie puede decir con qué par actúa.")]
    [InlineData("ashby-lane-facts-missing", "tiene y su lista no: "
        + "el eje de la toma de fuerza del tractor, una junta cardán, un rotor.")]
    [InlineData("ashby-lane-facts-missing", "Fuera del orden anterior, por desconocerse: perno fusible, drive shaft, gearbox.")]
    public void Text_Demo_Says(string name, string words) =>
        Assert.Contains(words, OneLine(VerdictText.Of(DemoCases.Verdict(name), Spanish)), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Demos))]
    public void AnyForm_Demo_HasNoEnglishButTheNamesOfTheCase(string name)
    {
        ProtectionVerdict verdict = DemoCases.Verdict(name);
        string[] ofTheCase =
            [.. verdict.Parts.Select(p => p.Part.Name).Concat(verdict.Devices.Select(d => d.Device.Name)).OrderByDescending(n => n.Length)];
        foreach (string form in new[] { VerdictText.Of(verdict, Spanish), VerdictMarkdown.Of(verdict, Spanish),
            TorqueLadderPicture.Svg(verdict, Spanish) })
        {
            string text = ofTheCase.Aggregate(
                OneLine(Tag().Replace(form, " ")), (t, n) => t.Replace(n, string.Empty, StringComparison.OrdinalIgnoreCase));
            Assert.DoesNotMatch(EnglishWord(), text);
        }
    }

    [Theory]
    [MemberData(nameof(Clutches))]
    public void ClutchText_Demo_HasNoEnglishButTheNamesOfTheCase(string name)
    {
        CaseClutch clutch = CaseClutch.AllOf(DemoCases.Read(name))[0];
        foreach (ClutchReview review in new[] { clutch.Review(), clutch.ReviewSetTo(UnitsNet.Torque.FromNewtonMeters(500)),
            clutch.ReviewSetTo(UnitsNet.Torque.FromNewtonMeters(5000)) })
        {
            string text = OneLine(ClutchText.Of(review, Driveline.Clutches.ServiceProcedure.All, Spanish))
                .Replace(clutch.Device.Name, string.Empty, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotMatch(EnglishWord(), text);
            Assert.DoesNotMatch(@"\b(clutch|clutchReport|caution|report|severity)\.[a-zA-Z]|\{", text);
        }
    }

    [Theory]
    [MemberData(nameof(MadeUp))]
    public void AnyForm_AnyVerdict_EndsWithEveryCaution(string name)
    {
        ProtectionVerdict verdict = ReportCases.All[name];
        string cautions = "Tenga cuidado ------------- - " + string.Join(" - ", verdict.Cautions.Select(c => Texts.Spanish.Of(c.Code)));
        Assert.EndsWith(cautions, OneLine(VerdictText.Of(verdict, Spanish)), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(MadeUp))]
    public void AnyForm_AnyVerdict_HasNoCodeLeft(string name) => Assert.DoesNotMatch(
        @"\b(gap|guards|quiet|answer|measure|rung|part|side|report|headline|name|margin)\.[A-Za-z]",
            VerdictText.Of(ReportCases.All[name], Spanish));

    [Fact]
    public void Html_Spanish_SaysItsLanguage()
    {
        ProtectionVerdict verdict = ReportCases.All["protected"];
        Assert.Contains("<html lang=\"es\" ", VerdictHtml.Of(verdict, Spanish), StringComparison.Ordinal);
        Assert.Contains("<html lang=\"en\" ", VerdictHtml.Of(verdict), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_Spanish_ChangesMessagesAndNothingElse()
    {
        ProtectionVerdict verdict = DemoCases.Verdict("thornbeck-too-strong");
        using JsonDocument english = Json(verdict, Language.English);
        using JsonDocument spanish = Json(verdict, Language.Spanish);
        Assert.Equal(Data(english.RootElement), Data(spanish.RootElement));
        Assert.All(
            english.RootElement.GetProperty("findings").EnumerateArray().Zip(spanish.RootElement.GetProperty("findings").EnumerateArray()),
            pair => Assert.NotEqual(pair.First.GetProperty("text").GetString(), pair.Second.GetProperty("text").GetString()));
        Assert.StartsWith("Antes de acercar las manos", spanish.RootElement.GetProperty("cautions")[0].GetProperty("text").GetString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_Spanish_HasItsHeadingsAndComma()
    {
        string sheet = CalculationSheet.Markdown(
            "x", [new CalculationLine(new CalculationStep("torque", "T", "T = F · r", "N·m", "equilibrium"), 1.5)], [], Language.Spanish);
        Assert.Contains("= 1,5 N·m", sheet, StringComparison.Ordinal);
        Assert.Contains("(equilibrio)", sheet, StringComparison.Ordinal);
        Assert.Contains("## De dónde vienen los números", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Strength_Spanish_Says()
    {
        string text = OneLine(
            StrengthText.Of(BoltStrength.Of(Iso898.Class8_8, ScrewThread.Parse("M10")), DisplayUnits.Metric, Language.Spanish));
        Assert.Contains("Carga que lo rompe Más bajo Más probable Más alto", text, StringComparison.Ordinal);
        Assert.Contains("a cortadura, una sección por la rosca", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(EnglishWord(), text);
    }

    [Theory]
    [InlineData(3, "3 rayas radiales", "ADVERTENCIA: Una cabeza así (3 rayas radiales) puede ser: SAE 5")]
    [InlineData(0, "sin marca de clase", "como máximo, sin límite conocido")]
    public void Identify_Spanish_Says(int lines, string title, string words)
    {
        string text = OneLine(
            IdentifyText.Of(HeadMarks.Identify(lines, ScrewThread.Parse("1/2 in")), DisplayUnits.Metric, Language.Spanish));
        Assert.StartsWith("1/2-13 UNC, " + title, text, StringComparison.Ordinal);
        Assert.Contains(words, text, StringComparison.Ordinal);
        Assert.DoesNotMatch(EnglishWord(), text);
    }

    // The dotted and dotless i of Turkish, the comma of German: neither may show.
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void AnyForm_ForeignCulture_GivesTheSameBytes(string culture)
    {
        IReadOnlyDictionary<string, ProtectionVerdict> there = ForeignCulture.Verdicts(culture);
        foreach (string name in DemoCases.Names)
        {
            Assert.Equal(Everything(DemoCases.Verdict(name)), ForeignCulture.In(culture, () => Everything(there[name])));
        }
    }

    private static string[] Everything(ProtectionVerdict verdict)
    {
        using var json = new MemoryStream();
        VerdictJson.Of(verdict, ResultOptions.Default.WithLanguage(Language.Spanish).WithUnits(DisplayUnits.UsCustomary)).Write(json);
        ReportOptions us = Spanish.WithUnits(DisplayUnits.UsCustomary);
        return
        [
            Encoding.UTF8.GetString(json.ToArray()), VerdictText.Of(verdict, Spanish), VerdictText.Of(verdict, us),
            VerdictMarkdown.Of(verdict, Spanish), VerdictHtml.Of(verdict, us), TorqueLadderPicture.Svg(verdict, Spanish),
        ];
    }

    private static JsonDocument Json(ProtectionVerdict verdict, Language language)
    {
        using var stream = new MemoryStream();
        VerdictJson.Of(verdict, ResultOptions.Default.WithLanguage(language).WithUnits(DisplayUnits.Metric)).Write(stream);
        return JsonDocument.Parse(stream.ToArray());
    }

    // Every member but the words.
    private static string Data(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "{" + string.Join(
            ",", element.EnumerateObject()
                .Where(m => m.Name is not ("text" or "document" or "language" or "reason" or "liftedBy" or "caution" or "tryBefore"))
                .Select(m => m.Name + ":" + Data(m.Value))) + "}",
        JsonValueKind.Array => "[" + string.Join(",", element.EnumerateArray().Select(Data)) + "]",
        _ => element.GetRawText(),
    };

    private static string OneLine(string text) => Blank().Replace(text, " ").Trim();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(
        @"\b(the|and|of|is|it|not|known|bolt|shaft|clutch|torque|PTO|may|lines|read|unmarked|stub|power|limit|page)\b"
            + @"|[0-9]\.[0-9]+ (mm|MPa|kW|N·m|%)",
        RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWord();
}
