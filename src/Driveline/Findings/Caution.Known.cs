using Driveline.Provenance;

namespace Driveline.Findings;

/// <content>Every caution of work on a driveline. PTO work kills: a wrapped sleeve leaves less than a second.</content>
public sealed partial class Caution
{
    /// <summary>PTO out, engine off, key out, wait for standstill.</summary>
    public static readonly Caution StopAndKeyOut = new(
        "caution.stopAndKeyOut", Seen("loader-wagon operator manual and university safety pages", "before leaving the seat"));

    /// <summary>Shields in place and turning freely.</summary>
    public static readonly Caution GuardsOn = new("caution.guardsOn", Seen("university extension sheet on PTO safety", "shields"));

    /// <summary>The manual and local rules decide.</summary>
    public static readonly Caution ManualDecides = new(
        "caution.manualDecides", Seen("rotary cutter operator manual", "replace the shear bolt only with an identical one"));

    /// <summary>A stronger bolt is a change of the machine.</summary>
    public static readonly Caution StrongerIsAChange = new(
        "caution.strongerIsAChange", Seen("rotary cutter operator manual", "a different bolt makes the safety device inoperable"));

    /// <summary>An estimate, not an engineer's judgement.</summary>
    public static readonly Caution LicensedPractice = new(
        "caution.licensedPractice", Basis.CommonPractice("an estimate does not replace a licensed engineer"));

    /// <summary>Block the raised deck and relieve the hydraulics before reaching under.</summary>
    public static readonly Caution BlockRaisedDeck = new("caution.blockRaisedDeck",
        Basis.CommonPractice("raised equipment is blocked and its hydraulics relieved before anybody reaches under"));

    /// <summary>The rotor coasts on after its bolt has gone.</summary>
    public static readonly Caution RotorCoasts = new(
        "caution.rotorCoasts", Seen("loader-wagon operator manual and university safety pages", "rotor may coast after the PTO is off"));

    /// <summary>A jammed or wound-up drive springs back.</summary>
    public static readonly Caution JammedDriveSpringsBack = new(
        "caution.jammedDriveSpringsBack", Basis.CommonPractice("a jammed drive holds a twist that is released when it is freed"));

    /// <summary>Support loose half-shafts.</summary>
    public static readonly Caution SupportHalfShafts = new(
        "caution.supportHalfShafts", Seen("rotary cutter operator manual", "a loose half of the driveline may swing"));

    /// <summary>A slipped clutch is too hot to touch.</summary>
    public static readonly Caution HotClutch = new(
        "caution.hotClutch", Seen("rotary cutter operator manual", "2 to 3 s of slip make the clutch too hot to touch"));

    /// <summary>A hot clutch lights dry grass.</summary>
    public static readonly Caution HotClutchDryGrass = new(
        "caution.hotClutchDryGrass", Basis.CommonPractice("a hot clutch in dry grass or chaff starts a fire"));

    /// <summary>No replacement bolt may stand proud.</summary>
    public static readonly Caution NoProudBolt = new("caution.noProudBolt",
        Basis.CommonPractice("a bolt that stands proud of a turning shaft catches clothing, above all on post-hole augers"));

    /// <summary>Nobody near when the PTO runs.</summary>
    public static readonly Caution BystandersAway = new(
        "caution.bystandersAway", Seen("rotary cutter operator manuals", "clear the area for clutch run-in and cutting"));

    /// <summary>Thrown objects reach far.</summary>
    public static readonly Caution ThrownObjects = new(
        "caution.thrownObjects", Seen("state extension page on rotary cutters", "more than 300 ft"));

    /// <summary>Never step over a shaft.</summary>
    public static readonly Caution NeverStepOver = new(
        "caution.neverStepOver", Seen("university agricultural safety page", "never step over a rotating shaft"));

    /// <summary>Keep the overlap of the driveline's tubes.</summary>
    public static readonly Caution KeepOverlap = new(
        "caution.keepOverlap", Seen("auger-wagon operator manual", "a separated half whips at PTO speed"));

    /// <summary>A clutch that cannot slip protects nothing.</summary>
    public static readonly Caution NeverTighter = new("caution.neverTighter",
        Basis.CommonPractice("springs are never tightened beyond the length in the manual"));

    /// <summary>Every caution, in the order in which they are shown.</summary>
    public static IReadOnlyList<Caution> All { get; } =
    [
        StopAndKeyOut, RotorCoasts, GuardsOn, BlockRaisedDeck, JammedDriveSpringsBack, SupportHalfShafts, HotClutch, HotClutchDryGrass,
        NoProudBolt, BystandersAway, ThrownObjects, NeverStepOver, KeepOverlap, NeverTighter,
        ManualDecides, StrongerIsAChange, LicensedPractice,
    ];

    /// <summary>The cautions that go with every piece of advice.</summary>
    public static IReadOnlyList<Caution> Always { get; } =
    [
        StopAndKeyOut, RotorCoasts, GuardsOn, BlockRaisedDeck, JammedDriveSpringsBack, SupportHalfShafts, HotClutch, HotClutchDryGrass,
        NoProudBolt, ManualDecides, StrongerIsAChange, LicensedPractice,
    ];

    private static Basis Seen(string document, string place) =>
        Basis.CommonPractice(document + ": " + place);
}
