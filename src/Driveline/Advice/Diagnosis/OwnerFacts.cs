namespace Driveline.Advice;

/// <summary>What an owner can answer, by question; every question and answer of the catalogue has its name here.</summary>
public static partial class OwnerFacts
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
}
