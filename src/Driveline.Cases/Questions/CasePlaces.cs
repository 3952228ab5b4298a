using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>Where a case states what its question rests on, so that findings name the paths that cause them.</summary>
internal static class CasePlaces
{
    private const string Clutch = "tractor.ptoClutch.capacity";
    private const string EngineMost = "tractor.engineTorqueLine.highest";

    /// <summary>The element of the chain itself that has a name; null when none has, or more than one.</summary>
    public static Element? OnlyNamed(DrivelineChain chain, string name)
    {
        Element? found = null;
        IReadOnlyList<Element> elements = chain.Elements;
        for (int k = 0; k < elements.Count; k++)
        {
            if (elements[k].Name == name)
            {
                if (found is not null)
                {
                    return null;
                }

                found = elements[k];
            }
        }

        return found;
    }

    public static StatedPlaces Of(CaseFile file, DrivelineChain chain, IReadOnlyDictionary<SeenDefect, string[]> defects) =>
        StatedPlaces.Of(ByNode(file, chain), defects, code => ByCode(file, code));

    // The parts that a device implies stand before it in the chain; the stub of the tractor stands first of all.
    private static string?[] ByNode(CaseFile file, DrivelineChain chain)
    {
        var owner = new int[chain.Nodes.Length];
        for (int k = 0; k < owner.Length; k++)
        {
            owner[k] = k;
            for (int j = k - (chain.Nodes[k].Device?.ImpliedParts.Count ?? 0); j < k; j++)
            {
                owner[j] = k;
            }
        }

        IReadOnlyList<CaseObject> elements = CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline));
        var places = new string?[owner.Length];
        int element = elements.Count;
        for (int k = owner.Length - 1; k >= 0; k--)
        {
            if (owner[k] == k && chain.Nodes[k].Element is not null)
            {
                places[k] = --element >= 0 ? elements[element].Path : CaseFileMembers.Tractor.Name;
            }
        }

        for (int k = 0; k < owner.Length; k++)
        {
            places[k] = places[owner[k]];
        }

        return places;
    }

    private static string[] ByCode(CaseFile file, string code) => code switch
    {
        ProtectionFindings.NoSettingFits or ProtectionFindings.WorkNotKnown or ProtectionFindings.WorkAssumed
            or ProtectionFindings.WorkUnbounded or ProtectionFindings.TripBelowWork or ProtectionFindings.TripMayFallBelowWork
            or ProtectionFindings.TripHasNoLowEnd or StandingFindings.WorkTooHeavy => Work(file),
        ProtectionFindings.TripsSeenInWork => Trips(file),
        ProtectionFindings.PartsNotComplete => [CaseFileMembers.PartsComplete.Name],
        ProtectionFindings.MachineNotKnown or ProtectionFindings.ExpectedPartMissing => ["implement.kind"],
        ProtectionFindings.EngagementNotKnown or ProtectionFindings.EngagementMayTrip or ProtectionFindings.EngagementTrips
            or ProtectionFindings.EngagementSlipsClutch => Engagement(file),
        ProtectionFindings.PtoClutchFirst => [Clutch],
        ProtectionFindings.EngineStallsFirst => [EngineMost],
        ProtectionFindings.WorkAboveClutch => [.. Work(file), Clutch],
        ProtectionFindings.MeanAboveEngine => ["work.steadyMean", EngineMost],
        ProtectionFindings.FittedStronger or ProtectionFindings.FittedWeaker or ProtectionFindings.FittedHigherOrThicker
            or StandingFindings.FittedStronger or StandingFindings.FittedNotKnown =>
            file.Facts.IsStated(CaseFileMembers.Specified) ? [CaseFileMembers.Specified.Name] : [],
        StandingFindings.ClutchOverheats => [.. Work(file), "tractor.ptoSpeed"],
        _ => [],
    };

    private static string[] Work(CaseFile file)
    {
        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        string[] at = work?.IsStated(WorkMembers.At) == true ? ["work.at"] : [];
        return work?.IsStated(WorkMembers.SteadyPeak) == true ? ["work.steadyPeak", .. at]
            : work?.IsStated(WorkMembers.SteadyMean) == true ? ["work.steadyMean", "work.peakFactor", .. at]
            : work?.IsStated(WorkMembers.MeanPower) == true ? ["work.meanPower", "work.peakFactor", "tractor.ptoSpeed"]
            : CaseWork.Need(file) is not null ? ["implement", "tractor.ptoSpeed", "work.peakFactor"]
            : [CaseFileMembers.Work.Name];
    }

    private static string[] Trips(CaseFile file) =>
        file.Facts.Get(CaseFileMembers.Work)?.IsStated(WorkMembers.TripsInNormalWork) == true ? ["work.tripsInNormalWork"]
            : ["complaint.symptom", "complaint.when"];

    private static string[] Engagement(CaseFile file)
    {
        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        return work?.Get(WorkMembers.Engagement)?.IsStated(EngagementMembers.Peak) == true ? ["work.engagement.peak"]
            : work?.Get(WorkMembers.Peaks) == PeaksFrom.Simulated ? ["work.peaks", "work.engagement", "tractor", "driveline"]
            : ["tractor.ptoClutch", "work.engagement"];
    }
}
