namespace Driveline.Advice;

/// <content>Answers about the bolt: what it is, where it sits, how it broke.</content>
public static partial class OwnerFacts
{
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

    /// <summary>Where does the bolt sit: in a yoke within reach, or through the shaft at the gearbox?</summary>
    public static class BoltPlace
    {
        /// <summary>The bolt sits in a yoke within reach.</summary>
        public static readonly Fact Yoke = Fact.Of("boltPlace", "yoke");

        /// <summary>The bolt sits through the shaft at the gearbox.</summary>
        public static readonly Fact ThroughShaftAtGearbox = Fact.Of("boltPlace", "throughShaftAtGearbox");
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
