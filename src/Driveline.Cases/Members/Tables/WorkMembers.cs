using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of work.</summary>
internal static class WorkMembers
{
    public static readonly MemberTable Table = new("work", "The load of normal work.", CaseChecks.AcrossWork);

    public static readonly BandMember<TorqueBand> SteadyPeak = Table.Torques(
        "steadyPeak", "(0 N.m; 1000 kN.m]", "Highest torque in normal work, engagement and strikes left out.");
    public static readonly BandMember<TorqueBand> SteadyMean = Table.Torques(
        "steadyMean", "(0 N.m; 1000 kN.m]", "Mean torque in normal work.");
    public static readonly BandMember<PowerBand> MeanPower = Table.Powers("meanPower", "(0 kW; 1000 kW]", "Mean power in normal work.");
    public static readonly BandMember<RatioBand> PeakFactor = Table.Ratios(
        "peakFactor", "[1; 20]", "Highest torque over mean torque in normal work.");
    public static readonly QuantityMember<double> PeaksPerHour = Table.Quantity(
        "peaksPerHour", QuantityTypes.Number, "[0; 1000000]", "How many such peaks an hour of work brings.");
    public static readonly TextMember At = Table.Text(
        "at", 200, "Where these torques are stated: \"pto\" (taken when left out), or the name of an element of the driveline.");
    public static readonly ObjectMember Engagement = Table.Object("engagement", () => EngagementMembers.Table, "How the PTO is engaged.");
    public static readonly FlagMember TripsInNormalWork = Table.Flag(
        "tripsInNormalWork", "Whether the protection has acted in normal work, with nothing struck and nothing plugged.");
    public static readonly ChoiceMember<PeaksFrom> Peaks = Table.Choice<PeaksFrom>(
        "peaks", "Where the torque of engagement and strike is from: as stated, or simulated from the facts of the case. Peaks of "
            + "steady work are never simulated.");
}
