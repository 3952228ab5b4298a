namespace Driveline.Advice;

/// <summary>What an owner can answer, by question; every question and answer of the catalogue has its name here.</summary>
public static class OwnerFacts
{
    /// <summary>What protects the driveline: a shear bolt, a slip clutch, a cut-out, or nothing?</summary>
    public static class Device
    {
        /// <summary>It has a shear bolt.</summary>
        public static readonly Fact ShearBolt = Fact.Of("device", "shearBolt");

        /// <summary>It has a slip clutch.</summary>
        public static readonly Fact SlipClutch = Fact.Of("device", "slipClutch");

        /// <summary>It has a ratchet or cam cut-out.</summary>
        public static readonly Fact CutOut = Fact.Of("device", "cutOut");

        /// <summary>Nothing is fitted.</summary>
        public static readonly Fact None = Fact.Of("device", "none");
    }

    /// <summary>
    /// With the key out, take the bolt out and compare its head marks with the grade in the manual: softer, the same, stronger, or
    /// unmarked?
    /// </summary>
    public static class GradeAgainstManual
    {
        /// <summary>The bolt is of a softer grade than the manual's.</summary>
        public static readonly Fact Softer = Fact.Of("gradeAgainstManual", "softer");

        /// <summary>The bolt is of the manual's grade.</summary>
        public static readonly Fact Same = Fact.Of("gradeAgainstManual", "same");

        /// <summary>The bolt is of a stronger grade than the manual's.</summary>
        public static readonly Fact Stronger = Fact.Of("gradeAgainstManual", "stronger");

        /// <summary>The bolt has no marks.</summary>
        public static readonly Fact Unmarked = Fact.Of("gradeAgainstManual", "unmarked");
    }

    /// <summary>With the key out, measure the bolt's diameter: as in the manual, smaller, or larger?</summary>
    public static class BoltSize
    {
        /// <summary>The bolt has the manual's diameter.</summary>
        public static readonly Fact AsManual = Fact.Of("boltSize", "asManual");

        /// <summary>The bolt is thinner than the manual's.</summary>
        public static readonly Fact Smaller = Fact.Of("boltSize", "smaller");

        /// <summary>The bolt is thicker than the manual's.</summary>
        public static readonly Fact Larger = Fact.Of("boltSize", "larger");
    }

    /// <summary>
    /// With the key out, look where the bolt shears: through its plain shank or through its thread? A fully threaded bolt shears through
    /// thread.
    /// </summary>
    public static class PlaneThrough
    {
        /// <summary>It shears through its plain shank.</summary>
        public static readonly Fact Shank = Fact.Of("planeThrough", "shank");

        /// <summary>It shears through its thread.</summary>
        public static readonly Fact Thread = Fact.Of("planeThrough", "thread");
    }

    /// <summary>With the key out and the bolt taken out, look at the holes: round, oval, or do the two faces stand apart?</summary>
    public static class Holes
    {
        /// <summary>The holes are round and the faces touch.</summary>
        public static readonly Fact Round = Fact.Of("holes", "round");

        /// <summary>The holes are oval.</summary>
        public static readonly Fact Oval = Fact.Of("holes", "oval");

        /// <summary>The two faces stand apart.</summary>
        public static readonly Fact StandApart = Fact.Of("holes", "standApart");
    }

    /// <summary>
    /// With the key out, the bolt taken out and the shaft supported, turn the hub on its shaft by hand: freely, stiffly, or not at all?
    /// </summary>
    public static class HubTurns
    {
        /// <summary>The hub turns freely on its shaft.</summary>
        public static readonly Fact Freely = Fact.Of("hubTurns", "freely");

        /// <summary>The hub turns stiffly on its shaft.</summary>
        public static readonly Fact Stiffly = Fact.Of("hubTurns", "stiffly");

        /// <summary>The hub does not turn on its shaft.</summary>
        public static readonly Fact NotAtAll = Fact.Of("hubTurns", "notAtAll");
    }

