using Driveline.Findings;
using Driveline.Provenance;

namespace Driveline.Clutches;

/// <content>The procedures of disc slip clutches, from operator manuals of rotary cutters and other machines.</content>
public sealed partial class ServiceProcedure
{
    private static readonly Caution Stop = Caution.StopAndKeyOut;
    private static readonly Caution Guards = Caution.GuardsOn;
    private static readonly Caution Manual = Caution.ManualDecides;
    private static readonly Caution Hot = Caution.HotClutch;
    private static readonly Caution People = Caution.BystandersAway;
    private static readonly Caution Raised = Caution.BlockRaisedDeck;
    private static readonly Caution Tight = Caution.NeverTighter;

    private static readonly Basis Safety = Basis.CommonPractice(
        "stop, key out and standstill before reaching in; guards, people and seat before the PTO turns");

    /// <summary>Slipping a new or long idle clutch on purpose, so that its faces bed in and come loose.</summary>
    public static ServiceProcedure RunIn { get; } = Procedure(
        "clutch.service.runIn",
        Step("clutch.service.stop", Safety, Stop, Raised),
        Step("clutch.service.runIn.record", LoaderWagon("friction clutch, run-in"), Stop, Guards),
        Step("clutch.service.runIn.mark", Cutters("5", "run-in"), Stop),
        Turns("clutch.service.runIn.loosen", 1.0 / 3, 2, Cutters("4 and 5", "run-in"), Stop, Manual),
        Step("clutch.service.guardBack", Safety, Stop, Guards, People),
        Seconds("clutch.service.runIn.slip", 1, 3, Cutters("1, 4 and 5", "run-in"), People, Guards, Hot)
            .With("speed", QuantityKind.RotationalSpeed, 1200 * Math.PI / 30).Turning(),
        Step("clutch.service.runIn.look", Cutters("5", "run-in"), Stop, Hot),
        Step("clutch.service.runIn.reset", LoaderWagon("friction clutch, run-in"), Stop, Hot, Tight),
        Days("clutch.service.runIn.when", 10, 30, Cutters("4 and 5", "repeat of the run-in"), Manual));

    /// <summary>The check with the clutch taken apart.</summary>
    public static ServiceProcedure YearlyCheck { get; } = Procedure(
        "clutch.service.yearly",
        Step("clutch.service.stop", Safety, Stop, Raised),
        Step("clutch.service.yearly.record", Other("square baler operator manual", "slip clutch setting"), Stop, Guards),
        Step("clutch.service.yearly.apart", Other("fertilizer spreader operator manual", "friction clutch, care"), Stop, Hot),
        Step("clutch.service.yearly.clean", Other("fertilizer spreader operator manual", "friction clutch, care"), Stop),
        Step("clutch.service.yearly.springs", Other("square baler operator manual", "slip clutch setting"), Stop),
        Step("clutch.service.yearly.reset", LoaderWagon("friction clutch, run-in"), Stop, Tight),
        Step("clutch.service.guardBack", Safety, Stop, Guards, People),
        Step("clutch.service.yearly.slipTest", Cutters("5", "run-in"), People, Guards, Hot).Turning(),
        Range("clutch.service.yearly.when", QuantityKind.Number, 6, 12,
            Other("fertilizer spreader operator manual", "friction clutch, care"), Manual));

    /// <summary>The slip test with a line across the plates: proves that the clutch slips, not at which torque.</summary>
    public static ServiceProcedure ScribeLineTest { get; } = Procedure(
        "clutch.service.scribeLine",
        Step("clutch.service.stop", Safety, Stop, Raised),
        Step("clutch.service.scribeLine.mark", Cutters("5", "run-in"), Stop, Guards),
        Turns("clutch.service.scribeLine.loosen", 1.0 / 3, 2, Cutters("4 and 5", "run-in"), Stop, Manual),
        Step("clutch.service.guardBack", Safety, Stop, Guards, People),
        Seconds("clutch.service.scribeLine.slip", 1, 3, Cutters("1, 4 and 5", "run-in"), People, Guards, Hot).Turning(),
        Step("clutch.service.scribeLine.look", Cutters("5", "run-in"), Stop, Hot),
        Step("clutch.service.scribeLine.stuck", LoaderWagon("friction clutch, run-in"), Stop, Tight),
        Step("clutch.service.scribeLine.reset", LoaderWagon("friction clutch, run-in"), Stop, Hot, Tight));

    /// <summary>Measuring the slip torque with a lever, and setting it.</summary>
    public static ServiceProcedure LeverSetting { get; } = Procedure(
        "clutch.service.lever",
        Step("clutch.service.stop", Safety, Stop, Raised),
        Step("clutch.service.lever.disconnect", Other("square baler operator manual", "slip clutch setting"), Stop, Guards),
        Step("clutch.service.lever.block", Other("square baler operator manual", "slip clutch setting"), Stop),
        Step("clutch.service.lever.pull", Other("square baler operator manual", "slip clutch setting"), Stop),
        Step("clutch.service.lever.again", Other("round baler operator manual", "slip clutch check"), Stop),
        Turns("clutch.service.lever.adjust", 0.125, 0.5, Cutters("2, 4 and 6", "adjustment"), Stop, Manual, Tight),
        Step("clutch.service.lever.record", Other("square baler operator manual", "slip clutch setting"), Guards));

