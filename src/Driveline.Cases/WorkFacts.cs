using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>The load of normal work.</summary>
public sealed class WorkFacts : CaseFacts
{
    internal WorkFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static WorkFacts Empty { get; } = new(WorkMembers.Table.NoValues());

    /// <summary>Highest torque in normal work, engagement and strikes left out. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? SteadyPeak => Reference<TorqueBand>(WorkMembers.SteadyPeak);

    /// <summary>The same with another <see cref="SteadyPeak"/>.</summary>
    public WorkFacts WithSteadyPeak(TorqueBand? value) => new(Set(WorkMembers.SteadyPeak, value));

    /// <summary>Mean torque in normal work. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? SteadyMean => Reference<TorqueBand>(WorkMembers.SteadyMean);

    /// <summary>The same with another <see cref="SteadyMean"/>.</summary>
    public WorkFacts WithSteadyMean(TorqueBand? value) => new(Set(WorkMembers.SteadyMean, value));

    /// <summary>Mean power in normal work. Permitted: (0 kW; 1000 kW]. Null when not known.</summary>
    public PowerBand? MeanPower => Reference<PowerBand>(WorkMembers.MeanPower);

    /// <summary>The same with another <see cref="MeanPower"/>.</summary>
    public WorkFacts WithMeanPower(PowerBand? value) => new(Set(WorkMembers.MeanPower, value));

    /// <summary>Highest torque over mean torque in normal work. Permitted: [1; 20]. Null when not known.</summary>
    public RatioBand? PeakFactor => Reference<RatioBand>(WorkMembers.PeakFactor);

    /// <summary>The same with another <see cref="PeakFactor"/>.</summary>
    public WorkFacts WithPeakFactor(RatioBand? value) => new(Set(WorkMembers.PeakFactor, value));

    /// <summary>How many such peaks an hour of work brings. Permitted: [0; 1000000]. Null when not known.</summary>
    public double? PeaksPerHour => Si(WorkMembers.PeaksPerHour);

    /// <summary>The same with another <see cref="PeaksPerHour"/>.</summary>
    public WorkFacts WithPeaksPerHour(double? value) => new(Set(WorkMembers.PeaksPerHour, value));

    /// <summary>Where these torques are stated: "pto" (taken when left out), or the name of an element of the driveline. Null when not known.</summary>
    public string? At => Reference<string>(WorkMembers.At);

    /// <summary>The same with another <see cref="At"/>.</summary>
    public WorkFacts WithAt(string? value) => new(Set(WorkMembers.At, value));

    /// <summary>How the PTO is engaged. Null when not known.</summary>
    public EngagementFacts? Engagement => Reference<EngagementFacts>(WorkMembers.Engagement);

    /// <summary>The same with another <see cref="Engagement"/>.</summary>
    public WorkFacts WithEngagement(EngagementFacts? value) => new(Set(WorkMembers.Engagement, value is null || value.IsEmpty ? null : value));

    /// <summary>Whether the protection has acted in normal work, with nothing struck and nothing plugged. Null when not known.</summary>
    public bool? TripsInNormalWork => Value<bool>(WorkMembers.TripsInNormalWork);

    /// <summary>The same with another <see cref="TripsInNormalWork"/>.</summary>
    public WorkFacts WithTripsInNormalWork(bool? value) => new(Set(WorkMembers.TripsInNormalWork, value));

    /// <summary>Where the torque of engagement and strike is from: as stated, or simulated from the facts of the case. Peaks of steady work are never simulated.</summary>
    public PeaksFrom Peaks => Value<PeaksFrom>(WorkMembers.Peaks) ?? default;

    /// <summary>The same with another <see cref="Peaks"/>.</summary>
    public WorkFacts WithPeaks(PeaksFrom value) => new(Set(WorkMembers.Peaks, value == default ? null : value));

    internal override MemberTable Table => WorkMembers.Table;
}
