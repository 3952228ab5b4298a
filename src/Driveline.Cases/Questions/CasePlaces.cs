using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>Where a case states what its question rests on, so that findings name the paths that cause them.</summary>
internal static class CasePlaces
{
    private const string Clutch = "tractor.ptoClutch.capacity";
    private const string EngineMost = "tractor.engineTorqueLine.highest";

    public static StatedPlaces Of(CaseFile file, DrivelineChain chain, IReadOnlyDictionary<SeenDefect, string[]> defects) =>
        StatedPlaces.Of(ByNode(file, chain), defects, ByCode(file));

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

        int[] own = [.. Enumerable.Range(0, owner.Length).Where(k => owner[k] == k && chain.Nodes[k].Element is not null)];
        CaseObject[] elements = [.. CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline))];
        var places = new string?[owner.Length];
        for (int k = own.Length - 1; k >= 0; k--)
        {
            int element = k - (own.Length - elements.Length);
            places[own[k]] = element >= 0 ? elements[element].Path : CaseFileMembers.Tractor.Name;
        }

        return [.. owner.Select(k => places[k])];
    }

    private static Dictionary<string, string[]> ByCode(CaseFile file)
    {
        string[] work = Work(file);
        string[] engagement = Engagement(file);
        string[] kind = ["implement.kind"];
        string[] specified = file.Facts.IsStated(CaseFileMembers.Specified) ? [CaseFileMembers.Specified.Name] : [];
        return new Dictionary<string, string[]>(StringComparer.Ordinal)
        {
            [ProtectionFindings.NoSettingFits] = work,
            [ProtectionFindings.WorkNotKnown] = work,
            [ProtectionFindings.WorkAssumed] = work,
            [ProtectionFindings.WorkUnbounded] = work,
            [ProtectionFindings.TripBelowWork] = work,
            [ProtectionFindings.TripMayFallBelowWork] = work,
            [ProtectionFindings.TripHasNoLowEnd] = work,
            [ProtectionFindings.TripsSeenInWork] = Trips(file),
            [ProtectionFindings.PartsNotComplete] = [CaseFileMembers.PartsComplete.Name],
            [ProtectionFindings.MachineNotKnown] = kind,
            [ProtectionFindings.ExpectedPartMissing] = kind,
            [ProtectionFindings.EngagementNotKnown] = engagement,
            [ProtectionFindings.EngagementMayTrip] = engagement,
            [ProtectionFindings.EngagementTrips] = engagement,
            [ProtectionFindings.EngagementSlipsClutch] = engagement,
            [ProtectionFindings.PtoClutchFirst] = [Clutch],
            [ProtectionFindings.EngineStallsFirst] = [EngineMost],
            [ProtectionFindings.WorkAboveClutch] = [.. work, Clutch],
            [ProtectionFindings.MeanAboveEngine] = ["work.steadyMean", EngineMost],
            [ProtectionFindings.FittedStronger] = specified,
            [ProtectionFindings.FittedWeaker] = specified,
            [ProtectionFindings.FittedHigherOrThicker] = specified,
            [StandingFindings.FittedStronger] = specified,
            [StandingFindings.WorkTooHeavy] = work,
            [StandingFindings.ClutchOverheats] = [.. work, "tractor.ptoSpeed"],
        };
    }

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
