using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What to inspect after a strike, in order, and what is known of the load on each part.</summary>
/// <remarks>
/// A blade's blow goes into the driveline, a blow on the deck never does and one on the pan mostly not: it reaches gearbox mounts, hitch
/// and tractor from the side, and the pan bends the gearbox's output shaft, so that the gearbox then comes second.
/// When a device acted, a part it guards carried at most the torque at which the strongest specimen acts. When the peak of the
/// strike at the PTO is known, a part in line with it carried at most that peak, referred to its place. A simulated strike says what
/// each part carried at its own place. With none of these, behind a
/// flywheel or rotor, or in a branch, nothing is bounded here. The list is never shortened by a calculation, only ordered.
/// </remarks>
public sealed class InspectionList
{
    /// <summary>The strike put at most this torque on the part, which is below what damages a weak one.</summary>
    public const string BoundedBelowDamage = "inspect.loadBoundedBelowDamage";

    /// <summary>The strike's own peak, measured, computed or simulated, is below what damages a weak part.</summary>
    public const string StrikeBelowDamage = "inspect.strikeBelowDamage";

    /// <summary>The strike may have put a torque on the part that damages a weak one.</summary>
    public const string MayHaveReachedDamage = "inspect.loadMayHaveReachedDamage";

    /// <summary>The simulated strike stays below what damages a weak part, however severe within its facts.</summary>
    public const string SimulatedBelowDamage = "inspect.simulatedBelowDamage";

    /// <summary>The simulated strike stays below what damages a weak part, but nothing bounds a blow against what does not give.</summary>
    public const string SimulatedNotBounded = "inspect.simulatedNotBounded";

    /// <summary>The simulated strike may have reached what damages a weak part.</summary>
    public const string SimulatedMayHaveReached = "inspect.simulatedMayHaveReached";

    /// <summary>Nothing bounds the torque of the strike on the part.</summary>
    public const string LoadNotKnown = "inspect.loadNotKnown";

    /// <summary>The blow did not pass the driveline.</summary>
    public const string BlowBesideDriveline = "inspect.blowBesideDriveline";

    private const string Gearbox = "inspect.gearbox";
    private const string GearboxUnderPan = "inspect.gearboxUnderPan";

    private static readonly string[] Side =
        ["inspect.deckFrame", "inspect.gearboxMounts", "inspect.hitchPins", "inspect.liftArms", "inspect.topLink", "inspect.tractorHitch"];

    private static readonly string[] Rotor = ["inspect.blades", "inspect.bladeBolts", "inspect.bladeCarrier"];

    private InspectionList(IReadOnlyList<InspectionItem> items, IReadOnlyList<Finding> partLoads)
    {
        Items = items;
        PartLoads = partLoads;
    }

    /// <summary>What to do before the first look: everything off, still and blocked.</summary>
    public IReadOnlyList<CardStep> Before { get; } =
        [new("inspect.stop", Caution.StopAndKeyOut, Caution.RotorCoasts, Caution.BlockRaisedDeck)];

    /// <summary>What to inspect, most urgent first.</summary>
    public IReadOnlyList<InspectionItem> Items { get; }

    /// <summary>What is known of the torque on each part of the verdict, most loaded first; empty without a verdict.</summary>
    public IReadOnlyList<Finding> PartLoads { get; }

    /// <summary>The cautions of the inspection.</summary>
    public IReadOnlyList<Caution> Cautions { get; } =
        Caution.Always;

    /// <summary>Did the strike hurt the tractor? What is known of its PTO stub; null when only an inspection can tell.</summary>
    public Finding? Tractor => Items.First(i => i.Code == "inspect.ptoStub").Load;

    /// <summary>After a strike of which no model is at hand.</summary>
    internal static InspectionList After(StruckBy struckBy) => Of(IsBeside(struckBy), []).GearboxEarlyAfter(struckBy);

    /// <summary>After a strike on a machine that was checked.</summary>
    /// <param name="struckBy">What hit the obstacle.</param>
    /// <param name="deviceActed">True when the shear bolt broke or the clutch slipped.</param>
    /// <param name="verdict">The verdict on the machine as it was.</param>
    internal static InspectionList After(StruckBy struckBy, bool deviceActed, ProtectionVerdict verdict) =>
        Of(IsBeside(struckBy), LoadsOn(struckBy, deviceActed, Guard.NotNull(verdict, nameof(verdict)), null)).GearboxEarlyAfter(struckBy);