    /// <summary>When linings are worn out.</summary>
    public static ServiceProcedure WearLimits { get; } = Procedure(
        "clutch.service.wear",
        Step("clutch.service.stop", Safety, Stop, Raised),
        Length("clutch.service.wear.new", 3.175e-3, 3.175e-3, Cutters("1, 2 and 3", "linings"), Stop),
        Length("clutch.service.wear.replace", 0.794e-3, 1.587e-3, Cutters("1, 2 and 3", "linings"), Stop, Manual),
        Step("clutch.service.wear.slipsOften", Other("rotary tiller operator manual", "slip clutch"), Manual, Tight),
        Length("clutch.service.wear.gap", 3.175e-3, 3.175e-3, Cutters("3", "disc-spring clutch, setting"), Stop, Manual));

    /// <summary>What to do when the clutch slips in work.</summary>
    public static ServiceProcedure AfterSlip { get; } = Procedure(
        "clutch.service.afterSlip",
        Seconds("clutch.service.afterSlip.stop", 2, 10, Cutters("5", "slip clutch"), Stop),
        Step("clutch.service.afterSlip.cool", Cutters("5", "slip clutch"), Stop, Hot),
        Step("clutch.service.afterSlip.cause", Other("university agricultural safety page", "driveline abuse"), Stop, Tight));

    /// <summary>Putting the machine away so that the clutch does not stick.</summary>
    public static ServiceProcedure Storage { get; } = Procedure(
        "clutch.service.storage",
        Step("clutch.service.stop", Safety, Stop, Raised),
        Draft.Of("clutch.service.storage.loosen", Magazine, Stop, Manual),
        Draft.Of("clutch.service.storage.after", Magazine, Stop, People, Guards, Tight));

    /// <summary>All procedures.</summary>
    public static IReadOnlyList<ServiceProcedure> All { get; } =
        [RunIn, YearlyCheck, ScribeLineTest, LeverSetting, WearLimits, AfterSlip, Storage];

    private static Basis Magazine => Basis.CommonPractice("farm trade magazine, mechanic's column, undated");

    private static ServiceProcedure Procedure(string code, params Draft[] steps) =>
        new(code, Array.ConvertAll(steps, s => s.Step()));

    private static Basis Cutters(string numbers, string place) =>
        Basis.Published(
            "rotary cutter operator " + (numbers.Length > 1 ? "manuals " + numbers + " (makers withheld)"
            : "manual " + numbers + " (maker withheld)"), "undated copies", place);

    private static Basis LoaderWagon(string place) => Other("loader-wagon operator manual", place);

    private static Basis Other(string document, string place) => Basis.Published(document + " (maker withheld)", "undated copy", place);

    private static Draft Step(string code, Basis source, params Caution[] cautions) => Draft.Of(code, source, cautions);

    private static Draft Range(string code, QuantityKind kind, double low, double high, Basis source, params Caution[] cautions) =>
        Draft.Of(code, source, cautions).With("low", kind, low).With("high", kind, high);

    private static Draft Days(string code, double low, double high, Basis source, params Caution[] cautions) =>
        Range(code, QuantityKind.Count, low, high, source, cautions);

    private static Draft Turns(string code, double low, double high, Basis source, params Caution[] cautions) =>
        Range(code, QuantityKind.Number, low, high, source, cautions);

    private static Draft Seconds(string code, double low, double high, Basis source, params Caution[] cautions) =>
        Range(code, QuantityKind.Count, low, high, source, cautions);

    private static Draft Length(string code, double lowM, double highM, Basis source, params Caution[] cautions) =>
        Range(code, QuantityKind.Length, lowM, highM, source, cautions);

    private readonly struct Draft
    {
        private readonly Finding words;
        private readonly Basis source;
        private readonly Caution[] cautions;
        private readonly bool turnsPto;

        private Draft(Finding words, Basis source, Caution[] cautions, bool turnsPto)
        {
            this.turnsPto = turnsPto;
            this.words = words;
            this.source = source;
            this.cautions = cautions;
        }

        public static Draft Of(string code, Basis source, params Caution[] cautions) =>
            new(Finding.Of(code, Severity.Note), source, cautions, false);

        public Draft With(string name, QuantityKind kind, double si) => new(words.With(name, kind, si), source, cautions, turnsPto);

        public Draft Turning() => new(words, source, cautions, true);

        public ServiceStep Step() => new(words, source, cautions, turnsPto);
    }
}