    /// <summary>When was the hub last greased?</summary>
    public static class HubGreased
    {
        /// <summary>The hub was greased this year.</summary>
        public static readonly Fact ThisYear = Fact.Of("hubGreased", "thisYear");

        /// <summary>The hub was greased long ago.</summary>
        public static readonly Fact LongAgo = Fact.Of("hubGreased", "longAgo");

        /// <summary>The hub was never greased.</summary>
        public static readonly Fact Never = Fact.Of("hubGreased", "never");
    }

    /// <summary>When did the protection last act: this month, this year, longer ago, or never?</summary>
    public static class LastTrip
    {
        /// <summary>The protection acted this month, so it was free then.</summary>
        public static readonly Fact ThisMonth = Fact.Of("lastTrip", "thisMonth");

        /// <summary>The protection acted this year.</summary>
        public static readonly Fact ThisYear = Fact.Of("lastTrip", "thisYear");

        /// <summary>The protection has not acted for more than a year.</summary>
        public static readonly Fact LongerAgo = Fact.Of("lastTrip", "longerAgo");

        /// <summary>The protection has never acted.</summary>
        public static readonly Fact Never = Fact.Of("lastTrip", "never");
    }

    /// <summary>When does it happen: as the PTO is engaged, in steady work, on hitting something, or on starting under load?</summary>
#pragma warning disable CA1716 // the question's own code
    public static class When
#pragma warning restore CA1716
    {
        /// <summary>It happens as the PTO is engaged.</summary>
        public static readonly Fact Engaging = Fact.Of("when", "engaging");

        /// <summary>It happens in steady work.</summary>
        public static readonly Fact Working = Fact.Of("when", "working");

        /// <summary>It happens on hitting something.</summary>
        public static readonly Fact Striking = Fact.Of("when", "striking");

        /// <summary>It happens on starting under load.</summary>
        public static readonly Fact StartingLoaded = Fact.Of("when", "startingLoaded");
    }

    /// <summary>How is the PTO engaged: slowly, or abruptly?</summary>
    public static class EngagementManner
    {
        /// <summary>The PTO is engaged slowly.</summary>
        public static readonly Fact Slowly = Fact.Of("engagementManner", "slowly");

        /// <summary>The PTO is engaged abruptly.</summary>
        public static readonly Fact Abruptly = Fact.Of("engagementManner", "abruptly");
    }

    /// <summary>At what engine speed is the PTO engaged: low (to about 1200 rpm), middle (1200 to 1600), or high?</summary>
    public static class EngagementSpeed
    {
        /// <summary>The PTO is engaged at a low engine speed.</summary>
        public static readonly Fact Low = Fact.Of("engagementSpeed", "low");

        /// <summary>The PTO is engaged at a middle engine speed, as is usual.</summary>
        public static readonly Fact Middle = Fact.Of("engagementSpeed", "middle");

        /// <summary>The PTO is engaged at a high engine speed.</summary>
        public static readonly Fact High = Fact.Of("engagementSpeed", "high");
    }

    /// <summary>What engages the PTO: a hand lever or pedal, oil pressure, an electric switch, or only the travel clutch?</summary>
    public static class PtoClutch
    {
        /// <summary>A hand lever or pedal engages the PTO.</summary>
        public static readonly Fact HandLever = Fact.Of("ptoClutch", "handLever");

        /// <summary>Oil pressure engages the PTO.</summary>
        public static readonly Fact Hydraulic = Fact.Of("ptoClutch", "hydraulic");

        /// <summary>A switch engages the PTO: it snaps in whatever the driver does.</summary>
        public static readonly Fact Electric = Fact.Of("ptoClutch", "electric");

        /// <summary>The PTO starts with the travel clutch.</summary>
        public static readonly Fact None = Fact.Of("ptoClutch", "none");
    }