    /// <summary>After a strike whose peak is known.</summary>
    /// <param name="struckBy">What hit the obstacle.</param>
    /// <param name="deviceActed">True when the shear bolt broke or the clutch slipped.</param>
    /// <param name="verdict">The verdict on the machine as it was.</param>
    /// <param name="peakAtPto">The torque that the strike put on the driveline, at the PTO; simulated, measured or stated.</param>
    /// <example>At most 900 N·m at the PTO, 3000 N·m damages a weak PTO stub: it was very likely spared.</example>
    internal static InspectionList After(StruckBy struckBy, bool deviceActed, ProtectionVerdict verdict, TorqueBand peakAtPto) =>
        Of(IsBeside(struckBy),
            LoadsOn(struckBy, deviceActed, Guard.NotNull(verdict, nameof(verdict)), Guard.NotNull(peakAtPto, nameof(peakAtPto))))
            .GearboxEarlyAfter(struckBy);

    /// <summary>After a strike that was simulated: each part's own load, at its place.</summary>
    /// <param name="struckBy">What hit the obstacle.</param>
    /// <param name="deviceActed">True when the shear bolt broke or the clutch slipped; else the run counts in which none acts.</param>
    /// <param name="strike">The strike, with and without protection.</param>
    internal static InspectionList After(StruckBy struckBy, bool deviceActed, SimulationCheck strike)
    {
        bool isBeside = IsBeside(struckBy)
            || Guard.NotNull(strike, nameof(strike)).Simulation.Strike is { Place: StrikePlace.Pan or StrikePlace.Deck };
        return Of(isBeside, strike.Loads
            .Where(l => l.Element is Part)
            .Select(l => isBeside ? Beside((Part)l.Element) : LoadOn(l, (Part)l.Element, deviceActed)))
            .GearboxEarlyAfter(strike.Simulation.Strike is { Place: StrikePlace.Pan } ? StruckBy.Pan : struckBy);
    }

    /// <summary>The same for a kind of machine: without deck and blades where it has none, without lift arms where it is drawn.</summary>
    public InspectionList For(MachineKind machine) => MachineFit.IsCutter(machine) ? this : new InspectionList(
        [.. Items.Where(i => i.Code is not ("inspect.bladeBolts" or "inspect.bladeCarrier")
                && !(MachineFit.IsTrailed(machine) && i.Code is "inspect.liftArms" or "inspect.topLink"))
            .Select(i => i.Code switch
            {
                "inspect.blades" => new InspectionItem("inspect.rotor", i.IsReachedThroughDriveline, i.Load),
                "inspect.deckFrame" => new InspectionItem("inspect.frame", i.IsReachedThroughDriveline, i.Load),
                _ => i,
            })],
        PartLoads);

    private InspectionList GearboxEarlyAfter(StruckBy struckBy) => struckBy == StruckBy.Pan
        ? new InspectionList(
            [.. Items.Select(i => i.Code == Gearbox ? new InspectionItem(GearboxUnderPan, i.IsReachedThroughDriveline, i.Load) : i)
                .OrderBy(i => i.Code == Side[0] ? 0 : i.Code == GearboxUnderPan ? 1 : 2)], PartLoads)
        : this;

    private static bool IsBeside(StruckBy struckBy) => struckBy is StruckBy.Pan or StruckBy.Deck;

    private static IEnumerable<(Part Part, Finding Load, double Ratio)> LoadsOn(
        StruckBy struckBy, bool deviceActed, ProtectionVerdict verdict, TorqueBand? peakAtPto) =>
        verdict.Parts.Select(p => IsBeside(struckBy) ? Beside(p.Part) : LoadOn(p, deviceActed, PeakAt(p, verdict, peakAtPto)));

