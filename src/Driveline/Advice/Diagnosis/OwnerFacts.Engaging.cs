namespace Driveline.Advice;

/// <content>Answers about how the PTO is engaged, and by what tractor.</content>
public static partial class OwnerFacts
{
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

    /// <summary>Is the tractor's PTO power within what the machine is rated for?</summary>
    public static class TractorPower
    {
        /// <summary>The tractor is within the machine's rating.</summary>
        public static readonly Fact WithinRating = Fact.Of("tractorPower", "withinRating");

        /// <summary>The tractor is above the machine's rating.</summary>
        public static readonly Fact AboveRating = Fact.Of("tractorPower", "aboveRating");
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
}