    /// <summary>
    /// On level ground, with the key out and the deck on stands at its working height, measure the front and rear blade tips without
    /// reaching under: front lower, about level, or front higher?
    /// </summary>
    public static class DeckAttitude
    {
        /// <summary>The front of the deck is low.</summary>
        public static readonly Fact NoseDown = Fact.Of("deckAttitude", "noseDown");

        /// <summary>The deck is about level.</summary>
        public static readonly Fact Level = Fact.Of("deckAttitude", "level");

        /// <summary>The front of the deck is high.</summary>
        public static readonly Fact NoseUp = Fact.Of("deckAttitude", "noseUp");
    }

    /// <summary>Does it leave bare patches of earth, or earth on the blades?</summary>
    public static class Scalping
    {
        /// <summary>It leaves bare patches of earth.</summary>
        public static readonly Fact Seen = Fact.Of("scalping", "seen");

        /// <summary>It leaves no bare patches.</summary>
        public static readonly Fact NotSeen = Fact.Of("scalping", "notSeen");
    }

    /// <summary>How high does it cut: under 75 mm (3 in), up to 150 mm (6 in), or higher?</summary>
    public static class CuttingHeight
    {
        /// <summary>It cuts lower than 75 mm (3 in).</summary>
        public static readonly Fact Under75mm = Fact.Of("cuttingHeight", "under75mm");

        /// <summary>It cuts at 75 to 150 mm (3 to 6 in).</summary>
        public static readonly Fact From75to150mm = Fact.Of("cuttingHeight", "from75to150mm");

        /// <summary>It cuts higher than 150 mm (6 in).</summary>
        public static readonly Fact Over150mm = Fact.Of("cuttingHeight", "over150mm");
    }

    /// <summary>What is the ground like: smooth, rough, or with stumps or stones?</summary>
    public static class Ground
    {
        /// <summary>The ground is smooth.</summary>
        public static readonly Fact Smooth = Fact.Of("ground", "smooth");

        /// <summary>The ground is rough.</summary>
        public static readonly Fact Rough = Fact.Of("ground", "rough");

        /// <summary>There are stumps or stones.</summary>
        public static readonly Fact StumpsOrStones = Fact.Of("ground", "stumpsOrStones");
    }

    /// <summary>What is cut: light growth, heavy growth, or woody brush?</summary>
    public static class Growth
    {
        /// <summary>The growth is light.</summary>
        public static readonly Fact Light = Fact.Of("growth", "light");

        /// <summary>The growth is heavy.</summary>
        public static readonly Fact Heavy = Fact.Of("growth", "heavy");

        /// <summary>The growth is woody.</summary>
        public static readonly Fact Woody = Fact.Of("growth", "woody");
    }

    /// <summary>How fast is it driven: slowly, or fast for this growth?</summary>
    public static class GroundSpeed
    {
        /// <summary>It is driven slowly.</summary>
        public static readonly Fact Slow = Fact.Of("groundSpeed", "slow");

        /// <summary>It is driven fast.</summary>
        public static readonly Fact Fast = Fact.Of("groundSpeed", "fast");
    }

    /// <summary>With the key out and the deck blocked, look at the blades: sharp or dull?</summary>
    public static class Blades
    {
        /// <summary>The blades are sharp.</summary>
        public static readonly Fact Sharp = Fact.Of("blades", "sharp");

        /// <summary>The blades are dull.</summary>
        public static readonly Fact Dull = Fact.Of("blades", "dull");
    }

    /// <summary>How many hours of work lie between two breaks: under 1, to 10, to 50, or more?</summary>
    public static class HoursBetweenBreaks
    {
        /// <summary>A bolt lasts less than an hour.</summary>
        public static readonly Fact Under1h = Fact.Of("hoursBetweenBreaks", "under1h");

        /// <summary>A bolt lasts one to ten hours.</summary>
        public static readonly Fact From1to10h = Fact.Of("hoursBetweenBreaks", "from1to10h");