    private static InspectionList Of(bool isBeside, IEnumerable<(Part Part, Finding Load, double Ratio)> of)
    {
        (Part Part, Finding Load, double Ratio)[] loads = [.. of.OrderByDescending(l => l.Ratio)];
        Finding? On(PartKind kind)
        {
            (Part Part, Finding Load, double Ratio)[] own = Array.FindAll(loads, l => l.Part.Kind == kind);
            return own.Length > 0 ? own[0].Load : isBeside ? Finding.Of(BlowBesideDriveline, Severity.Note) : null;
        }

        // The driveline, by load where it is known and else from the blades towards the tractor.
        var kinds = new List<(string Code, PartKind Kind)>
        {
            ("inspect.driveTube", PartKind.Shaft), ("inspect.joints", PartKind.UniversalJoint), (Gearbox, PartKind.Gearbox),
            ("inspect.boltAndHoles", PartKind.ShaftAtCrossHole), ("inspect.ptoStub", PartKind.PtoStub),
        };
        double Ratio(PartKind kind) => loads.Where(l => l.Part.Kind == kind).Select(l => l.Ratio).DefaultIfEmpty(0).Max();
        InspectionItem[] driveline =
        [
            .. kinds.OrderByDescending(k => Ratio(k.Kind)).Select(k => new InspectionItem(k.Code, true, On(k.Kind))),
            new InspectionItem("inspect.ptoClutch", true, isBeside ? Finding.Of(BlowBesideDriveline, Severity.Note) : null),
        ];
        InspectionItem[] rotor = [.. Rotor.Select(c => new InspectionItem(c, false, null))];
        InspectionItem[] side = [.. Side.Select(c => new InspectionItem(c, false, null))];
        IReadOnlyList<InspectionItem> items = isBeside ? [.. side, .. rotor, .. driveline] : [.. driveline, .. rotor, .. side];
        return new InspectionList(items, [.. loads.Select(l => l.Load)]);
    }

    // At the part's own place: as much less there than at the PTO as its limit is. A branch may carry all of a strike in it.
    private static double PeakAt(PartCheck check, ProtectionVerdict verdict, TorqueBand? peakAtPto) =>
        peakAtPto is null || check.PassesInertia || check.DamagedAtPto is not { } limitAtPto
            || !verdict.Question.Chain.Elements.Contains(check.Part)
            ? double.PositiveInfinity
            : peakAtPto.SiBand.High * check.Part.Limit!.DamagedAt.SiBand.Low / limitAtPto.SiBand.Low;

    private static (Part Part, Finding Load, double Ratio) Beside(Part part) =>
        (part, Finding.Of(BlowBesideDriveline, Severity.Note).With("name", part.Name), 0);

    private static (Part Part, Finding Load, double Ratio) NotBounded(Part part) =>
        (part, Finding.Of(LoadNotKnown, Severity.Warning).With("name", part.Name), double.PositiveInfinity);

    private static (Part Part, Finding Load, double Ratio) LoadOn(SimulatedLoad load, Part part, bool deviceActed)
    {
        if ((deviceActed ? load.WithNm : load.WithoutNm) is not { } peak || part.Limit is not { } limit)
        {
            return NotBounded(part);
        }

        Answer damaged = deviceActed ? load.DamagedWith : load.DamagedWithout;
        double low = limit.DamagedAt.SiBand.Low;
        Finding finding = (damaged switch
        {
            Answer.No => Finding.Of(SimulatedBelowDamage, Severity.Note),
            Answer.NotKnown => Finding.Of(SimulatedNotBounded, Severity.Warning),
            _ => Finding.Of(SimulatedMayHaveReached, Severity.Danger),
        })
            .With("name", part.Name)
            .With("peak", QuantityKind.Torque, peak)
            .With("damagedLow", QuantityKind.Torque, low);
        return (part, finding, peak / low);
    }

    private static (Part Part, Finding Load, double Ratio) LoadOn(PartCheck check, bool deviceActed, double peak)
    {
        double acted = deviceActed && !check.IsOpen && !check.PassesInertia && check.Acts.IsBounded ? check.Acts.High
            : double.PositiveInfinity;
        double most = Math.Min(acted, peak);
        if (double.IsPositiveInfinity(most) || check.Part.Limit is not { } limit)
        {
            return NotBounded(check.Part);
        }

        double ratio = most / limit.DamagedAt.SiBand.Low;
        bool isByStrike = peak < acted;
        bool isBelow = ratio < 1 && !limit.IsAssumed && !check.RestsOnEfficiency && (isByStrike || !check.IsBarredByDevice);
        Finding load = Finding.Of(
                !isBelow ? MayHaveReachedDamage : isByStrike ? StrikeBelowDamage : BoundedBelowDamage, isBelow ? Severity.Note
                    : Severity.Danger)
            .With("name", check.Part.Name)
            .With("atMost", QuantityKind.Torque, most)
            .With("damagedLow", QuantityKind.Torque, limit.DamagedAt.SiBand.Low);
        return (check.Part, load, ratio);
    }
}
