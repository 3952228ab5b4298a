using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>A bolt that breaks as the PTO is engaged is the complaint itself; one that breaks in a strike did its work.</summary>
public class EngagementToneTests
{
    [Theory]
    [InlineData(Language.English, "Amber",
        "The shear bolt broke after 18 ms. It should hold when you engage the PTO: that it broke is itself the trouble. "
            + "Nothing else was overloaded.")]
    [InlineData(Language.Spanish, "Ámbar",
        "El perno fusible se rompió a los 18 ms. Debería aguantar al conectar la toma de fuerza: que se rompa ya es la avería. "
            + "No se sobrecargó nada más.")]
    public void Engagement_ThatBreaksTheBolt_IsAmberWhateverItSpares(Language language, string colour, string words)
    {
        string page = PageOf(DemoCases.Simulation("ravensmoor-clutch-dropped-in").Check!, language);
        Assert.Contains(
            "<p class=\"dl-lead dl-careful\"><strong class=\"dl-word\">" + colour + "</strong> " + words + "</p>", page,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ravensmoor-clutch-let-in-gently", "No protective device acted. Nothing was overloaded.")]
    [InlineData("ravensmoor-stump", "No protective device acted. Nothing was overloaded.")]
    public void Event_ThatBreaksNothing_IsGreen(string name, string words) => Assert.Contains(
        "<p class=\"dl-lead dl-good\"><strong class=\"dl-word\">Green</strong> " + words + "</p>",
        PageOf(DemoCases.Simulation(name).Check!, Language.English), StringComparison.Ordinal);

    [Fact]
    public void Strike_ThatBreaksTheBoltAndSparesEveryPart_IsGreen()
    {
        string page = PageOf(Stump("5 kN"), Language.English);
        Assert.Matches("dl-good\"><strong class=\"dl-word\">Green</strong> The shear bolt broke after [0-9]+ ms. "
            + "Nothing else was overloaded.</p>", page);
        Assert.DoesNotContain("itself the trouble", page, StringComparison.Ordinal);
    }

    // The picture's headline is the page's.
    [Fact]
    public void Picture_OfAnEngagementThatBreaksTheBolt_SaysThatItIsTheTrouble() => Assert.Contains(
        "that it broke is itself the trouble",
        SimulationPicture.Svg(DemoCases.Simulation("ravensmoor-clutch-dropped-in").Check!), StringComparison.Ordinal);

    [Theory]
    [InlineData("ravensmoor-clutch-dropped-in", "shear bolt", "it broke; it is the protection")]
    [InlineData("ravensmoor-clutch-let-in-gently", "shear bolt", "it held; it is the protection")]
    [InlineData("ravensmoor-rock", "shear bolt", "it broke; it is the protection")]
    [InlineData("ravensmoor-pan-on-stump", "shear bolt", "it may break; it is the protection")]
    [InlineData("ravensmoor-rusted-clutch-rock", "slip clutch", "it could not act; it is the protection")]
    public void Row_OfADevice_SaysWhatItDid(string name, string device, string words) =>
        Assert.EndsWith(words, RowOf(device, DemoCases.Simulation(name).Check!, Language.English), StringComparison.Ordinal);

    [Fact]
    public void Row_OfADeviceInSpanish_SaysWhatItDid() => Assert.EndsWith(
        "se rompió; es la protección",
        RowOf("perno fusible", DemoCases.Simulation("ravensmoor-clutch-dropped-in").Check!, Language.Spanish), StringComparison.Ordinal);

    // Its band is 709 to 1270 N·m, 952 expected; the blow puts 872 N·m on it: the expected bolt holds, a weak one does not.
    [Fact]
    public void Row_OfABoltWithinItsBand_SaysThatItMayBreak()
    {
        SimulationCheck check = Stump("4 kN");
        SimulatedLoad load = check.Loads.Single(l => l.Element is ShearBoltDevice);
        Assert.InRange(load.WithProtection!.Value.NewtonMeters, ((ShearBoltDevice)load.Element).Running!.Low.NewtonMeters, 952);
        Assert.False(check.With!.Tripped);
        Assert.EndsWith("it may break; it is the protection", RowOf("shear bolt", check, Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void TripTimeOf_EachDevice_IsThatOfTheFirstToAct()
    {
        SimulationCheck broken = DemoCases.Simulation("ravensmoor-clutch-dropped-in").Check!;
        Assert.Equal(broken.With!.TripTime, broken.With.TripTimeOf(broken.With.TrippedDevice!));
        Assert.Null(broken.Without!.TripTimeOf(broken.With.TrippedDevice!));
        Assert.Throws<ArgumentNullException>(() => broken.With.TripTimeOf(null!));
    }

    private static string RowOf(string device, SimulationCheck check, Language language) =>
        SimulationText.Of(check, In(language).WithTextWidth(200)).Split('\n')
            .Single(l => l.StartsWith(device + "  ", StringComparison.Ordinal));

    // A number and its unit stay on one line.
    private static string PageOf(SimulationCheck check, Language language) =>
        SimulationHtml.Of(check, In(language)).Replace('\u00A0', ' ');

    private static ReportOptions In(Language language) => ReportOptions.Default.WithLanguage(language);

    private static SimulationCheck Stump(string force) => CaseSimulation.Of(CaseReaderTests.ReadGood(DemoCases.Json("ravensmoor-stump")
        .Replace("\"3.2 kN\"", "\"" + force + "\"", StringComparison.Ordinal)
        .Replace("\"200 mm\"", "\"400 mm\"", StringComparison.Ordinal))).Check!;
}