        /// <summary>A bolt lasts ten to fifty hours.</summary>
        public static readonly Fact From10to50h = Fact.Of("hoursBetweenBreaks", "from10to50h");

        /// <summary>A bolt lasts more than fifty hours.</summary>
        public static readonly Fact Over50h = Fact.Of("hoursBetweenBreaks", "over50h");
    }

    /// <summary>Look at the broken faces of the last bolt: a clean smear, rings like a shell, or bent and necked?</summary>
    public static class Fracture
    {
        /// <summary>The broken bolt shows a clean shear.</summary>
        public static readonly Fact CleanShear = Fact.Of("fracture", "cleanShear");

        /// <summary>The broken bolt shows rings like a shell.</summary>
        public static readonly Fact Rings = Fact.Of("fracture", "rings");

        /// <summary>The broken bolt is bent or necked.</summary>
        public static readonly Fact BentOrNecked = Fact.Of("fracture", "bentOrNecked");
    }

    /// <summary>When was the clutch last loosened, slipped and reset: within a year, longer ago, or never?</summary>
    public static class SlipCheck
    {
        /// <summary>The clutch was slipped within a year.</summary>
        public static readonly Fact WithinYear = Fact.Of("slipCheck", "withinYear");

        /// <summary>The clutch was last slipped more than a year ago.</summary>
        public static readonly Fact OverYear = Fact.Of("slipCheck", "overYear");

        /// <summary>The clutch was never slipped.</summary>
        public static readonly Fact Never = Fact.Of("slipCheck", "never");
    }

    /// <summary>Where does the machine stand: under a roof, or outdoors?</summary>
    public static class Storage
    {
        /// <summary>It stands under a roof.</summary>
        public static readonly Fact Indoors = Fact.Of("storage", "indoors");

        /// <summary>It stands outdoors.</summary>
        public static readonly Fact Outdoors = Fact.Of("storage", "outdoors");
    }

    /// <summary>Is the climate dry or moist?</summary>
    public static class Climate
    {
        /// <summary>The climate is dry.</summary>
        public static readonly Fact Dry = Fact.Of("climate", "dry");

        /// <summary>The climate is moist.</summary>
        public static readonly Fact Moist = Fact.Of("climate", "moist");
    }

    /// <summary>With the key out, measure the clutch's springs: as in the manual, shorter, longer, or coil on coil?</summary>
    public static class SpringLength
    {
        /// <summary>The springs have the manual's length.</summary>
        public static readonly Fact AsManual = Fact.Of("springLength", "asManual");

        /// <summary>The springs are shorter than the manual's length: set too tight.</summary>
        public static readonly Fact Shorter = Fact.Of("springLength", "shorter");

        /// <summary>The springs are longer than the manual's length: set too loose.</summary>
        public static readonly Fact Longer = Fact.Of("springLength", "longer");

        /// <summary>The springs are coil on coil.</summary>
        public static readonly Fact CoilsTouch = Fact.Of("springLength", "coilsTouch");
    }

    /// <summary>
    /// With the key out and the clutch cold, take it apart and look at the facings: good, worn, oily, glazed, or rusted on?
    /// </summary>
    public static class Facings
    {
        /// <summary>The facings are good.</summary>
        public static readonly Fact Good = Fact.Of("facings", "good");

        /// <summary>The facings are worn.</summary>
        public static readonly Fact Worn = Fact.Of("facings", "worn");

        /// <summary>The facings are oily.</summary>
        public static readonly Fact Oily = Fact.Of("facings", "oily");

        /// <summary>The facings are glazed.</summary>
        public static readonly Fact Glazed = Fact.Of("facings", "glazed");

        /// <summary>The facings are rusted to their plates.</summary>
        public static readonly Fact Rusted = Fact.Of("facings", "rusted");
    }

