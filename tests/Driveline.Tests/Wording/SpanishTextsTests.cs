using System.Text.RegularExpressions;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

/// <summary>The Spanish texts are complete, take the same parameters and warn as the English ones do.</summary>
public partial class SpanishTextsTests
{
    /// <summary>Texts that read the same in both languages.</summary>
    private static readonly string[] SameInBoth = ["answer.No", "band.exactly", "basis.line", "quote.lead", "transient.rotor"];

    public static TheoryData<string> Codes => [.. Texts.English.Codes];

    [Fact]
    public void Codes_AreTheEnglishOnes()
    {
        Assert.Empty(Texts.English.Codes.Except(Texts.Spanish.Codes));
        Assert.Empty(Texts.Spanish.Codes.Except(Texts.English.Codes));
    }

    [Fact]
    public void Files_HaveTheSameCodesInTheSameOrder()
    {
        string[] english = Files("en");
        Assert.True(english.Length >= 14, "the files are not found");
        Assert.All(english, file => Assert.Equal(Keys("en", file), Keys("es", file)));
        Assert.Equal(["names.txt", "sources.txt", "steps.txt"], Files("es").Except(english).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Text_HasTheParametersOfTheEnglishOne(string code) =>
        Assert.Equal(Places(Texts.English.Of(code)), Places(Texts.Spanish.Of(code)));

    [Fact]
    public void Text_DiffersFromEnglish_ButForTheListed() =>
        Assert.Equal(
            SameInBoth.Order(StringComparer.Ordinal),
            Texts.English.Codes.Where(c => Texts.English.Of(c) == Texts.Spanish.Of(c)).Order(StringComparer.Ordinal));

    [Fact]
    public void Text_HasNoEnglishWord() => Assert.All(
        Texts.Spanish.Codes.Except(["overview.more"]),   // names an argument of the command line
        code => Assert.DoesNotMatch(EnglishWord(), Place().Replace(Texts.Spanish.Of(code), string.Empty)));

    [Fact]
    public void Text_EndsAsTheEnglishOneDoes() => Assert.All(
        Texts.English.Codes.Where(c => c != "quantity.decimalSign" && Texts.English.Of(c)[^1] is '.' or '?'),
        code => Assert.Equal(Texts.English.Of(code)[^1], Texts.Spanish.Of(code)[^1]));

    [Fact]
    public void Question_OpensWithItsMark() => Assert.All(
        Texts.Spanish.Codes.Select(Texts.Spanish.Of),
        text => Assert.Equal(text.Count(c => c == '?'), text.Count(c => c == '¿')));

    // A translation that loses a warning is worse than none.
    [Theory]
    [InlineData("key out|Take the key", "llave", 20)]
    [InlineData("[Ss]top the engine|engine off|engine stopped", "[Mm]otor parado|[Pp]are el motor", 5)]
    [InlineData("nobody near", "sin nadie cerca", 2)]
    [InlineData("protects nothing", "[Nn]o protege nada", 6)]
    [InlineData("[Nn]ever (run|fit|tighten|step|press)|Do not (work|press|run)", "[Nn]unca|[Nn]o (trabaje|los comprima)", 6)]
    [InlineData("^Stop if", "^Pare si", 5)]
    [InlineData("not known", "[Dd]esconocid|[Dd]esconoce|[Nn]o se (sabe|conoce)|no conocen|sin máximo conocido|tampoco", 40)]
    [InlineData("no known", "sin (límite|máximo|extremo)|no tiene", 5)]
    [InlineData("(?-i:STRONGER|DANGER|WARNING)", "MÁS RESISTENTE|PELIGRO|ADVERTENCIA", 4)]
    [InlineData("[Nn]obody (can say|has|knows)|Nobody publishes", "[Nn]adie", 10)]
    [InlineData("every year|yearly|Yearly", "cada año|anual", 2)]
    public void Warning_IsKept(string english, string spanish, int atLeast)
    {
        string[] warned = [.. Texts.English.Codes.Where(c => Regex.IsMatch(Texts.English.Of(c), english))];
        Assert.True(warned.Length >= atLeast, "only " + warned.Length + " English texts say it: the row proves little");
        Assert.All(warned, code => Assert.Matches(spanish, Texts.Spanish.Of(code)));
    }

    [Theory]
    [InlineData("caution.stopAndKeyOut",
        "desconecte la toma de fuerza, pare el motor, saque la llave y espere a que todo haya dejado de girar")]
    [InlineData("caution.strongerIsAChange", "consulte antes a su fabricante")]
    [InlineData("bolt.hubSeized", "el perno no protege nada")]
    [InlineData("clutch.stuck", "No trabaje hasta que se haya liberado y probado")]
    [InlineData("remedy.strongerBolt", "solo si el fabricante de la máquina está de acuerdo")]
    public void SafetyText_SaysIt(string code, string words) => Assert.Contains(words, Texts.Spanish.Of(code), StringComparison.Ordinal);

    private static string[] Places(string text) => [.. Place().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal)];

    private static string[] Files(string language) =>
    [
        .. typeof(Texts).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith("wording/" + language + "/", StringComparison.Ordinal))
            .Select(n => n["wording/en/".Length..]).Order(StringComparer.Ordinal),
    ];

    private static string[] Keys(string language, string file)
    {
        using var reader = new StreamReader(typeof(Texts).Assembly.GetManifestResourceStream("wording/" + language + "/" + file)!);
        return
        [
            .. reader.ReadToEnd().Split('\n').Where(l => l.Contains('=', StringComparison.Ordinal) && l[0] != '#')
                .Select(l => l[..l.IndexOf('=', StringComparison.Ordinal)].Trim()),
        ];
    }

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\b(the|and|of|is|it|not|with|bolt|shaft|clutch|torque|known|PTO)\b", RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWord();
}