    /// <summary>
    /// Do the slip test of the manual from the seat, with nobody near, then stop and take the key out to look at the marks: did it slip as
    /// set, early, or not at all?
    /// </summary>
    public static class SlipTest
    {
        /// <summary>In the slip test it slips as set.</summary>
        public static readonly Fact SlipsAsSet = Fact.Of("slipTest", "slipsAsSet");

        /// <summary>In the slip test it slips early.</summary>
        public static readonly Fact SlipsEarly = Fact.Of("slipTest", "slipsEarly");

        /// <summary>In the slip test it does not slip.</summary>
        public static readonly Fact DoesNotSlip = Fact.Of("slipTest", "doesNotSlip");
    }

    /// <summary>What hit the obstacle: a blade, the pan under the blades, the deck, or nothing?</summary>
    public static class WhatStruck
    {
        /// <summary>A blade hit it.</summary>
        public static readonly Fact Blade = Fact.Of("whatStruck", "blade");

        /// <summary>The pan hit it: that blow mostly does not pass the driveline.</summary>
        public static readonly Fact Pan = Fact.Of("whatStruck", "pan");

        /// <summary>The deck hit it: that blow does not pass the driveline.</summary>
        public static readonly Fact Deck = Fact.Of("whatStruck", "deck");

        /// <summary>Nothing was hit.</summary>
        public static readonly Fact Nothing = Fact.Of("whatStruck", "nothing");
    }

    /// <summary>What did the rotor do: stop dead, slow down, or barely slow?</summary>
    public static class RotorAtStrike
    {
        /// <summary>The rotor stopped dead.</summary>
        public static readonly Fact StoppedDead = Fact.Of("rotorAtStrike", "stoppedDead");

        /// <summary>The rotor slowed down.</summary>
        public static readonly Fact Slowed = Fact.Of("rotorAtStrike", "slowed");

        /// <summary>The rotor barely slowed.</summary>
        public static readonly Fact BarelySlowed = Fact.Of("rotorAtStrike", "barelySlowed");
    }

    /// <summary>
    /// With the key out, sight along the driveline's tube and look at the gearbox: nothing, a twisted tube, or a broken gearbox?
    /// </summary>
    public static class DamageSeen
    {
        /// <summary>No damage is seen.</summary>
        public static readonly Fact Nothing = Fact.Of("damageSeen", "nothing");

        /// <summary>The driveline's tube is twisted.</summary>
        public static readonly Fact TubeTwisted = Fact.Of("damageSeen", "tubeTwisted");

        /// <summary>The gearbox is broken.</summary>
        public static readonly Fact GearboxBroken = Fact.Of("damageSeen", "gearboxBroken");
    }

    /// <summary>
    /// With the machine in its working position and the key out, look at the driveline's joints: a small or a large angle?
    /// </summary>
    public static class JointAngleInWork
    {
        /// <summary>The joints run at a small angle.</summary>
        public static readonly Fact Small = Fact.Of("jointAngleInWork", "small");

        /// <summary>The joints run at a large angle.</summary>
        public static readonly Fact Large = Fact.Of("jointAngleInWork", "large");
    }

    /// <summary>With the key out, look whether the yokes at both ends of the driveline are in line.</summary>
    public static class Phasing
    {
        /// <summary>The yokes are in line.</summary>
        public static readonly Fact InLine = Fact.Of("phasing", "inLine");

        /// <summary>The yokes are not in line.</summary>
        public static readonly Fact NotInLine = Fact.Of("phasing", "notInLine");
    }

    /// <summary>Is the tractor's PTO power within what the machine is rated for?</summary>
    public static class TractorPower
    {
        /// <summary>The tractor is within the machine's rating.</summary>
        public static readonly Fact WithinRating = Fact.Of("tractorPower", "withinRating");

        /// <summary>The tractor is above the machine's rating.</summary>
        public static readonly Fact AboveRating = Fact.Of("tractorPower", "aboveRating");
    }

    /// <summary>Has anything been changed: nothing, the bolt or clutch, the driveline, or the tractor's PTO?</summary>
    public static class Modifications
    {
        /// <summary>Nothing has been changed.</summary>
        public static readonly Fact None = Fact.Of("modifications", "none");

        /// <summary>The bolt or clutch has been changed.</summary>
        public static readonly Fact BoltOrClutch = Fact.Of("modifications", "boltOrClutch");

        /// <summary>The driveline has been changed.</summary>
        public static readonly Fact Driveline = Fact.Of("modifications", "driveline");

        /// <summary>The tractor's PTO has been changed.</summary>
        public static readonly Fact TractorPto = Fact.Of("modifications", "tractorPto");
    }

    /// <summary>Are jams part of this work (augers, snow blowers), or rare?</summary>
    public static class Jams
    {
        /// <summary>Jams are part of this work.</summary>
        public static readonly Fact PartOfTheWork = Fact.Of("jams", "partOfTheWork");

        /// <summary>Jams are rare in this work.</summary>
        public static readonly Fact Rare = Fact.Of("jams", "rare");
    }

    /// <summary>With the key out and the deck blocked, compare the blades: even, or bent or unequal?</summary>
    public static class BladeCondition
    {
        /// <summary>The blades are even.</summary>
        public static readonly Fact Even = Fact.Of("bladeCondition", "even");

        /// <summary>A blade is bent or unequal.</summary>
        public static readonly Fact BentOrUnequal = Fact.Of("bladeCondition", "bentOrUnequal");
    }

    /// <summary>Where does the bolt sit: in a yoke within reach, or through the shaft at the gearbox?</summary>
    public static class BoltPlace
    {
        /// <summary>The bolt sits in a yoke within reach.</summary>
        public static readonly Fact Yoke = Fact.Of("boltPlace", "yoke");

        /// <summary>The bolt sits through the shaft at the gearbox.</summary>
        public static readonly Fact ThroughShaftAtGearbox = Fact.Of("boltPlace", "throughShaftAtGearbox");
    }

    /// <summary>When the machine is stopped by something, what does the tractor do: run on, stall, or slip its PTO clutch?</summary>
    public static class EngineAtJam
    {
        /// <summary>The tractor runs on.</summary>
        public static readonly Fact RunsOn = Fact.Of("engineAtJam", "runsOn");

        /// <summary>The tractor stalls.</summary>
        public static readonly Fact Stalls = Fact.Of("engineAtJam", "stalls");

        /// <summary>The tractor's PTO clutch slips.</summary>
        public static readonly Fact PtoClutchSlips = Fact.Of("engineAtJam", "ptoClutchSlips");
    }

    /// <summary>Are the clutch's linings run in, or new and not run in?</summary>
    public static class Linings
    {
        /// <summary>The linings are run in.</summary>
        public static readonly Fact RunIn = Fact.Of("linings", "runIn");

        /// <summary>The linings are new and have not been run in.</summary>
        public static readonly Fact NotRunIn = Fact.Of("linings", "notRunIn");
    }

    /// <summary>With the key out, look above the clutch: does oil come from a leaking seal, or from nowhere?</summary>
    public static class OilFrom
    {
        /// <summary>No oil comes from above.</summary>
        public static readonly Fact Nowhere = Fact.Of("oilFrom", "nowhere");

        /// <summary>A seal leaks oil onto the clutch.</summary>
        public static readonly Fact LeakingSeal = Fact.Of("oilFrom", "leakingSeal");
    }

    /// <summary>With the key out, compare with the manual's picture: does the bolt sit in the manual's hole, or in another?</summary>
    public static class BoltHole
    {
        /// <summary>The bolt sits in the hole that the manual shows.</summary>
        public static readonly Fact AsManual = Fact.Of("boltHole", "asManual");

        /// <summary>The bolt sits in another hole.</summary>
        public static readonly Fact Another = Fact.Of("boltHole", "another");
    }
}
